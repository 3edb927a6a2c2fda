import type { Solid, Vec3 } from '../../layout/index.ts';
import { hullOf, type Point } from '../convex-hull.ts';
import type { Polygon } from './covered-area.ts';

/** An upright plane: a point of it, and the level direction in which its own x runs. Plan coordinates, in ticks. */
export interface UprightPlane {
  readonly origin: Vec3;
  /** East and north, of length 1. */
  readonly along: readonly [number, number];
}

/** Takes a point to the plane as seen from an eye: x along it, y up from the datum; undefined for what is not between. */
export interface Sight {
  /** Distance of the eye from the plane; never negative. */
  readonly distance: number;
  /** How far a point is from the plane, on the side of the eye. */
  depthOf(point: Vec3): number;
  /** Where the line from the eye through a point meets the plane. The point lies nearer to it than the eye. */
  onPlane(point: Vec3): readonly [x: number, y: number];
}

export function sightOn({ origin, along }: UprightPlane, eye: Vec3): Sight {
  const across = (point: Vec3) => (point[0] - origin[0]) * along[1] - (point[1] - origin[1]) * along[0];
  const alongOf = (point: Vec3) => (point[0] - origin[0]) * along[0] + (point[1] - origin[1]) * along[1];
  const side = across(eye) < 0 ? -1 : 1;
  const distance = across(eye) * side;
  const eyeAlong = alongOf(eye);
  const depthOf = (point: Vec3) => across(point) * side;
  return {
    distance,
    depthOf,
    onPlane: (point) => {
      const t = distance / (distance - depthOf(point));
      return [eyeAlong + t * (alongOf(point) - eyeAlong), eye[2] + t * (point[2] - eye[2])];
    },
  };
}

/** The twelve edges of a solid by its corners (see `Solid`). */
const EDGES: readonly (readonly [number, number])[] = [
  [0, 1],
  [1, 2],
  [2, 3],
  [3, 0],
  [4, 5],
  [5, 6],
  [6, 7],
  [7, 4],
  [0, 4],
  [1, 5],
  [2, 6],
  [3, 7],
];

/** Nearer to the eye than this nothing is counted: one tenth of a millimeter. */
const NEAR = 800;

/**
 * What a convex solid hides of a plane from an eye: the outline of its part between the two, taken to the plane.
 * Empty for what lies behind the eye or behind the plane.
 */
export function shadowOf(solid: Solid, sight: Sight): Polygon {
  const nearest = sight.distance - NEAR;
  if (nearest <= 0) return [];
  const depths = solid.vertices.map((vertex) => sight.depthOf(vertex));
  const points: Point[] = [];
  const add = (point: Vec3) => points.push(sight.onPlane(point));
  for (const [index, vertex] of solid.vertices.entries()) {
    const depth = depths[index] as number;
    if (depth >= 0 && depth <= nearest) add(vertex);
  }
  for (const [a, b] of EDGES) {
    const [da, db] = [depths[a] as number, depths[b] as number];
    for (const limit of [0, nearest]) {
      if (da - limit > 0 === db - limit > 0) continue;
      const t = (limit - da) / (db - da);
      add(between(solid.vertices[a] as Vec3, solid.vertices[b] as Vec3, t));
    }
  }
  return points.length < 3 ? [] : hullOf(points).flat();
}

function between(a: Vec3, b: Vec3, t: number): Vec3 {
  return [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1]), a[2] + t * (b[2] - a[2])];
}
