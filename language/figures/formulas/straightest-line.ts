import { hullOf, type Point } from '../convex-hull.ts';

/** A line y = start + slope x. */
export interface StraightLine {
  readonly start: number;
  readonly slope: number;
  /** How far the farthest point is off it, in y. */
  readonly most: number;
}

/**
 * The straight line whose greatest distance in y from any of the points is least (P. L. Chebyshev's criterion). It
 * lies midway between an edge of their convex hull and the point farthest from that edge: the narrowest band between
 * two parallel lines that holds them all, measured in y, has an edge of the hull on one side.
 *
 * @param points with at least two values of x among them; with fewer, the line is level through their middle
 */
export function straightestLine(points: readonly Point[]): StraightLine {
  const hull = hullOf(points);
  let best: StraightLine | undefined;
  for (const [index, a] of hull.entries()) {
    const b = hull[(index + 1) % hull.length] ?? a;
    const slope = (b[1] - a[1]) / (b[0] - a[0]);
    // An edge that stands upright bounds no band.
    if (!Number.isFinite(slope)) continue;
    const offs = hull.map(([x, y]) => y - a[1] - slope * (x - a[0]));
    const [low, high] = [Math.min(...offs), Math.max(...offs)];
    const most = (high - low) / 2;
    if (!best || most < best.most) best = { start: a[1] - slope * a[0] + (low + high) / 2, slope, most };
  }
  if (best) return best;
  const ys = points.map(([, y]) => y);
  const [low, high] = ys.length > 0 ? [Math.min(...ys), Math.max(...ys)] : [0, 0];
  return { start: (low + high) / 2, slope: 0, most: (high - low) / 2 };
}
