import type * as ast from '../grammar/index.ts';
import { ceilToStep, formatLength, inches, mm, type Ticks } from '../units/index.ts';
import { isMetric } from './defaults.ts';
import type { DeckHold, DeckSpec, RunSpec, Sourced } from './job.ts';
import { type Picked, pickStatements, tellMissing } from './pick-statements.ts';
import { readLength } from './read-length.ts';
import { readStairs } from './read-stairs.ts';
import { assumed, follow, originOf, type Reader, tell } from './reader.ts';

/** Joists beyond this are not a deck but a slip of the pen. */
const MOST_JOISTS = 2_000;

/** A deck board, and joists on center, as is usual (common practice). */
const BOARDS = { imperial: inches(1), metric: mm(28) };
const CENTERS = { imperial: inches(16), metric: mm(400) };

/** The deck a run stands on, its joists counted off along the run; undefined when it cannot be read. */
export function readDeck(reader: Reader, statement: ast.OnDeck, length: Ticks): DeckSpec | undefined {
  const node = follow(statement.deck);
  if (!node) return undefined;
  const pick = pickStatements(reader, 'deck', node.statements);
  const joistsAt = pick('JoistsStatement');
  if (!joistsAt) return tellMissing(reader, node, 'joists');
  const thickness = readLength(reader, joistsAt.thickness, { what: 'joists' });
  const depth = readLength(reader, joistsAt.depth, { what: 'joists' });
  const surface = readLevel(reader, pick('SurfaceStatement'), 'surface') ?? assumed(reader, node, 0);
  const boards = pick('BoardsStatement')
    ? readLength(reader, pick('BoardsStatement')?.value, { what: 'boards' })
    : assumed(reader, node, isMetric(reader.measure) ? BOARDS.metric : BOARDS.imperial);
  const below = pick('GroundBelow');
  const ground = readLevel(reader, below, 'ground');
  if (!thickness || !depth || !boards) return undefined;
  if (ground && ground.value >= surface.value) {
    const [size, limit] = [ground, surface].map(({ value }) => formatLength(value, reader.measure));
    const args = { what: 'ground', size: size ?? '', reason: 'low-over-high' as const, limit: limit ?? '' };
    tell(reader, 'impossible-size', ground.origin, args);
    return undefined;
  }
  const joists = readJoists(reader, joistsAt, thickness.value, length);
  const rim = readRim(reader, node, pick('RimStatement'), thickness.value);
  const stated: DeckHold = statement.inside ? 'inside-frame' : statement.footing ? 'footing' : 'outside-rim';
  const origin = originOf(reader, statement);
  const blocked = pick('BlockingStatement');
  if (stated === 'footing' && !ground) return tellMissing(reader, node, 'ground');
  if (!joists || !rim) return undefined;
  return {
    name: node.name,
    origin: originOf(reader, node),
    statement: origin,
    hold: { value: stated, origin },
    surface,
    boards,
    joist: { thickness: thickness.value, depth: depth.value, origin: originOf(reader, joistsAt) },
    joists,
    rim,
    blocking: readStations(reader, blocked?.stations, 'blocking'),
    ...(blocked ? { blockingAt: originOf(reader, blocked) } : {}),
    ...(ground ? { ground } : {}),
    ...readStairs(reader, node, ground && surface.value - ground.value),
  };
}

/** On a deck heights are above its surface; a `ground` of the run's own would be a second one. */
export function readOnDeck(
  reader: Reader,
  pick: Picked<ast.RunStatement>,
  { surface }: DeckSpec,
): Pick<RunSpec, 'ground'> {
  for (const [what, statement] of [
    ['ground', pick('GroundStatement')],
    ['ground across', pick('GroundAcross')],
    ['slope', pick('SlopeStatement')],
  ] as const)
    if (statement)
      tell(reader, 'wrong-statement', originOf(reader, statement), { what, block: 'run on a deck' });
  return { ground: surface };
}

/**
 * How far posts go down from the surface: to the bottom of the joists, or to their own footing, there as deep
 * as stated or half of what stands above the ground below (common practice). `above` is the post above the surface.
 */
export function embedOnDeck(
  reader: Reader,
  deck: DeckSpec,
  embed: Sourced<Ticks> | undefined,
  above: Ticks,
): Pick<RunSpec, 'embed'> {
  const { hold, boards, joist, surface, ground, statement } = deck;
  if (hold.value === 'footing' && ground) {
    const drop = surface.value - ground.value;
    const deep = embed?.value ?? ceilToStep((drop + above) / 2, reader.measure.step);
    return { embed: { value: drop + deep, origin: embed?.origin ?? { ...statement, why: 'default' } } };
  }
  if (embed) tell(reader, 'wrong-statement', embed.origin, { what: 'embed', block: 'run on a deck' });
  return { embed: { value: boards.value + joist.depth, origin: { ...statement, why: 'derived' } } };
}

function readJoists(
  reader: Reader,
  statement: ast.JoistsStatement,
  thickness: Ticks,
  length: Ticks,
): readonly Ticks[] | undefined {
  if (statement.parallel) return [];
  if ((statement.stations ?? []).length > 0) return readStations(reader, statement.stations, 'joists');
  const habit = isMetric(reader.measure) ? CENTERS.metric : CENTERS.imperial;
  const centers = statement.centers
    ? readLength(reader, statement.centers, { what: 'joists' })?.value
    : habit;
  const start = statement.start
    ? readLength(reader, statement.start, { what: 'joists', zero: true })?.value
    : Math.round(thickness / 2);
  if (centers === undefined || start === undefined) return undefined;
  const joists: Ticks[] = [];
  for (let at = start; at <= length && joists.length < MOST_JOISTS; at += centers) joists.push(at);
  return joists;
}

function readRim(
  reader: Reader,
  node: ast.Deck,
  statement: ast.RimStatement | undefined,
  joist: Ticks,
): Sourced<Ticks> | undefined {
  if (!statement) return assumed(reader, node, joist);
  const one = readLength(reader, statement.value, { what: 'rim' });
  return one && { value: statement.double ? 2 * one.value : one.value, origin: originOf(reader, statement) };
}

function readStations(
  reader: Reader,
  stations: readonly ast.Length[] | undefined,
  what: string,
): readonly Ticks[] {
  return (stations ?? []).flatMap(
    (station) => readLength(reader, station, { what, zero: true })?.value ?? [],
  );
}

function readLevel(
  reader: Reader,
  statement: ast.SurfaceStatement | ast.GroundBelow | undefined,
  what: string,
): Sourced<Ticks> | undefined {
  const level = readLength(reader, statement?.value, { what, zero: true });
  if (!statement || !level) return undefined;
  return { value: statement.direction === 'down' ? 0 - level.value : level.value, origin: level.origin };
}
