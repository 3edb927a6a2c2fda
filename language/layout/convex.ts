import type { Solid, Vec3 } from './piece.ts';

/** Corners of the six faces of a solid, going round each. */
const BOX_FACES = [
  [0, 1, 2, 3],
  [4, 5, 6, 7],
  [0, 1, 5, 4],
  [1, 2, 6, 5],
  [2, 3, 7, 6],
  [3, 0, 4, 7],
] as const;

/** Edges that differ in direction: along the grain, and round both ends. */
const BOX_EDGES = [
  [0, 4],
  [0, 1],
  [0, 3],
  [4, 5],
  [4, 7],
] as const;

type Quad = readonly [number, number, number, number];
type Line = readonly [number, number];

/** Faces and edges of a solid of rings of four corners, one over the other. */
const ringFaces = (rings: number): readonly Quad[] => [
  [0, 1, 2, 3],
  ...Array.from({ length: rings - 1 }, (_, ring) =>
    [0, 1, 2, 3].map((side): Quad => sideOf(ring, side)),
  ).flat(),
  [4 * rings - 4, 4 * rings - 3, 4 * rings - 2, 4 * rings - 1],
];
const sideOf = (ring: number, side: number): Quad => {
  const [a, b] = [4 * ring + side, 4 * ring + ((side + 1) % 4)];
  return [a, b, b + 4, a + 4];
};
const ringEdges = (rings: number): readonly Line[] =>
  ringFaces(rings).flatMap((face) => face.map((from, at): Line => [from, face[(at + 1) % 4] ?? from]));

const HIPPED_FACES = ringFaces(3);
const HIPPED_EDGES = ringEdges(3);
const facesFor = ({ vertices }: Pick<Body, 'vertices'>): readonly Quad[] =>
  vertices.length > 8 ? HIPPED_FACES : BOX_FACES;
const edgesFor = ({ vertices }: Pick<Body, 'vertices'>): readonly Line[] =>
  vertices.length > 8 ? HIPPED_EDGES : BOX_EDGES;

/** A flat face with its outward unit normal and where its plane is along that. */
export interface Face {
  readonly corners: readonly Vec3[];
  readonly normal: Vec3;
  readonly at: number;
}

/** A solid prepared for being compared with others. */
export interface Body {
  readonly vertices: readonly Vec3[];
  readonly low: Vec3;
  readonly high: Vec3;
  /** A block along the axes: its bounds are all there is to it. */
  readonly block: boolean;
}

/** The convex parts of a solid. */
export function convexParts(solid: Solid): readonly Solid[] {
  return solid.parts ?? [solid];
}

/** A solid with all its corners taken elsewhere, by a map that keeps straight lines straight. */
export function movedSolid({ vertices, parts, hollows }: Solid, moved: (vertex: Vec3) => Vec3): Solid {
  const all = (solids: readonly Solid[]) => solids.map((one) => movedSolid(one, moved));
  return {
    vertices: vertices.map(moved),
    ...(parts ? { parts: all(parts) } : {}),
    ...(hollows ? { hollows: hollows.map((one) => ({ ...movedSolid(one, moved), side: one.side })) } : {}),
  };
}

/** Of a convex solid, or of a convex part of one. */
export function bodyOf({ vertices }: Solid): Body {
  const low: [number, number, number] = [Infinity, Infinity, Infinity];
  const high: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (const vertex of vertices) {
    for (const axis of AXES) {
      low[axis] = Math.min(low[axis], vertex[axis]);
      high[axis] = Math.max(high[axis], vertex[axis]);
    }
  }
  const atBounds = (vertex: Vec3) =>
    AXES.every((axis) => vertex[axis] === low[axis] || vertex[axis] === high[axis]);
  return { vertices, low, high, block: vertices.every(atBounds) };
}

export const AXES = [0, 1, 2] as const;

/**
 * How deep two convex bodies are in one another: along the direction, square to a face or to an edge of each,
 * in which they overlap least (separating axis theorem: S. Gottschalk, M. C. Lin, D. Manocha, "OBBTree",
 * SIGGRAPH 1996). Zero or less when they are apart or touch.
 */
export function depthOfOverlap(a: Body, b: Body): number {
  let least = Infinity;
  for (const axis of AXES) {
    least = Math.min(least, a.high[axis] - b.low[axis], b.high[axis] - a.low[axis]);
    if (least <= 0) return least;
  }
  if (a.block && b.block) return least;
  for (const axis of separatingAxes(a, b)) {
    const [aLow, aHigh] = shadow(a, axis);
    const [bLow, bHigh] = shadow(b, axis);
    least = Math.min(least, aHigh - bLow, bHigh - aLow);
    if (least <= 0) return least;
  }
  return least;
}

function separatingAxes(a: Body, b: Body): Vec3[] {
  const axes = [...facesOf(a), ...facesOf(b)].map(({ normal }) => normal);
  for (const p of edgesFor(a)) {
    for (const q of edgesFor(b)) {
      const axis = unit(cross(edge(a, p), edge(b, q)));
      if (axis) axes.push(axis);
    }
  }
  return axes;
}

function shadow({ vertices }: Body, axis: Vec3): readonly [number, number] {
  let low = Infinity;
  let high = -Infinity;
  for (const vertex of vertices) {
    const at = dot(vertex, axis);
    low = Math.min(low, at);
    high = Math.max(high, at);
  }
  return [low, high];
}

/** The faces of a body. One with no area has no normal and is left out. */
export function facesOf(body: Body): Face[] {
  const { vertices } = body;
  const middle = scaled(vertices.reduce(plus, [0, 0, 0]), 1 / vertices.length);
  return facesFor(body).flatMap((face): Face[] => {
    const [p, q, r, s] = face.map((index) => vertices[index] as Vec3) as [Vec3, Vec3, Vec3, Vec3];
    // Of the diagonals, so that no single short edge decides the direction.
    const square = unit(cross(minus(r, p), minus(s, q)));
    if (!square) return [];
    const outward = dot(square, minus(p, middle)) < 0 ? scaled(square, -1) : square;
    return [{ corners: [p, q, r, s], normal: outward, at: dot(p, outward) }];
  });
}

function edge({ vertices }: Body, [from, to]: readonly [number, number]): Vec3 {
  return unit(minus(vertices[to] as Vec3, vertices[from] as Vec3)) ?? [0, 0, 0];
}

export const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

export const minus = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];

const plus = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];

const scaled = (a: Vec3, by: number): Vec3 => [a[0] * by, a[1] * by, a[2] * by];

export const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** Undefined for a vector of no length, or of parallel edges' cross product. */
export function unit(a: Vec3): Vec3 | undefined {
  const length = Math.hypot(...a);
  return length > 1e-9 ? scaled(a, 1 / length) : undefined;
}
