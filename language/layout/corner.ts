import { type CornerKind, type InfillSpec, facesOf as modelFacesOf, type RunSpec } from '../model/index.ts';
import type { Ticks } from '../units/index.ts';
import type { Range } from './infill.ts';

/** A point or a direction seen from above: along the first run, and toward its back. */
export type Flat = readonly [x: number, y: number];

/** Where slats on a face end at a corner: along their run, where they lie on the post, and how far on for each tick of thickness. */
export interface SlatEnd {
  readonly at: number;
  readonly slope: number;
}

/** What decides how two runs meet. */
export interface CornerProblem {
  readonly kind: CornerKind;
  /** Degrees, positive toward the back of the first run. */
  readonly turn: number;
  /** The shared post in the first run's frame. */
  readonly post: { readonly x: Range; readonly y: Range };
  /** Thickest level slat that lies on a face of the post, of each run. */
  readonly first?: Ticks;
  readonly second?: Ticks;
  /** That face, of the second run, and where it is in its own frame. */
  readonly face?: 'front' | 'back';
  readonly plane: Ticks;
}

/** A corner worked out. */
export interface Corner {
  /** Where the second run begins, in the first run's frame. */
  readonly at: Flat;
  /** How much of the second run's tape the shared post takes, and where it is through that run. */
  readonly along: Ticks;
  readonly depth: Range;
  /** Ends of slats on a face, each in its own run; none where nothing but the post's own face ends them. */
  readonly ends: { readonly first?: SlatEnd; readonly second?: SlatEnd };
}

/** Far enough that a slope loses nothing to the size of the coordinates. */
const FAR = 1e6;

/** Floats lose less than this. */
const TINY = 1e-6;

/**
 * Where the second run stands and how slats on a face end. Plane trigonometry: slats lie in strips whose inner
 * lines touch the post; a miter goes through both crossings of inner and outer lines, which halves the turn;
 * lap and butt end one strip on a line of the other.
 */
export function cornerOf({ kind, turn, post, first, second, face, plane }: CornerProblem): Corner {
  const { along: u, back: n } = axesOf(turn);
  const corners = cornersOf(post.x, post.y);
  const middle: Flat = [(post.x[0] + post.x[1]) / 2, (post.y[0] + post.y[1]) / 2];
  const start = Math.min(...corners.map((corner) => dot(corner, u)));
  const along = Math.ceil(Math.max(...corners.map((corner) => dot(corner, u))) - start - TINY);
  const across = corners.map((corner) => dot(corner, n));
  const out = face === 'front' ? -1 : 1;
  const inner = out * Math.max(...across.map((a) => out * a));
  const offset = second === undefined ? dot(middle, n) : inner - plane;
  const at: Flat = [start * u[0] + offset * n[0], start * u[1] + offset * n[1]];
  const depth: Range = [Math.round(Math.min(...across) - offset), Math.round(Math.max(...across) - offset)];
  const base = { at, along, depth };
  if (turn === 0 || face === undefined || second === undefined) return { ...base, ends: {} };

  const touching = corners.reduce((best, corner) =>
    out * dot(corner, n) > out * dot(best, n) + TINY ? corner : best,
  );
  if (kind === 'post' || first === undefined)
    return { ...base, ends: { second: { at: dot(touching, u) - start, slope: 0 } } };

  const faceLine = face === 'front' ? post.y[0] : post.y[1];
  // Where the first run's strip, `a` off the post, meets the second one's, `b` off.
  const crossing = (a: number, b: number): Flat => {
    const y = faceLine + out * a;
    return [(inner + out * b - n[1] * y) / n[0], y];
  };
  const endOf = (line: (off: number) => number): SlatEnd => ({
    at: line(0),
    slope: clean((line(FAR) - line(0)) / FAR),
  });
  const ofFirst = (point: Flat) => point[0];
  const ofSecond = (point: Flat) => dot(point, u) - start;
  switch (kind) {
    case 'miter':
      return {
        ...base,
        ends: {
          first: endOf((off) => ofFirst(crossing(off, off))),
          second: endOf((off) => ofSecond(crossing(off, off))),
        },
      };
    case 'butt':
      return {
        ...base,
        ends: {
          first: endOf((off) => ofFirst(crossing(off, second))),
          second: endOf((off) => ofSecond(crossing(0, off))),
        },
      };
    case 'lap':
      return {
        ...base,
        ends: {
          first: endOf((off) => ofFirst(crossing(off, 0))),
          second: endOf((off) => ofSecond(crossing(first, off))),
        },
      };
  }
}

/** The second run's directions in the first one's frame: along it, and toward its back. */
export function axesOf(turn: number): { readonly along: Flat; readonly back: Flat } {
  const angle = (turn * Math.PI) / 180;
  const [cos, sin] = [clean(Math.cos(angle)), clean(Math.sin(angle))];
  return { along: [cos, sin], back: [-sin, cos] };
}

/** Why two runs cannot meet as stated. */
export type CornerTrouble = 'inside' | 'mixed' | 'straight' | 'cut' | 'sharp' | 'grooves' | 'split';

/** A lap or butt whose saw angle is steeper than this is not cut. */
const STEEPEST_CUT = 60;

/** What keeps `second` from meeting `first` as it says; undefined when nothing does. */
export function cornerTrouble(first: RunSpec, second: RunSpec): CornerTrouble | undefined {
  const { placement } = second;
  if (placement?.kind !== 'after') return undefined;
  const { value: turn } = placement.turn;
  const { value: kind } = placement.corner;
  const ways = [first, second].map(({ infill }) => infill.mounting.value.kind);
  if (ways.includes('split')) return 'split';
  if (ways[1] === 'grooves' && !second.infill.flip.upright) return 'grooves';
  const faces = [levelFace(first.infill), levelFace(second.infill)];
  if (kind !== 'post' && turn === 0) return 'straight';
  if (turn !== 0 && faces.some((face) => face === 'both' || face === (turn > 0 ? 'back' : 'front')))
    return 'inside';
  if (kind === 'post') return undefined;
  if (faces[0] === undefined || faces[0] !== faces[1]) return 'mixed';
  if (kind !== 'miter' && Math.abs(90 - Math.abs(turn)) > STEEPEST_CUT) return 'cut';
  return undefined;
}

/** The face of the posts that level slats lie on; undefined where they lie on none. */
export function levelFace({ mounting, flip }: InfillSpec): 'front' | 'back' | 'both' | undefined {
  const { value } = mounting;
  const [face, other] = flip.upright ? [] : modelFacesOf(value);
  return other ? 'both' : face;
}

/** What fills a bay beside the shared post: from the post's middle to where it begins, and half its depth. */
export interface Filling {
  readonly begins: Ticks;
  readonly half: Ticks;
}

/** Whether the fillings beside a shared post reach into one another at an inside angle of less than 90 degrees. */
export function isTooSharp(turn: number, a: Filling, b: Filling): boolean {
  const inside = 180 - Math.abs(turn);
  if (inside >= 90) return false;
  const { along } = axesOf(inside);
  const [cos, sin] = along;
  const within = (one: Filling, other: Filling) =>
    one.begins * cos + one.half * sin > other.begins &&
    Math.abs(one.begins * sin - one.half * cos) < other.half;
  // Where the inner edges cross, measured along each from the middle of the post.
  const crossing = (one: Filling, other: Filling) => (one.half * cos + other.half) / sin;
  const beyond = crossing(a, b) > a.begins && crossing(b, a) > b.begins;
  return beyond || within(a, b) || within(b, a);
}

function cornersOf(x: Range, y: Range): readonly Flat[] {
  return [
    [x[0], y[0]],
    [x[1], y[0]],
    [x[1], y[1]],
    [x[0], y[1]],
  ];
}

const dot = (a: Flat, b: Flat): number => a[0] * b[0] + a[1] * b[1];

/** What is as good as a whole number is one: cosines of right angles, slopes of square cuts. */
const clean = (x: number): number => {
  const whole = Math.round(x);
  return Math.abs(x - whole) < 1e-12 * Math.max(1, Math.abs(x)) ? whole + 0 : x;
};
