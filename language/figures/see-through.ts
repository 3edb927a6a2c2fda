import type { Opening, Piece } from '../layout/index.ts';
import { boxOf } from './box.ts';

/**
 * Share of an infill that is open straight on, 0 to 1: the area of the openings over the area of openings
 * and slats together, as seen from the front; a slat right behind another hides nothing more. Posts, frames and rails are left out; they are closed anyway.
 */
export function seeThrough(openings: readonly Opening[], slats: readonly Piece[]): number {
  const open = openings.reduce((sum, o) => sum + (o.x1 - o.x0) * (o.z1 - o.z0), 0);
  const faces = new Map(slats.map((slat) => [rectangleOf(slat).join(), slat]));
  const closed = [...faces.values()].reduce((sum, slat) => sum + faceArea(slat), 0);
  return open + closed > 0 ? open / (open + closed) : 0;
}

function faceArea(slat: Piece): number {
  const [x0, x1, z0, z1] = rectangleOf(slat);
  return (x1 - x0) * (z1 - z0);
}

function rectangleOf(slat: Piece): readonly [x0: number, x1: number, z0: number, z1: number] {
  const { low, high } = boxOf(slat);
  return [low[0], high[0], low[2], high[2]];
}
