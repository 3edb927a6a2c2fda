import type { Piece, Vec3 } from '../layout/index.ts';
import type { Ticks } from '../units/index.ts';

/**
 * Longest stretch of a piece that nothing holds, in ticks: between neighboring supports, measured along
 * its grain from face to face. A piece held at fewer than two places gives its whole length.
 */
export function clearSpan(piece: Piece, byKey: ReadonlyMap<string, Piece>): Ticks {
  const axis = grainAxis(piece);
  const held = piece.supports
    .flatMap((key) => byKey.get(key) ?? [])
    .map((support) => extent(support, axis))
    .sort((a, b) => a[0] - b[0]);
  const [first, ...rest] = held;
  if (!first) return piece.cut.longPoint;
  let reached = first[1];
  let longest = 0;
  for (const [from, to] of rest) {
    longest = Math.max(longest, from - reached);
    reached = Math.max(reached, to);
  }
  return longest > 0 ? Math.round(longest) : held.length > 1 ? 0 : piece.cut.longPoint;
}

/** Index of the axis of the run's frame that the grain follows most. */
function grainAxis({ solid }: Piece): 0 | 1 | 2 {
  const a = solid.vertices[0] as Vec3;
  const b = solid.vertices[4] as Vec3;
  const size = (i: 0 | 1 | 2) => Math.abs(b[i] - a[i]);
  if (size(0) >= size(1) && size(0) >= size(2)) return 0;
  return size(2) >= size(1) ? 2 : 1;
}

function extent({ solid }: Piece, axis: 0 | 1 | 2): readonly [number, number] {
  const along = solid.vertices.map((vertex) => vertex[axis]);
  return [Math.min(...along), Math.max(...along)];
}
