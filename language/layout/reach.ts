import type { Range } from './infill.ts';
import type { Piece } from './piece.ts';

/** How far pieces reach along an axis of the run. */
export function reachOf(pieces: readonly Piece[], axis: 0 | 1 | 2): Range {
  let [low, high] = [Infinity, -Infinity];
  for (const { solid } of pieces)
    for (const vertex of solid.vertices) {
      low = Math.min(low, vertex[axis]);
      high = Math.max(high, vertex[axis]);
    }
  return [low, high];
}

/** Whether two ranges have more in common than an end. */
export const shares = (a: Range, b: Range): boolean => Math.min(a[1], b[1]) > Math.max(a[0], b[0]);
