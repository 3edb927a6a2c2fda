import type * as ast from '../grammar/index.ts';
import { DEFAULT_MOUNTING, DEFAULT_SIDE } from './defaults.ts';
import type { BrokenRun, GateSpec, InfillSpec, RunSpec, Site, Sourced } from './job.ts';
import { statedOrOnly } from './only-stock.ts';
import { statementsOf } from './option-statements.ts';
import { orAssumed, usualEndGap } from './or-assumed.ts';
import { type Picked, pickStatements, tellMissing } from './pick-statements.ts';
import { readBracing } from './read-bracing.ts';
import { embedOnDeck, readDeck, readOnDeck } from './read-deck.ts';
import { readDressing } from './read-dressing.ts';
import { type ReadFill, readFill } from './read-fill.ts';
import { readFlip } from './read-flip.ts';
import { readGate } from './read-gate.ts';
import { rackedOnlyUpright, readAcross, readGround } from './read-ground.ts';
import { readHole } from './read-hole.ts';
import { readInfillFit, readMounting, readScrewsLook } from './read-infill.ts';
import { readJoints } from './read-joints.ts';
import { readBand, readLength } from './read-length.ts';
import { fillOfLines, readLinesAs } from './read-lines-as.ts';
import { readNoHoles } from './read-no-holes.ts';
import { readPlacement } from './read-placement.ts';
import { readGuards } from './read-rules.ts';
import { readGroundKind } from './read-site.ts';
import { bayEstimate, hasSaneBays, readSpacing } from './read-spacing.ts';
import { readUnderSlats } from './read-under-slats.ts';
import { readWalls, withoutSplitFiller } from './read-walls.ts';
import { assumed, assumedLength, originOf, type Reader, tell } from './reader.ts';
import { hasSaneSlats } from './sane-slats.ts';
import { usePost } from './use-stock.ts';

type Statements = Picked<ast.RunStatement>;
type GatelessRun = Omit<RunSpec, 'gates'>;

/** What the job says that holds for each of its runs. */
export interface RunSurroundings extends Pick<Site, 'soil' | 'frost'> {
  /** Taken off each board before it is cut. */
  readonly trim?: number;
}

/** A run with its gates. Broken when something that it cannot be laid out without is missing or cannot be. */
export function readRun(
  reader: Reader,
  node: ast.Run,
  gates: readonly ast.Gate[],
  site: RunSurroundings,
): RunSpec | BrokenRun {
  const broken: BrokenRun = { name: node.name, origin: originOf(reader, node), broken: true };
  const pick = pickStatements(reader, 'run', statementsOf(reader, node));
  const fillStatement = pick('FillStatement') ?? fillOfLines(reader, pick);
  const fill = fillStatement ? readFill(reader, fillStatement) : tellMissing(reader, node, 'fill');
  const own = readOwn(reader, node, pick, fill, site);
  const run = own && { ...groundOf(site), ...own };
  if (!run || !fill) {
    for (const gate of gates) tellGateRun(reader, gate, node, 'broken');
    return broken;
  }
  const specs: GateSpec[] = [];
  for (const gate of gates) {
    const spec = readGate(reader, gate, { run, fill });
    if (spec) specs.push(spec);
  }
  return specs.length === gates.length ? { ...run, gates: specs } : broken;
}

/** Tells that a gate hangs in a run it cannot hang in. */
export function tellGateRun(
  reader: Reader,
  gate: ast.Gate,
  run: ast.Run,
  reason: 'other-file' | 'broken',
): void {
  const args = { gate: gate.name, run: run.name ?? '', reason };
  const related = [{ origin: originOf(reader, run), note: 'run' }];
  tell(reader, 'gate-run', originOf(reader, gate, 'run'), args, related);
}

/** What the job says of its ground holds for a run that says nothing else. */
function groundOf({ soil, frost }: RunSurroundings): Pick<RunSpec, 'soil' | 'frost'> {
  return { ...(soil ? { soil } : {}), ...(frost ? { frost } : {}) };
}

function readOwn(
  reader: Reader,
  node: ast.Run,
  pick: Statements,
  fill: ReadFill | undefined,
  site: RunSurroundings,
): GatelessRun | undefined {
  const stated = pick('RunLength')
    ? readLength(reader, pick('RunLength')?.value, { what: 'length' })
    : tellMissing(reader, node, 'length');
  const { length, ...walls } = readWalls(reader, node, pick, stated);
  const posts = pick('PostsStatement') ?? tellMissing(reader, node, 'posts');
  const post = posts && usePost(reader, posts.stock, { node: posts, property: 'stock', place: 'posts' });
  const spacing = posts && readSpacing(reader, node, posts);
  const heightStatement = pick('HeightStatement') ?? tellMissing(reader, node, 'height');
  const height = heightStatement && readBand(reader, heightStatement, { what: 'height' });
  const bottom = readBottom(reader, node, pick);
  const embedStatement = pick('EmbedStatement');
  const embed = readLength(reader, embedStatement?.value, { what: 'embed', zero: true });
  const hole = readHole(reader, node, pick('HoleStatement'));
  const tops = orAssumed(reader, node, pick('PostTops'), 'tops');
  const standsOn = pick('OnDeck');
  const deck = standsOn && length && readDeck(reader, standsOn, length.value);
  const ground = deck ? readOnDeck(reader, pick, deck) : readGround(reader, node, pick, length);
  const infill = readRunInfill(reader, node, pick, fill);
  const upright = infill?.flip.upright ?? readFlip(reader, node, pick('FlipStatement')).upright;
  // Stated rails are read in any case, so that what is wrong with them is told.
  const railsStatement = pick('RailsStatement');
  const rail = upright || railsStatement ? statedOrOnly(reader, node, 'rails', railsStatement) : undefined;
  if (!length || !post || !spacing || !height || !bottom || !tops || !ground || !infill) return undefined;
  if (standsOn && !deck) return undefined;
  if ((embedStatement && !embed) || (upright && !rail)) return undefined;
  if (!hasSaneBays(reader, spacing, length, post.value.along.value)) return undefined;
  const bays = bayEstimate(spacing.value, length.value, post.value.along.value);
  const space = upright ? length.value : height.value.high - bottom.value.low;
  const nameAt = originOf(reader, node, 'name');
  if (!hasSaneSlats(reader, infill, space, upright ? 1 : Math.max(1, bays), nameAt)) return undefined;
  return {
    name: node.name,
    origin: originOf(reader, node),
    seenFrom: readSide(reader, node, pick('SeenFrom')),
    length,
    post,
    spacing,
    ...(deck ? embedOnDeck(reader, deck, embed, height.value.high + tops.value) : embed ? { embed } : {}),
    ...(hole ? { hole } : {}),
    ...readGroundKind(reader, pick('SoilStatement'), pick('FrostStatement')),
    tops,
    height,
    bottom,
    ...rackedOnlyUpright(reader, ground, upright, node.name),
    ...(deck ? { deck } : readAcross(reader, pick)),
    ...(upright && rail ? { rail } : {}),
    infill,
    ...readDressing(reader, pick, infill),
    ...readBracing(reader, node, pick),
    ...readJoints(reader, pick, infill, site.trim),
    ...readUnderSlats(reader, node, pick, infill),
    ...readPlacement(reader, node, pick),
    ...withoutSplitFiller(reader, walls, { name: node.name, infill }),
    ...readLinesAs(reader, pick),
    ...readNoHoles(reader, node),
    ...readGuards(reader, pick),
    measure: reader.measure,
  };
}

function readRunInfill(
  reader: Reader,
  node: ast.Run,
  pick: Statements,
  fill: ReadFill | undefined,
): InfillSpec | undefined {
  const flip = readFlip(reader, node, pick('FlipStatement'));
  const mounting = readMounting(reader, node, pick('SlatsStatement'), DEFAULT_MOUNTING);
  const between = mounting?.value.kind === 'between';
  const cleats = pick('CleatsStatement');
  const cleat = between || cleats ? statedOrOnly(reader, node, 'cleats', cleats) : undefined;
  const endGap = orAssumed(reader, node, pick('EndGap'), usualEndGap(mounting?.value));
  if (!fill || !endGap || !mounting) return undefined;
  const fit = readInfillFit(reader, node, pick('Fit'), fill);
  if ((between || cleats) && !cleat) return undefined;
  const pattern = fill.spec;
  const origin = originOf(reader, fill.statement);
  return {
    pattern,
    fill: origin,
    flip,
    fit,
    mounting,
    ...(cleat ? { cleat } : {}),
    endGap,
    ...readScrewsLook(reader, pick('ScrewsLook')),
  };
}

function readBottom(reader: Reader, node: ast.Run, pick: Statements): RunSpec['bottom'] | undefined {
  const statement = pick('BottomStatement');
  if (statement) return readBand(reader, statement, { what: 'bottom', zero: true });
  const { value, origin } = assumedLength(reader, node, 'bottom');
  return { value: { low: value, high: value }, origin };
}

function readSide(reader: Reader, node: ast.Run, statement: ast.SeenFrom | undefined): Sourced<string> {
  if (!statement?.side) return assumed(reader, node, DEFAULT_SIDE);
  return { value: statement.side, origin: originOf(reader, statement) };
}
