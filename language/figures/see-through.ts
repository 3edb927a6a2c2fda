import type { Opening, Piece, Vec3 } from '../layout/index.ts';

/**
 * Share of an infill that is open straight on, 0 to 1: the area of the openings over the area of openings
 * and slats together, as seen from the front. Posts, frames and rails are left out; they are closed anyway.
 */
export function seeThrough(openings: readonly Opening[], slats: readonly Piece[]): number {
  const open = openings.reduce((sum, o) => sum + (o.x1 - o.x0) * (o.z1 - o.z0), 0);
  const closed = slats.reduce((sum, slat) => sum + faceArea(slat), 0);
  return open + closed > 0 ? open / (open + closed) : 0;
}

function faceArea({ solid }: Piece): number {
  const size = (axis: 0 | 2): number => {
    const along = solid.vertices.map((vertex: Vec3) => vertex[axis]);
    return Math.max(...along) - Math.min(...along);
  };
  return size(0) * size(2);
}
