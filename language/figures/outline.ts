import { convexParts, type Piece } from '../layout/index.ts';
import { type Box, boxOf } from './box.ts';
import { hullOf, type Point, turn } from './convex-hull.ts';

/** A piece as it is seen straight on: along the run, and up. */
export interface Outline {
  readonly piece: Piece;
  readonly box: Box;
  /** Where its edges are, along and up; of slanted ones so many that what lies between is nearly straight. */
  readonly edges: readonly [along: readonly number[], up: readonly number[]];
  /** Corners of its convex parts, counterclockwise; missing when it fills its box. */
  readonly hulls?: readonly (readonly Point[])[];
}

/** Into so many strips a slanted outline is cut. */
const STRIPS = 16;

export function outlineOf(piece: Piece): Outline {
  const box = boxOf(piece);
  const upright = piece.solid.vertices.every(
    ([x, , z]) => (x === box.low[0] || x === box.high[0]) && (z === box.low[2] || z === box.high[2]),
  );
  const strips = upright ? 1 : STRIPS;
  const edges = (axis: 0 | 2) =>
    Array.from(
      { length: strips + 1 },
      (_, i) => box.low[axis] + (i * (box.high[axis] - box.low[axis])) / strips,
    );
  const outline = { piece, box, edges: [edges(0), edges(2)] as const };
  if (upright) return outline;
  const hulls = convexParts(piece.solid).map(({ vertices }) => hullOf(vertices.map(([x, , z]) => [x, z])));
  return { ...outline, hulls };
}

/** Whether a piece is in the line of sight through a point. */
export function covering({ box, hulls }: Outline, x: number, z: number): boolean {
  if (x <= box.low[0] || x >= box.high[0] || z <= box.low[2] || z >= box.high[2]) return false;
  return (
    !hulls ||
    hulls.some((hull) =>
      hull.every((from, i) => turn(from, hull[(i + 1) % hull.length] ?? from, [x, z]) >= 0),
    )
  );
}
