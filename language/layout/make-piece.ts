import { degrees, type Ticks } from '../units/index.ts';
import { movedSolid } from './convex.ts';
import { hollowed } from './grooved-solid.ts';
import type { Cut, EndCut, Groove, Piece, Solid, Vec3 } from './piece.ts';

/** Everything about a piece but its shape. */
export type About = Omit<Piece, 'cut' | 'solid'>;

/** Where one end of a piece is. */
export interface End {
  /** Along the grain, at the edge where width and thickness begin. */
  readonly at: number;
  /** How far the end moves along the grain for one tick of width: the tangent of the miter. */
  readonly miter?: number;
  /** The same for one tick of thickness: the tangent of the bevel. */
  readonly bevel?: number;
}

/** The shape of a piece in axes of its own, which are unit vectors square to one another. */
export interface Shape {
  readonly stock: string;
  readonly ripped: boolean;
  /** Where all three axes begin: a corner of the section. */
  readonly origin: Vec3;
  readonly grain: Vec3;
  readonly across: Vec3;
  readonly through: Vec3;
  readonly width: Ticks;
  readonly thickness: Ticks;
  /** The second end lies beyond the first at every corner of the section. */
  readonly ends: readonly [End, End];
  /** Square-ended; its width at positions along the grain, from the first end to the second; `width` is that of the blank. */
  readonly scribe?: readonly { readonly at: number; readonly width: number }[];
  /** Ripped with a taper: its width where the grain begins, and what it grows for one tick along; not `width` then. */
  readonly taper?: { readonly start: number; readonly per: number };
  /**
   * Of a piece ripped at an angle along the edge where width begins: how far that edge moves in for one tick of
   * thickness; out, where negative. `width` is that of the wider face.
   */
  readonly edge?: number;
  /** Square-ended, with a slope on all four sides up to a ridge or a point; `edge` thick at the rim. */
  readonly hip?: { readonly edge: Ticks };
  /** Cut out of it; where the stock comes with them, as channels do, they are no cut. */
  readonly grooves?: readonly Groove[];
  readonly comesGrooved?: boolean;
  /** Lines across it, by how far along the grain. */
  readonly marks?: readonly Ticks[];
}

const SQUARE: EndCut = { miter: 0, bevel: 0 };
const SQUARE_ENDS: readonly [EndCut, EndCut] = [SQUARE, SQUARE];

/**
 * The one constructor of cut and solid. A piece along the axes of the run, with whole numbers and square
 * ends, has whole corners; any other has floats, and lengths rounded down to the whole tick, so that a cut
 * is never longer than its place.
 */
export function makePiece(about: About, shape: Shape): Piece {
  const { thickness } = shape;
  const [first, second] = shape.ends;
  const begins = widthsAt(first, shape);
  const ends = widthsAt(second, shape);
  const starts = cornersAlong(first, begins, thickness);
  const stops = cornersAlong(second, ends, thickness);
  return {
    key: about.key,
    label: about.label,
    role: about.role,
    run: about.run,
    gate: about.gate,
    bay: about.bay,
    until: about.until,
    course: about.course,
    side: about.side,
    cut: cutOf(shape, starts, stops, shape.taper && [...begins, ...ends]),
    solid: solidOf(shape, starts, stops, begins, ends),
    supports: about.supports,
    from: about.from,
  };
}

/**
 * The piece turned about an axis through the screen at `pivot` (station and height), so that what was plumb leans
 * `slope` along the run for one tick up, and slid that way till its middle is as high as before. This changes no cut.
 */
export function leaned(
  piece: Piece,
  { slope, pivot }: { readonly slope: number; readonly pivot: readonly [x: number, z: number] },
): Piece {
  if (slope === 0) return piece;
  const length = Math.hypot(1, slope);
  const [cos, sin] = [1 / length, slope / length];
  const { vertices } = piece.solid;
  const middle = (axis: 0 | 2) => vertices.reduce((sum, vertex) => sum + vertex[axis], 0) / vertices.length;
  const [mx, mz] = [middle(0) - pivot[0], middle(2) - pivot[1]];
  const slid = (mz + sin * mx - cos * mz) / cos;
  const moved = ([x, y, z]: Vec3): Vec3 => {
    const [dx, dz] = [x - pivot[0], z - pivot[1]];
    return [pivot[0] + cos * dx + sin * (dz + slid), y, pivot[1] - sin * dx + cos * (dz + slid)];
  };
  return { ...piece, solid: movedSolid(piece.solid, moved) };
}

/** `begins` and `ends` are the widths of either end, where thickness begins and where it stops. */
function solidOf(
  shape: Shape,
  starts: Corners,
  stops: Corners,
  begins: readonly [number, number],
  ends: readonly [number, number],
): Solid {
  if (shape.hip) return hippedSolid(shape, shape.hip.edge);
  if (shape.scribe) return scribedSolid(shape, shape.scribe);
  const { thickness, edge = 0 } = shape;
  const [near, far] = [Math.max(0, 0 - edge * thickness), Math.max(0, edge * thickness)];
  const ring = (at: Corners, widths: readonly [number, number]): Vec3[] => [
    corner(shape, at[0], near, 0),
    corner(shape, at[1], widths[0], 0),
    corner(shape, at[2], widths[1], thickness),
    corner(shape, at[3], far, thickness),
  ];
  const vertices = [...ring(starts, begins), ...ring(stops, ends)];
  return shape.grooves?.length ? { vertices, ...hollowed(shape, shape.grooves, corner) } : { vertices };
}

/** A part between every two bends of the edge; one of them where it is straight. */
function scribedSolid(shape: Shape, scribe: NonNullable<Shape['scribe']>): Solid {
  const bends = scribe.filter((point, i) => {
    const [before, after] = [scribe[i - 1], scribe[i + 1]];
    if (!before || !after) return true;
    const straight =
      before.width + ((after.width - before.width) * (point.at - before.at)) / (after.at - before.at);
    return Math.abs(straight - point.width) > 1e-3;
  });
  const rings = bends.map(({ at, width }): Vec3[] =>
    [
      [0, 0],
      [width, 0],
      [width, shape.thickness],
      [0, shape.thickness],
    ].map(([v = 0, s = 0]) => corner(shape, at, v, s)),
  );
  const parts = rings.slice(1).map((ring, i) => ({ vertices: [...(rings[i] ?? []), ...ring] }));
  return parts.length > 1 ? { vertices: rings.flat(), parts } : { vertices: rings.flat() };
}

/**
 * The piece made in axes of its own, level ones turned by a quarter: `at` is where they begin in the run's frame, and
 * their first axis goes toward the run's back, or toward its front where `way` is -1. This changes no cut.
 */
export function turned(piece: Piece, at: readonly [x: number, y: number], way: 1 | -1): Piece {
  const moved = ([x, y, z]: Vec3): Vec3 => [at[0] - way * y, at[1] + way * x, z];
  return { ...piece, solid: movedSolid(piece.solid, moved) };
}

/** Alike slopes on all sides meet over the middle of the shorter. */
function hippedSolid(shape: Shape, edge: Ticks): Solid {
  const { width, thickness, ends } = shape;
  const length = ends[1].at - ends[0].at;
  const inset = Math.min(width, length) / 2;
  const ring = (rise: number, by: number): Vec3[] => [
    corner(shape, ends[0].at + by, by, rise),
    corner(shape, ends[1].at - by, by, rise),
    corner(shape, ends[1].at - by, width - by, rise),
    corner(shape, ends[0].at + by, width - by, rise),
  ];
  return { vertices: [...ring(0, 0), ...ring(edge, 0), ...ring(thickness, inset)] };
}

type Corners = readonly [number, number, number, number];

/** Width of an end where thickness begins, and where it stops. A tapered edge meets a slanting end off its square. */
function widthsAt(
  { at, miter = 0, bevel = 0 }: End,
  { width, thickness, taper }: Shape,
): readonly [number, number] {
  if (!taper) return [width, width];
  const along = (a: number) => (taper.start + taper.per * a) / (1 - taper.per * miter);
  return [along(at), along(at + bevel * thickness)];
}

/** Positions along the grain of an end's four corners, in the order of a solid's. */
function cornersAlong(
  { at, miter = 0, bevel = 0 }: End,
  [near, far]: readonly [number, number],
  thickness: Ticks,
): Corners {
  const over = (width: number) => (miter === 0 ? 0 : miter * width);
  const overThickness = bevel === 0 ? 0 : bevel * thickness;
  return [at, at + over(near), at + over(far) + overThickness, at + overThickness];
}

function corner({ origin, grain, across, through }: Shape, a: number, v: number, s: number): Vec3 {
  return [
    origin[0] + a * grain[0] + v * across[0] + s * through[0],
    origin[1] + a * grain[1] + v * across[1] + s * through[1],
    origin[2] + a * grain[2] + v * across[2] + s * through[2],
  ];
}

/** `widths` of a tapered piece: at both corners of its first end, then of its second. */
function cutOf(shape: Shape, starts: Corners, stops: Corners, widths: readonly number[] | undefined): Cut {
  const [first, second] = shape.ends;
  const square = isSquare(first) && isSquare(second);
  const long = square ? second.at - first.at : Math.max(...stops) - Math.min(...starts);
  const short = square ? long : Math.min(...stops) - Math.max(...starts);
  return {
    stock: shape.stock,
    width: widths ? Math.ceil(Math.max(...widths) - 1e-6) : shape.width,
    thickness: shape.thickness,
    ...(widths
      ? {
          taper: [
            Math.round(Math.max(...widths.slice(0, 2))),
            Math.round(Math.max(...widths.slice(2))),
          ] as const,
        }
      : {}),
    ripped: shape.ripped,
    longPoint: wholeBelow(long),
    shortPoint: Math.max(0, wholeBelow(short)),
    ...(shape.scribe
      ? {
          scribe: shape.scribe.map(({ at, width }) => ({
            at: wholeBelow(at - first.at),
            width: wholeBelow(width),
          })),
        }
      : {}),
    ...(shape.edge ? { edge: degrees(Math.atan(Math.abs(shape.edge))) } : {}),
    ...(shape.hip ? { hip: { edge: shape.hip.edge, slope: slopeOf(shape, shape.hip.edge) } } : {}),
    ...(shape.grooves?.length && !shape.comesGrooved ? { grooves: shape.grooves } : {}),
    ...(shape.marks ? { marks: shape.marks.map((at) => wholeBelow(at - first.at)) } : {}),
    ends: square ? SQUARE_ENDS : [anglesOf(first), anglesOf(second)],
  };
}

function slopeOf({ width, thickness, ends }: Shape, edge: Ticks): number {
  return degrees(Math.atan((thickness - edge) / (Math.min(width, ends[1].at - ends[0].at) / 2)));
}

/** Down to a whole tick; a millionth of one is what floats may lose. */
const wholeBelow = (x: number): Ticks => Math.floor(x + 1e-6);

const isSquare = ({ miter = 0, bevel = 0 }: End): boolean => miter === 0 && bevel === 0;

function anglesOf({ miter = 0, bevel = 0 }: End): EndCut {
  return { miter: degrees(Math.atan(miter)), bevel: degrees(Math.atan(bevel)) };
}
