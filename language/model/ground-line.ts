import { ROUNDING, type Ticks } from '../units/index.ts';
import type { RunSpec } from './job.ts';

/** A point of the ground: station, and height from the datum. */
export interface GroundPoint {
  readonly x: Ticks;
  readonly z: Ticks;
}

/** The ground from station 0 to the end of a run: two points where it is level, more where it is not. */
export function groundLine({
  ground,
  levels,
  length,
}: Pick<RunSpec, 'ground' | 'levels' | 'length'>): readonly GroundPoint[] {
  const end = length.value;
  if (!levels || levels.length === 0) return [0, end].map((x) => ({ x, z: ground.value }));
  const stated = levels.map(({ station, level }) => ({ x: station, z: level })).sort((a, b) => a.x - b.x);
  const within = stated.filter(({ x }) => x > 0 && x < end);
  return [0, ...within, end].map((x) =>
    typeof x === 'number' ? { x, z: Math.round(levelAt(stated, x)) } : x,
  );
}

/** Height of the ground at a station; a float between points. Beyond the first and last point it is level. */
export function levelAt(line: readonly GroundPoint[], x: Ticks): number {
  const after = line.findIndex((point) => point.x >= x);
  const right = line[after];
  const left = line[after - 1];
  if (!right) return line.at(-1)?.z ?? 0;
  if (!left) return right.z;
  return left.z + ((right.z - left.z) * (x - left.x)) / (right.x - left.x);
}

/** Highest ground from one station to another, rounded up to the whole tick. */
export function highestGround(line: readonly GroundPoint[], from: Ticks, to: Ticks): Ticks {
  return Math.ceil(Math.max(...levelsWithin(line, from, to)) - ROUNDING);
}

/** Lowest ground from one station to another, rounded down to the whole tick. */
export function lowestGround(line: readonly GroundPoint[], from: Ticks, to: Ticks): Ticks {
  return Math.floor(Math.min(...levelsWithin(line, from, to)) + ROUNDING);
}

function levelsWithin(line: readonly GroundPoint[], from: Ticks, to: Ticks): number[] {
  const inner = line.filter(({ x }) => x > from && x < to).map(({ z }) => z);
  return [levelAt(line, from), ...inner, levelAt(line, to)];
}
