import type { Piece } from '../layout/index.ts';

/** Along the run, through it, up. */
type Corner = readonly [x: number, y: number, z: number];

/** How far a piece reaches in its run's frame. */
export interface Box {
  readonly low: Corner;
  readonly high: Corner;
}

/** The box around a piece. */
export function boxOf({ solid }: Pick<Piece, 'solid'>): Box {
  let [x0, y0, z0, x1, y1, z1] = [Infinity, Infinity, Infinity, -Infinity, -Infinity, -Infinity];
  for (const [x, y, z] of solid.vertices) {
    if (x < x0) x0 = x;
    if (x > x1) x1 = x;
    if (y < y0) y0 = y;
    if (y > y1) y1 = y;
    if (z < z0) z0 = z;
    if (z > z1) z1 = z;
  }
  return { low: [x0, y0, z0], high: [x1, y1, z1] };
}
