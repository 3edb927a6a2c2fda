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

/** How low pieces reach at every station from one to another: where an edge slopes, the higher of both ends. */
export function undersideOf(pieces: readonly Piece[], [from, to]: Range): number {
  const lowest = (x: number) => Math.min(...pieces.map((piece) => lowestAt(piece, x)));
  return Math.max(lowest(from), lowest(to));
}

/** The lowest point of a piece at a station; past its end, where its bottom edge would be. */
function lowestAt(piece: Piece, station: number): number {
  if (!piece.cut.taper) return reachOf([piece], 2)[0];
  const { vertices } = piece.solid;
  const [start, end] = [vertices[1], vertices[5]];
  if (!start || !end || start[0] === end[0]) return reachOf([piece], 2)[0];
  const share = (station - start[0]) / (end[0] - start[0]);
  return start[2] + share * (end[2] - start[2]);
}
