/** Corners x, y, x, y ... of a convex polygon, in either direction. */
export type Polygon = readonly number[];

/** An upright rectangle of the plane: x0, y0, x1, y1. */
export type Window = readonly [x0: number, y0: number, x1: number, y1: number];

/**
 * Area of a window that convex polygons cover together, in its own unit squared; exact but for the
 * rounding of floats.
 *
 * The window is cut into strips at every corner; within a strip each polygon is a trapezoid whose lower and
 * upper edges are straight. Where no two of these edges cross, the covered length is linear across the strip,
 * so its middle gives the area; where they cross, the strip is cut there.
 */
export function coveredArea(window: Window, polygons: readonly Polygon[]): number {
  const parts: Part[] = [];
  const cuts = new Set<number>();
  for (const polygon of polygons) {
    const corners = clipped(polygon, window);
    if (corners.length < 6) continue;
    const part = partOf(corners);
    if (part.x1 - part.x0 <= 0) continue;
    parts.push(part);
    for (let i = 0; i < corners.length; i += 2) cuts.add(corners[i] as number);
  }
  parts.sort((a, b) => a.x0 - b.x0);
  const at = [...cuts].sort((a, b) => a - b);
  const smallest = (window[2] - window[0]) * 1e-12;
  let active: Part[] = [];
  let next = 0;
  let area = 0;
  for (let i = 1; i < at.length; i++) {
    const [from, to] = [at[i - 1] as number, at[i] as number];
    if (to - from <= smallest) continue;
    const middle = (from + to) / 2;
    for (let part = parts[next]; part && part.x0 < middle; part = parts[++next]) active.push(part);
    active = active.filter((part) => part.x1 > middle);
    area += stripArea(
      active.map((part) => trapezoidAt(part, middle)),
      from,
      to,
    );
  }
  return area;
}

/** A polygon's lower and upper edges, each from left to right. */
interface Part {
  readonly x0: number;
  readonly x1: number;
  readonly edges: readonly Edge[];
}

/** y = slope * x + rise, between two abscissas. */
interface Edge {
  readonly from: number;
  readonly to: number;
  readonly slope: number;
  readonly rise: number;
}

/** What a polygon is within a strip. */
interface Trapezoid {
  readonly low: Edge;
  readonly high: Edge;
}

function partOf(corners: Polygon): Part {
  const edges: Edge[] = [];
  let [x0, x1] = [Infinity, -Infinity];
  for (let i = 0; i < corners.length; i += 2) {
    const [ax, ay] = [corners[i] as number, corners[i + 1] as number];
    const bx = corners[(i + 2) % corners.length] as number;
    const by = corners[(i + 3) % corners.length] as number;
    x0 = Math.min(x0, ax);
    x1 = Math.max(x1, ax);
    if (ax === bx) continue;
    const slope = (by - ay) / (bx - ax);
    edges.push({ from: Math.min(ax, bx), to: Math.max(ax, bx), slope, rise: ay - slope * ax });
  }
  return { x0, x1, edges };
}

function trapezoidAt({ edges }: Part, x: number): Trapezoid {
  let low: Edge | undefined;
  let high: Edge | undefined;
  for (const edge of edges) {
    if (edge.from >= x || edge.to <= x) continue;
    if (!low || yOf(edge, x) < yOf(low, x)) low = edge;
    if (!high || yOf(edge, x) > yOf(high, x)) high = edge;
  }
  const none: Edge = { from: x, to: x, slope: 0, rise: 0 };
  return { low: low ?? none, high: high ?? none };
}

const yOf = ({ slope, rise }: Edge, x: number): number => slope * x + rise;

/** Covered area between two abscissas with no corner between them. */
function stripArea(trapezoids: readonly Trapezoid[], from: number, to: number): number {
  if (trapezoids.length === 0) return 0;
  const middle = (from + to) / 2;
  const crossing = trapezoids.length > 1 ? crossingWithin(trapezoids, from, to) : undefined;
  if (crossing === undefined) return (to - from) * coveredLength(trapezoids, middle);
  return stripArea(trapezoids, from, crossing) + stripArea(trapezoids, crossing, to);
}

/** Where two edges cross well inside a strip; undefined where none do. */
function crossingWithin(trapezoids: readonly Trapezoid[], from: number, to: number): number | undefined {
  const middle = (from + to) / 2;
  const edges = trapezoids.flatMap(({ low, high }) => [low, high]);
  edges.sort((a, b) => yOf(a, middle) - yOf(b, middle));
  const margin = (to - from) * 1e-6;
  for (let i = 1; i < edges.length; i++) {
    const [below, above] = [edges[i - 1] as Edge, edges[i] as Edge];
    if (yOf(below, from) <= yOf(above, from) && yOf(below, to) <= yOf(above, to)) continue;
    const x = (below.rise - above.rise) / (above.slope - below.slope);
    if (x > from + margin && x < to - margin) return x;
  }
  return undefined;
}

function coveredLength(trapezoids: readonly Trapezoid[], x: number): number {
  const spans = trapezoids.map(({ low, high }) => [yOf(low, x), yOf(high, x)] as const);
  spans.sort((a, b) => a[0] - b[0]);
  let length = 0;
  let reached = -Infinity;
  for (const [low, high] of spans) {
    if (high <= reached) continue;
    length += high - Math.max(low, reached);
    reached = high;
  }
  return length;
}

/** The part of a convex polygon that lies in a window (Sutherland and Hodgman, 1974). */
export function clipped(polygon: Polygon, [x0, y0, x1, y1]: Window): Polygon {
  let corners = polygon;
  for (const [axis, limit, sign] of [
    [0, x0, 1],
    [0, x1, -1],
    [1, y0, 1],
    [1, y1, -1],
  ] as const)
    corners = clippedAt(corners, axis, limit, sign);
  return corners;
}

function clippedAt(corners: Polygon, axis: 0 | 1, limit: number, sign: 1 | -1): Polygon {
  const kept: number[] = [];
  for (let i = 0; i < corners.length; i += 2) {
    const j = (i + 2) % corners.length;
    const inside = ((corners[i + axis] as number) - limit) * sign;
    const then = ((corners[j + axis] as number) - limit) * sign;
    const [x, y] = [corners[i] as number, corners[i + 1] as number];
    if (inside >= 0) kept.push(x, y);
    if (inside > 0 === then > 0 || inside === 0 || then === 0) continue;
    const t = inside / (inside - then);
    const cut = [x + t * ((corners[j] as number) - x), y + t * ((corners[j + 1] as number) - y)];
    // Exactly on the limit, so that neighbors cut there share their corners.
    cut[axis] = limit;
    kept.push(cut[0] as number, cut[1] as number);
  }
  return kept;
}
