import type * as ast from '../grammar/index.ts';
import type { BrokenRun, RunSpec, Sourced } from './job.ts';
import type { FillerSpec, WallPoint, WallProfile, WallSpec, WallsSpec } from './job-walls.ts';
import type { Picked } from './pick-statements.ts';
import type { ProblemArgs } from './problems.ts';
import { readLength } from './read-length.ts';
import { assumedLength, originOf, type Reader, tell } from './reader.ts';
import { useFlat } from './use-stock.ts';

type Walls = Pick<RunSpec, 'walls' | 'filler'>;
type AtWall = ast.BeginsAtWall | ast.EndsAtWall;
type Reason = ProblemArgs['wall-unclear']['reason'];

/** The length over posts as stated, or what the gaps at both walls leave of that between them. */
export interface ReadWalls extends Walls {
  readonly length?: RunSpec['length'];
}

/**
 * The walls a run begins and ends at, the filler there, and its length over posts. What does not go together is
 * told, and left out; no length where the gaps leave nothing of it.
 */
export function readWalls(
  reader: Reader,
  node: ast.Run,
  pick: Picked<ast.RunStatement>,
  stated: RunSpec['length'] | undefined,
): ReadWalls {
  const begins = pick('BeginsAtWall');
  const after = pick('AfterStatement');
  const unclear = (at: AtWall | ast.RunLength | ast.ScribedFiller, reason: Reason) =>
    tell(reader, 'wall-unclear', originOf(reader, at), { run: node.name ?? '', reason, other: '' });
  if (begins && after) unclear(begins, 'comes-after');
  const start = begins && !after ? readWall(reader, begins, unclear) : undefined;
  const ends = pick('EndsAtWall');
  const end = ends && readWall(reader, ends, unclear);
  const filling = pick('ScribedFiller');
  if (filling && !begins && !ends) unclear(filling, 'no-wall');
  const filler = filling && (start || end) && readFiller(reader, filling);
  const lengthStatement = pick('RunLength');
  const between = lengthStatement?.walls ? stated : undefined;
  if (lengthStatement?.walls && !(begins && ends)) unclear(lengthStatement, 'one-wall');
  const known = between && start && end ? lengthBetween(between, start, end) : stated;
  if (between && known && known.value <= 0 && lengthStatement) {
    unclear(lengthStatement, 'no-room');
    return {};
  }
  const walls: WallsSpec = { ...(start ? { start } : {}), ...(end ? { end } : {}) };
  return {
    ...(known ? { length: known } : {}),
    ...(start || end ? { walls } : {}),
    ...(filler ? { filler } : {}),
  };
}

function lengthBetween(between: Sourced<number>, start: WallSpec, end: WallSpec): RunSpec['length'] {
  const value = between.value - start.off.value - end.off.value;
  return { value, origin: { ...between.origin, why: 'derived' } };
}

function readWall(
  reader: Reader,
  statement: AtWall,
  unclear: (at: AtWall, reason: Reason) => void,
): WallSpec | undefined {
  const off = statement.off
    ? readLength(reader, statement.off, { what: 'wall', zero: true })
    : assumedLength(reader, statement, 'wallGap');
  const points = (statement.points ?? []).flatMap((point) => readPoint(reader, point) ?? []);
  const { leans } = statement;
  const by = readLength(reader, leans?.by, { what: 'wall', zero: true });
  const over = readLength(reader, leans?.over, { what: 'wall' });
  if (!off || points.length < (statement.points ?? []).length) return undefined;
  const sorted = points.toSorted((a, b) => a.height - b.height);
  if (sorted.some(({ height }, at) => sorted[at + 1]?.height === height)) {
    unclear(statement, 'same-height');
    return undefined;
  }
  const origin = originOf(reader, statement);
  const [first] = sorted;
  const profile: WallProfile | undefined =
    leans && by && over && by.value > 0
      ? {
          kind: 'leans',
          by: leans.direction === 'away' ? 0 - by.value : by.value,
          over: over.value,
          origin: originOf(reader, leans),
        }
      : first && { kind: 'points', points: sorted, origin: first.origin };
  return { origin, off, ...(profile ? { profile } : {}) };
}

function readPoint(reader: Reader, point: ast.WallPoint): WallPoint | undefined {
  const height = readLength(reader, point.height, { what: 'wall', zero: true });
  const by = readLength(reader, point.by, { what: 'wall', zero: true });
  if (!height || !by) return undefined;
  const toward = point.direction === 'away' ? 0 - by.value : by.value;
  return { height: height.value, toward, origin: originOf(reader, point) };
}

function readFiller(reader: Reader, statement: ast.ScribedFiller): FillerSpec | undefined {
  const stock = useFlat(reader, statement.stock, { node: statement, property: 'stock', place: 'filler' });
  const least = statement.least
    ? readLength(reader, statement.least, { what: 'filler' })
    : assumedLength(reader, statement, 'filler');
  return stock && least && { stock, least, origin: originOf(reader, statement) };
}

/** Split posts have slats in the middle of their depth, and no wood there for a filler: told, and left out. */
export function withoutSplitFiller(
  reader: Reader,
  { filler, ...walls }: Walls,
  run: Pick<RunSpec, 'name' | 'infill'>,
): Walls {
  if (!filler) return walls;
  if (run.infill.mounting.value.kind !== 'split') return { ...walls, filler };
  const args = { run: run.name, reason: 'split-posts' as const, other: '' };
  tell(reader, 'wall-unclear', filler.origin, args);
  return walls;
}

/** Runs at whose end another run comes after them, and no wall; told at the wall. */
export function withoutJoinedWalls(
  reader: Reader,
  runs: readonly (RunSpec | BrokenRun)[],
): readonly (RunSpec | BrokenRun)[] {
  const followed = new Map(
    runs.flatMap((run) =>
      'broken' in run || !run.placement || run.placement.kind === 'at' ? [] : [[run.placement.run, run.name]],
    ),
  );
  return runs.map((run) => {
    const other = followed.get(run.name);
    if ('broken' in run || !run.walls?.end || other === undefined) return run;
    const args = { run: run.name, reason: 'followed' as const, other };
    tell(reader, 'wall-unclear', run.walls.end.origin, args);
    const { end: _end, ...rest } = run.walls;
    const { walls: _walls, filler, ...bare } = run;
    return rest.start ? { ...bare, walls: rest, ...(filler ? { filler } : {}) } : bare;
  });
}
