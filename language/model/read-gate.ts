import type * as ast from '../grammar/index.ts';
import type { Ticks } from '../units/index.ts';
import { DEFAULT_GATE_MOUNTING, DEFAULT_HINGES } from './defaults.ts';
import { faceToward } from './faces.ts';
import type { FlatStock, GateSpec, InfillSpec, RunSpec, Sourced } from './job.ts';
import { statedOrOnly } from './only-stock.ts';
import { statementsOf } from './option-statements.ts';
import { orAssumed, usualEndGap } from './or-assumed.ts';
import { type Picked, pickStatements, tellMissing } from './pick-statements.ts';
import { readCount } from './read-count.ts';
import { type ReadFill, readFill } from './read-fill.ts';
import { readFlip } from './read-flip.ts';
import { readInfillFit, readMounting, readScrewsLook } from './read-infill.ts';
import { readLeafRails } from './read-leaf-rails.ts';
import { readBand, readLength } from './read-length.ts';
import { readPair } from './read-pair.ts';
import { assumed, derived, originOf, type Reader, tell } from './reader.ts';
import { hasSaneSlats } from './sane-slats.ts';
import { useFlat, usePost } from './use-stock.ts';

type Statements = Picked<ast.GateStatement>;

/** The run a gate hangs in, from which it takes what it does not state. */
export interface GateRun {
  readonly run: Omit<RunSpec, 'gates'>;
  readonly fill: ReadFill;
}

/** A gate; undefined when something that it cannot be laid out without is missing or cannot be. */
export function readGate(reader: Reader, node: ast.Gate, within: GateRun): GateSpec | undefined {
  const { run } = within;
  const pick = pickStatements(reader, 'gate', statementsOf(reader, node));
  const openingStatement = pick('Opening') ?? tellMissing(reader, node, 'opening');
  const opening = readLength(reader, openingStatement?.width, { what: 'opening' });
  const station = readLength(reader, openingStatement?.station, { what: 'opening', zero: true });
  const hinges = readHinges(reader, node, pick('HingeSide'), run.seenFrom.value);
  const hingeGap = orAssumed(reader, node, pick('HingeGap'), 'hingeGap');
  const latchGap = orAssumed(reader, node, pick('LatchGap'), 'latchGap');
  const posts = pick('GatePosts');
  const post = posts
    ? usePost(reader, posts.stock, { node: posts, property: 'stock', place: 'posts' })
    : derived(run.post);
  const latchPost =
    posts?.latch && usePost(reader, posts.latch, { node: posts, property: 'latch', place: 'posts' });
  const embed = readGateEmbed(reader, pick('EmbedStatement'), run);
  const frame = statedOrOnly(reader, node, 'frame', pick('FrameStatement'));
  const braceStatement = pick('BraceStatement');
  const brace = frame && readBrace(reader, braceStatement, frame);
  const bottomStatement = pick('BottomStatement');
  const bottom = bottomStatement && readBand(reader, bottomStatement, { what: 'bottom', zero: true });
  const heightStatement = pick('HeightStatement');
  const height = heightStatement && readBand(reader, heightStatement, { what: 'height' });
  const leaves = pick('LeavesStatement');
  const pair = latchGap && readPair(reader, leaves, pick('LatchGap'), latchGap);
  const railsStatement = pick('GateRails');
  const rails = railsStatement && readLeafRails(reader, railsStatement);
  const infill = readGateInfill(reader, node, pick, within, hinges.value);
  const opensTo = pick('OpensTo');
  const accessible = pick('AccessibleGate');
  if (!opening || !station || !hingeGap || !latchGap || !post || !frame || !infill) return undefined;
  if ((bottomStatement && !bottom) || (heightStatement && !height)) return undefined;
  if (leaves?.two && !pair) return undefined;
  if (railsStatement && !rails) return undefined;
  if ((braceStatement?.stock && !brace) || (posts?.latch && !latchPost)) return undefined;
  const tall = (height ?? run.height).value.high - (bottom ?? run.bottom).value.low;
  const space = infill.flip.upright ? opening.value : tall;
  if (!hasSaneSlats(reader, infill, space, 1, originOf(reader, node, 'name'))) return undefined;
  return {
    name: node.name,
    origin: originOf(reader, node),
    opening,
    station,
    hinges,
    ...readHingeCount(reader, pick('HingeSide')),
    ...(opensTo?.side ? { opensTo: { value: opensTo.side, origin: originOf(reader, opensTo) } } : {}),
    ...(accessible ? { accessible: originOf(reader, accessible) } : {}),
    hingeGap,
    latchGap,
    post,
    ...(latchPost ? { latchPost } : {}),
    ...(embed ? { embed } : {}),
    frame,
    ...(pair ? { pair } : {}),
    ...(rails ? { rails } : {}),
    ...(brace ? { brace } : {}),
    ...(braceStatement?.cable ? { cable: originOf(reader, braceStatement) } : {}),
    ...(bottom ? { bottom } : {}),
    ...(height ? { height } : {}),
    infill,
  };
}

/** On a deck posts reach as far down as those of the run. */
function readGateEmbed(
  reader: Reader,
  statement: ast.EmbedStatement | undefined,
  { deck }: GateRun['run'],
): Sourced<Ticks> | undefined {
  const embed = readLength(reader, statement?.value, { what: 'embed', zero: true });
  if (!embed || !deck) return embed;
  tell(reader, 'wrong-statement', embed.origin, { what: 'embed', block: 'gate on a deck' });
  return undefined;
}

/**
 * On which side it hangs is never guessed silently: it is told, and drawn on one side meanwhile. Seen from any
 * side but the one the run is seen from, left and right change places.
 */
function readHinges(
  reader: Reader,
  node: ast.Gate,
  statement: ast.HingeSide | undefined,
  seenFrom: string,
): Sourced<'left' | 'right'> {
  if (statement?.side) {
    const behind = statement.from !== undefined && faceToward(seenFrom, statement.from) === 'back';
    const value = behind ? (statement.side === 'left' ? 'right' : 'left') : statement.side;
    return { value, origin: originOf(reader, statement) };
  }
  if (!statement) tellMissing(reader, node, 'hinges');
  return assumed(reader, node, DEFAULT_HINGES);
}

function readHingeCount(reader: Reader, statement: ast.HingeSide | undefined): Pick<GateSpec, 'hingeCount'> {
  const value = statement && readCount(reader, statement, 'hinges', { least: 2, most: 12 });
  if (!statement || value === undefined) return {};
  return { hingeCount: { value, origin: originOf(reader, statement, 'count') } };
}

/** The brace as stated, else of the frame's stock; undefined when it is to have none. */
function readBrace(
  reader: Reader,
  statement: ast.BraceStatement | undefined,
  frame: Sourced<FlatStock>,
): Sourced<FlatStock> | undefined {
  if (statement?.none || statement?.cable) return undefined;
  if (!statement?.stock) return derived(frame);
  return useFlat(reader, statement.stock, { node: statement, property: 'stock', place: 'brace' });
}

/**
 * Pattern, cleats and end gap are the run's when not stated. The run's pattern comes turned as it is
 * in the run, unless the gate turns it its own way; a pattern of the gate's own is not turned unless
 * the gate says so. Remedies are the gate's or the pattern's, never the run's: its space is another.
 */
function readGateInfill(
  reader: Reader,
  node: ast.Gate,
  pick: Statements,
  { run, fill: runFill }: GateRun,
  hinges: 'left' | 'right',
): InfillSpec | undefined {
  const fillStatement = pick('FillStatement');
  const fill = fillStatement ? readFill(reader, fillStatement) : runFill;
  const flipStatement = pick('FlipStatement');
  const flip =
    fillStatement || flipStatement
      ? readFlip(reader, node, flipStatement, hinges)
      : { ...run.infill.flip, origin: { ...run.infill.flip.origin, why: 'derived' as const } };
  const mounting = readMounting(reader, node, pick('SlatsStatement'), DEFAULT_GATE_MOUNTING);
  const between = mounting?.value.kind === 'between';
  const cleats = pick('CleatsStatement');
  const ofRun = run.infill.cleat && derived(run.infill.cleat);
  const cleat = cleats || (between && !ofRun) ? statedOrOnly(reader, node, 'cleats', cleats) : ofRun;
  const usualGap = usualEndGap(mounting?.value);
  const ownGap = pick('EndGap') !== undefined || usualGap !== usualEndGap(run.infill.mounting.value);
  const endGap = ownGap ? orAssumed(reader, node, pick('EndGap'), usualGap) : derived(run.infill.endGap);
  if (!fill || !endGap || !mounting) return undefined;
  const fit = readInfillFit(reader, node, pick('Fit'), fill);
  if ((between || cleats) && !cleat) return undefined;
  const pattern = fill.spec;
  const origin = originOf(reader, fill.statement);
  const look = pick('ScrewsLook');
  const screws = look ? readScrewsLook(reader, look) : ofRunScrews(run);
  return { pattern, fill: origin, flip, fit, mounting, ...(cleat ? { cleat } : {}), endGap, ...screws };
}

function ofRunScrews({ infill }: GateRun['run']): Pick<InfillSpec, 'screws'> {
  return infill.screws ? { screws: derived(infill.screws) } : {};
}
