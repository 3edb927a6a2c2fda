import type { Piece, Vec3 } from '../layout/index.ts';
import type { Ticks } from '../units/index.ts';

/**
 * Longest stretch of a piece that nothing holds, in ticks: between neighboring supports, measured along
 * its grain from face to face. A piece held at fewer than two places gives its whole length.
 */
export function clearSpan(piece: Piece, byKey: ReadonlyMap<string, Piece>): Ticks {
  const grain = grainOf(piece);
  const held = piece.supports
    .flatMap((key) => byKey.get(key) ?? [])
    .map((support) => extent(support, grain))
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

/** Direction of the grain: the axis of the run's frame it follows, or its own where it stands at an angle on the plan. */
function grainOf({ solid }: Piece): Vec3 {
  const a = solid.vertices[0] as Vec3;
  const b = solid.vertices[4] as Vec3;
  const [x, y, z] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  const [along, through, up] = [x, y, z].map(Math.abs) as [number, number, number];
  if (up > Math.max(along, through)) return [0, 0, 1];
  const long = Math.hypot(x, y) || 1;
  return [x / long, y / long, 0];
}

function extent({ solid }: Piece, grain: Vec3): readonly [number, number] {
  const along = solid.vertices.map(([x, y, z]) => x * grain[0] + y * grain[1] + z * grain[2]);
  return [Math.min(...along), Math.max(...along)];
}
