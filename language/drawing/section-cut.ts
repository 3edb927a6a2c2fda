import { convexParts, type Piece, type Solid, type Vec3 } from '../layout/index.ts';
import type { Ticks } from '../units/index.ts';
import { extentOf } from './extent.ts';
import type { Seen } from './places.ts';
import { corners, fromCut, type Projection, project, type Silhouette } from './project.ts';
import { stackedOutline } from './stacked-outline.ts';

/** Edges of a solid by its corners (see `Solid`). */
const EDGES = [0, 1, 2, 3].flatMap((i) => [
  [i, (i + 1) % 4],
  [i + 4, ((i + 1) % 4) + 4],
  [i, i + 4],
]) as readonly (readonly [number, number])[];

/** A cut face lies a hair before what is left of its piece, in millimeters. */
const BEFORE = 0.01;

/**
 * Pieces as seen from a cut across the run toward station 0: what stands before the cut is taken away, what
 * it goes through shows its cut face, what lies beyond `from` is left out.
 */
export function seeFromCut(pieces: readonly Piece[], station: Ticks, from: Ticks): Seen[] {
  const projection = fromCut(station);
  return pieces.flatMap((piece): Seen[] => {
    const { x0, x1 } = extentOf(piece.solid);
    if (x0 >= station || x1 <= from) return [];
    if (x1 <= station) return [{ piece, shape: project(piece.solid, projection) }];
    const sections = convexParts(piece.solid)
      .map((part) => crossing(part, station))
      .filter(({ length }) => length > 0);
    const beyond = piece.solid.vertices.filter(([x]) => x < station);
    const rest: Seen = { piece, shape: project({ vertices: [...beyond, ...sections.flat()] }, projection) };
    const face = cutFace(sections, projection);
    return [{ piece, shape: { ...face, near: -BEFORE, far: 0 }, cut: true }, rest];
  });
}

/**
 * The face of a piece that is cut through, made of the sections of its parts: of one with grooves they stand side by
 * side through the run, so that its face is a single stretch from below to above wherever it is looked at.
 */
function cutFace(sections: readonly (readonly Vec3[])[], projection: Projection): Silhouette {
  const whole = project({ vertices: sections.flat() }, projection);
  if (sections.length < 2) return whole;
  const parts = sections.map((vertices) => project({ vertices }, projection));
  const outline = swapped(stackedOutline(parts.map((part) => swapped(corners(part)))));
  return { ...whole, outline, parts };
}

/** Corners x, y, x, y ... with across and down changed for one another. */
function swapped(polygon: readonly number[]): readonly number[] {
  return polygon.map((_, at) => polygon[at % 2 === 0 ? at + 1 : at - 1] as number);
}

/** Where a plane across the run meets the edges of a convex solid. */
export function crossing({ vertices }: Solid, station: Ticks): Vec3[] {
  return EDGES.flatMap(([i, j]): Vec3[] => {
    const [a, b] = [vertices[i], vertices[j]];
    if (!a || !b || a[0] > station === b[0] > station) return [];
    const share = (station - a[0]) / (b[0] - a[0]);
    return [[station, a[1] + (b[1] - a[1]) * share, a[2] + (b[2] - a[2]) * share]];
  });
}

/** Strokes at 45 degrees across a convex silhouette, `apart` from one another along the sheet. */
export function hatchLines(
  shape: Silhouette,
  apart: number,
): readonly (readonly [number, number, number, number])[] {
  const { x0, y0, x1, y1 } = shape;
  const points = corners(shape);
  const lines: (readonly [number, number, number, number])[] = [];
  const first = Math.ceil((x0 + y0) / apart);
  const last = Math.min(Math.floor((x1 + y1) / apart), first + 400);
  for (let n = first; n <= last; n++) {
    const sum = n * apart;
    const crossed: number[] = [];
    for (let i = 0; i < points.length; i += 2) {
      const [ax = 0, ay = 0] = [points[i], points[i + 1]];
      const [bx = 0, by = 0] = [points[(i + 2) % points.length], points[(i + 3) % points.length]];
      const [a, b] = [ax + ay - sum, bx + by - sum];
      if (a > 0 === b > 0) continue;
      crossed.push(ax + ((bx - ax) * a) / (a - b));
    }
    const [from, to] = [Math.min(...crossed), Math.max(...crossed)];
    if (to - from > 0.1) lines.push([from, sum - from, to, sum - to]);
  }
  return lines;
}
