import type { Ticks } from '../units/index.ts';

/** A line seen from the front, through three points one above the other: straight between them, and on beyond them. */
export interface Edge {
  /** Heights from the datum, from below. */
  readonly z: readonly [bottom: Ticks, middle: Ticks, top: Ticks];
  /** Stations there. */
  readonly x: readonly [bottom: number, middle: number, top: number];
}

/** The station of an edge at a height. */
export function edgeAt({ z, x }: Edge, height: number): number {
  const low = height <= z[1] ? 0 : 1;
  const [z0, z1, x0, x1] = low === 0 ? [z[0], z[1], x[0], x[1]] : [z[1], z[2], x[1], x[2]];
  return x0 === x1 ? x0 : x0 + ((x1 - x0) * (height - z0)) / (z1 - z0);
}

/** The edge farther along by so much. */
export function edgeMoved({ z, x }: Edge, by: number): Edge {
  return { z, x: [x[0] + by, x[1] + by, x[2] + by] };
}

/** A straight edge through a point, leaning `slope` along the run for one tick up, over the heights of another. */
export function straightEdge(z: Edge['z'], [x, at]: readonly [x: number, z: number], slope: number): Edge {
  const station = (height: Ticks) => x + slope * (height - at);
  return { z, x: [station(z[0]), station(z[1]), station(z[2])] };
}

/**
 * A straight line over a stretch of an edge, as its stations at the top and the bottom of the stretch. Where the
 * edge bends within it, the line is moved to the side of `inward` (1 along the run, -1 against it) till none of
 * the edge is beyond it.
 */
export function chordOf(
  edge: Edge,
  [low, high]: readonly [low: Ticks, high: Ticks],
  inward: 1 | -1,
): { readonly top: number; readonly bottom: number } {
  const bottom = edgeAt(edge, low);
  const top = edgeAt(edge, high);
  const [, bend] = edge.z;
  if (bend <= low || bend >= high) return { top, bottom };
  const straight = bottom + ((top - bottom) * (bend - low)) / (high - low);
  const by = inward * Math.max(0, inward * (edge.x[1] - straight));
  return { top: top + by, bottom: bottom + by };
}
