import type { JointRule } from '../model/index.ts';
import type { Ticks } from '../units/index.ts';

/** A stretch of slats that may be jointed at so many places, to be divided into boards. */
export interface CourseToDivide {
  /** Places, the two ends of the stretch included, from 0. */
  readonly places: number;
  /** Length of a board from one place to another. */
  readonly length: (from: number, to: number) => Ticks;
  /** Of the longest board there is; undefined where no length is known. */
  readonly longest?: Ticks;
}

/** Outweighs all that is counted in one stretch. */
const FIRST = 1e6;

/**
 * Places between the ends where boards meet, from the first on. By fewest boards, then by fewest joints under those
 * `above`; `staggered` the other way round. Of what is equal, the board nearest station 0 is longest. A stretch
 * between two neighboring places that is longer than any board is left whole. Where no length is known boards meet
 * at every place.
 */
export function divideCourse(
  { places, length, longest }: CourseToDivide,
  kind: JointRule['kind'],
  above: ReadonlySet<number>,
): readonly number[] {
  const last = places - 1;
  if (longest === undefined) return between(last, 1);
  const [perBoard, perJoint] = kind === 'staggered' ? [1, FIRST] : [FIRST, kind === 'longest' ? 1 : 0];
  // From the far end: what the rest costs from each place on, and where its first board ends.
  const cost = new Array<number>(places).fill(0);
  const next = new Array<number>(places).fill(last);
  for (let from = last - 1; from >= 0; from--) {
    let best = Infinity;
    for (let to = from + 1; to <= last; to++) {
      if (to > from + 1 && length(from, to) > longest) break;
      const joint = to < last && above.has(to) ? perJoint : 0;
      const all = perBoard + joint + (cost[to] ?? 0);
      if (all > best) continue;
      best = all;
      next[from] = to;
    }
    cost[from] = best;
  }
  const joints: number[] = [];
  for (let at = next[0] ?? last; at < last; at = next[at] ?? last) joints.push(at);
  return joints;
}

/** Every so many places between the ends. */
export function between(last: number, every: number): readonly number[] {
  return Array.from({ length: Math.max(0, Math.ceil(last / every) - 1) }, (_, index) => (index + 1) * every);
}
