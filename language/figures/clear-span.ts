import type { Piece, Vec3 } from '../layout/index.ts';
import type { Ticks } from '../units/index.ts';

/**
 * Longest stretch of a piece that nothing holds, in ticks: between neighboring supports, from where one stops touching
 * it to where the next begins, along its grain in the middle of its width. A piece held at fewer than two places gives its
 * whole length.
 *
 * @param byKey what may hold it, posts of other runs included
 */
export function clearSpan(piece: Piece, byKey: ReadonlyMap<string, Piece>): Ticks {
  const axes = axesOf(piece);
  const held = piece.supports
    .flatMap((key) => byKey.get(key) ?? [])
    .map((support) => heldBy(support, piece, axes))
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

/** Directions of a piece, unit vectors square to one another. */
interface Axes {
  readonly grain: Vec3;
  readonly across: Vec3;
  readonly through: Vec3;
}

/** The grain is the axis of the run's frame it follows, or its own where it stands at an angle on the plan. */
function axesOf({ solid }: Piece): Axes {
  const a = solid.vertices[0] as Vec3;
  const b = solid.vertices[4] as Vec3;
  const [x, y, z] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  const [along, through, up] = [x, y, z].map(Math.abs) as [number, number, number];
  if (up > Math.max(along, through)) return { grain: [0, 0, 1], across: [1, 0, 0], through: [0, 1, 0] };
  const long = Math.hypot(x, y) || 1;
  return { grain: [x / long, y / long, 0], across: [0, 0, 1], through: [-y / long, x / long, 0] };
}

type Range = readonly [low: number, high: number];

/** In ticks: so near one another, corners are in one plane. */
const ONE_PLANE = 1;

/**
 * From where to where along its grain a piece is held: the stretch of its middle line that lies on the face of the
 * support that looks at it. A post that stands at an angle touches it with an edge alone; a rail that slopes crosses it.
 * What goes into its support, or only touches it beside that line, counts with all of that.
 */
function heldBy({ solid }: Piece, piece: Piece, { grain, across, through }: Axes): Range {
  const [low, high] = extent(piece.solid.vertices, through);
  const [near, far] = extent(solid.vertices, through);
  const touching = solid.vertices.filter((vertex) => {
    const at = dot(vertex, through);
    if (near >= high - ONE_PLANE) return at <= near + ONE_PLANE;
    return far > low + ONE_PLANE || at >= far - ONE_PLANE;
  });
  const [begins, ends] = extent(piece.solid.vertices, across);
  const middle = (begins + ends) / 2;
  return crossing(touching, grain, (vertex) => dot(vertex, across) - middle) ?? extent(touching, grain);
}

/** Where the hull of some corners, of which there are few, meets the line they are `off` by; undefined where it does not. */
function crossing(corners: readonly Vec3[], grain: Vec3, off: (corner: Vec3) => number): Range | undefined {
  let [low, high] = [Infinity, -Infinity];
  for (const one of corners)
    for (const other of corners) {
      const [a, b] = [off(one), off(other)];
      if (a > 0 || b < 0) continue;
      const share = b > a ? -a / (b - a) : 0;
      const at = dot(one, grain) + share * (dot(other, grain) - dot(one, grain));
      low = Math.min(low, at);
      high = Math.max(high, at);
    }
  return low <= high ? [low, high] : undefined;
}

function extent(corners: readonly Vec3[], axis: Vec3): Range {
  const along = corners.map((corner) => dot(corner, axis));
  return [Math.min(...along), Math.max(...along)];
}

const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
