import type { Solid } from '../layout/index.ts';
import { TICKS_PER_MM } from '../units/index.ts';
import { joinedOutline } from './joined-outline.ts';

/**
 * Takes a point in the run's frame, in ticks, to the sheet: x right and y down in millimeters, and how
 * far away it lies. Any map that keeps straight lines straight will do: an elevation from another
 * side, a plan, a section, a perspective.
 */
export type Projection = (x: number, y: number, z: number, to: Projected) => void;

/** Where a point comes to lie: written by a projection, read at once, used again for the next point. */
export interface Projected {
  x: number;
  y: number;
  away: number;
}

/** The run seen from its front: station 0 at the left, what is toward the back farther away. */
export const FROM_FRONT: Projection = (x, y, z, to) => {
  to.x = x / TICKS_PER_MM;
  to.y = (0 - z) / TICKS_PER_MM;
  to.away = y / TICKS_PER_MM;
};

/** The same from behind: station 0 at the right of a thing `length` ticks long, what is toward the front farther away. */
export function fromBehind(length: number): Projection {
  return (x, y, z, to) => {
    to.x = (length - x) / TICKS_PER_MM;
    to.y = (0 - z) / TICKS_PER_MM;
    to.away = (0 - y) / TICKS_PER_MM;
  };
}

/** Along the run toward station 0, from a cut at `station`: the front at the left. */
export function fromCut(station: number): Projection {
  return (x, y, z, to) => {
    to.x = y / TICKS_PER_MM;
    to.y = (0 - z) / TICKS_PER_MM;
    to.away = (station - x) / TICKS_PER_MM;
  };
}

/** Silhouette of a solid, and how far away it begins and ends. */
export interface Silhouette {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
  /** Corners x, y, x, y ... around it; undefined when it fills its box. */
  readonly outline?: readonly number[];
  /** Convex silhouettes that are all of it together, where its outline is not convex. */
  readonly parts?: readonly Silhouette[];
  readonly near: number;
  readonly far: number;
}

/** Corners x, y, x, y ... around a silhouette. */
export function corners({ outline, x0, y0, x1, y1 }: Silhouette): readonly number[] {
  return outline ?? [x0, y0, x1, y0, x1, y1, x0, y1];
}

/** Nearer than this two edges are one, in millimeters. */
const SAME = 0.005;

/** Used again for every solid: thousands are projected for one picture. */
const at: Projected = { x: 0, y: 0, away: 0 };
const points: number[] = [];

/** The silhouette of a solid: of a convex one the convex hull of its projected corners, else that of its parts together. */
export function project(solid: Solid, projection: Projection): Silhouette {
  const whole = projectConvex(solid, projection);
  if (!solid.parts || !whole.outline) return whole;
  const parts = solid.parts.map((part) => projectConvex(part, projection));
  const outline = joinedOutline(parts.map(corners));
  return outline ? { ...whole, outline, parts } : whole;
}

function projectConvex(solid: Solid, projection: Projection): Silhouette {
  points.length = 0;
  let x0 = Infinity;
  let y0 = Infinity;
  let x1 = -Infinity;
  let y1 = -Infinity;
  let near = Infinity;
  let far = -Infinity;
  for (const vertex of solid.vertices) {
    projection(vertex[0], vertex[1], vertex[2], at);
    const { x, y, away } = at;
    points.push(x, y);
    if (x < x0) x0 = x;
    if (x > x1) x1 = x;
    if (y < y0) y0 = y;
    if (y > y1) y1 = y;
    if (away < near) near = away;
    if (away > far) far = away;
  }
  const outline = fillsBox(points, x0, y0, x1, y1) ? undefined : hull(points);
  return { x0, y0, x1, y1, outline, near, far };
}

function fillsBox(points: readonly number[], x0: number, y0: number, x1: number, y1: number): boolean {
  let reached = 0;
  for (let i = 0; i < points.length; i += 2) {
    const x = points[i] as number;
    const y = points[i + 1] as number;
    const left = x - x0 < SAME;
    const top = y - y0 < SAME;
    if (!left && x1 - x > SAME) return false;
    if (!top && y1 - y > SAME) return false;
    reached |= 1 << ((left ? 0 : 1) + (top ? 0 : 2));
  }
  return reached === 15;
}

/** Convex hull of points x, y, x, y ... (monotone chain), corners that lie on a straight edge left out. */
export function hull(points: readonly number[]): number[] {
  const order: (readonly [number, number])[] = [];
  for (let i = 0; i < points.length; i += 2) order.push([points[i] as number, points[i + 1] as number]);
  order.sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const lower = halfHull(order);
  const upper = halfHull(order.reverse());
  return [...lower, ...upper].flat();
}

function halfHull(order: readonly (readonly [number, number])[]): (readonly [number, number])[] {
  const chain: (readonly [number, number])[] = [];
  for (const point of order) {
    while (chain.length >= 2) {
      const [ax, ay] = chain[chain.length - 2] as readonly [number, number];
      const [bx, by] = chain[chain.length - 1] as readonly [number, number];
      const turn = (bx - ax) * (point[1] - ay) - (by - ay) * (point[0] - ax);
      // A corner less than SAME off the straight line is no corner.
      if (turn > SAME * Math.hypot(point[0] - ax, point[1] - ay)) break;
      chain.pop();
    }
    chain.push(point);
  }
  chain.pop();
  return chain;
}
