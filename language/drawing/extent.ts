import type { Solid } from '../layout/index.ts';
import type { Ticks } from '../units/index.ts';

/** The box a solid stands in, in its run's frame. */
export interface Extent {
  readonly x0: Ticks;
  readonly x1: Ticks;
  readonly z0: Ticks;
  readonly z1: Ticks;
}

/** How far a solid reaches along the run and upward. */
export function extentOf(solid: Solid): Extent {
  let [x0, x1, z0, z1] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const [x, , z] of solid.vertices) {
    if (x < x0) x0 = x;
    if (x > x1) x1 = x;
    if (z < z0) z0 = z;
    if (z > z1) z1 = z;
  }
  return { x0, x1, z0, z1 };
}
