import { type Body, bodyOf, convexParts, cross, dot, type Face, facesOf, minus, unit } from './convex.ts';
import type { RunLayout } from './layout.ts';
import { leafNames } from './leaf-pair.ts';
import type { Piece, Solid, Vec3 } from './piece.ts';

/** A piece that does not rest on what is to hold it. */
export interface Unsupported {
  readonly piece: string;
  readonly support: string;
}

/**
 * Pieces that do not touch one of their supports with some of their faces, or that nothing holds though they
 * are no posts. Cuts are rounded down to the measure's marks, so a joint may stand open by less than one;
 * a leaf's hinge stile stands off its post by the hinge gap.
 */
export function findUnsupported({
  pieces,
  spec,
  borrowed = [],
}: Pick<RunLayout, 'pieces' | 'spec'> & Partial<Pick<RunLayout, 'borrowed'>>): readonly Unsupported[] {
  const byKey = new Map([...pieces, ...borrowed].map((piece) => [piece.key, piece]));
  const hingeGaps = new Map(
    spec.gates.flatMap((gate) => leafNames(gate).map((name) => [name, gate.hingeGap.value] as const)),
  );
  const opens = ({ role, gate, cut }: Piece, holder: Piece): number =>
    role === 'stile' && holder.role === 'post' && gate !== undefined
      ? (hingeGaps.get(gate) ?? 0)
      : Math.max(spec.measure.step - 1, roomIn(holder, cut.thickness));
  return pieces.flatMap((piece): Unsupported[] => {
    // A cable hangs from eyes.
    if (piece.role === 'cable') return [];
    if (piece.supports.length === 0) return piece.role === 'post' ? [] : [{ piece: piece.key, support: '' }];
    return piece.supports.flatMap((support): Unsupported[] => {
      const holder = byKey.get(support);
      const held = holder && contactArea(piece.solid, holder.solid, opens(piece, holder)) > 0;
      return held ? [] : [{ piece: piece.key, support }];
    });
  });
}

/** What something so thick may move in a groove of its holder. */
function roomIn({ solid }: Piece, thickness: number): number {
  const [hollow] = solid.hollows ?? [];
  if (!hollow) return 0;
  const { low, high } = bodyOf(hollow);
  return high[1] - low[1] - thickness;
}

/**
 * Area, in square ticks, over which faces of two solids lie against one another, no farther apart than
 * `tolerance` ticks.
 */
export function contactArea(a: Solid, b: Solid, tolerance: number): number {
  const others = convexParts(b).map(bodyOf);
  return convexParts(a)
    .map(bodyOf)
    .reduce(
      (sum, one) => sum + others.reduce((all, other) => all + areaBetween(one, other, tolerance), 0),
      0,
    );
}

function areaBetween(bodyA: Body, bodyB: Body, tolerance: number): number {
  if (apart(bodyA, bodyB, tolerance)) return 0;
  const others = facesOf(bodyB);
  let area = 0;
  for (const face of facesOf(bodyA)) {
    for (const other of others) {
      // Looking at each other, in planes that are as good as one.
      if (dot(face.normal, other.normal) > -1 + 1e-9) continue;
      if (Math.abs(face.at + other.at) > tolerance + 1e-3) continue;
      area += sharedArea(face, other);
    }
  }
  return area;
}

function apart(a: Body, b: Body, tolerance: number): boolean {
  const reach = tolerance + 1;
  return a.low.some(
    (low, axis) => low - reach > (b.high[axis] ?? 0) || (b.low[axis] ?? 0) - reach > (a.high[axis] ?? 0),
  );
}

type Point = readonly [number, number];

function sharedArea(face: Face, other: Face): number {
  const [origin] = face.corners;
  if (!origin) return 0;
  const seed: Vec3 = Math.abs(face.normal[0]) < 0.6 ? [1, 0, 0] : [0, 1, 0];
  const u = unit(cross(face.normal, seed)) ?? seed;
  const v = cross(face.normal, u);
  const flat = (corner: Vec3): Point => [dot(minus(corner, origin), u), dot(minus(corner, origin), v)];
  const clipped = clip(turnedLeft(other.corners.map(flat)), turnedLeft(face.corners.map(flat)));
  return Math.max(0, signedArea(clipped));
}

/** Sutherland and Hodgman: what of `shape` lies in the convex polygon `window`, both counterclockwise. */
function clip(shape: readonly Point[], window: readonly Point[]): readonly Point[] {
  return window.reduce<readonly Point[]>((rest, from, index) => {
    const to = window[(index + 1) % window.length] ?? from;
    const side = ([x, y]: Point) => (to[0] - from[0]) * (y - from[1]) - (to[1] - from[1]) * (x - from[0]);
    return rest.flatMap((point, at): Point[] => {
      const before = rest.at(at - 1) ?? point;
      const [here, there] = [side(point), side(before)];
      const part = there / (there - here);
      const met: Point = [
        before[0] + part * (point[0] - before[0]),
        before[1] + part * (point[1] - before[1]),
      ];
      if (here >= 0) return there >= 0 ? [point] : [met, point];
      return there >= 0 ? [met] : [];
    });
  }, shape);
}

function turnedLeft(polygon: readonly Point[]): readonly Point[] {
  return signedArea(polygon) < 0 ? polygon.toReversed() : polygon;
}

function signedArea(polygon: readonly Point[]): number {
  return (
    polygon.reduce((sum, [x, y], index) => {
      const [nextX, nextY] = polygon[(index + 1) % polygon.length] ?? [x, y];
      return sum + x * nextY - nextX * y;
    }, 0) / 2
  );
}
