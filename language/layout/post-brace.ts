import type { BracingSpec, RunSpec } from '../model/index.ts';
import { ceilToStep, type Ticks } from '../units/index.ts';
import { postBraceLabel, postLabel, stakeLabel } from './labels.ts';
import { makePiece } from './make-piece.ts';
import type { Piece, Vec3 } from './piece.ts';
import type { PlacedPost } from './posts.ts';

/** A brace flat on a face of a post: along the run or across it, toward growing numbers of that axis or against them. */
export interface BracePlace {
  readonly axis: 'along' | 'across';
  readonly way: 1 | -1;
  /** Of the face it lies on, on the other axis, and the way that face looks. */
  readonly face: number;
  readonly outward: 1 | -1;
  /** Of the post on the axis it goes along: its middle, and half its size. */
  readonly middle: number;
  readonly half: number;
  /** Heights from the datum: where the middle lines of brace and post meet, and of the ground at the foot. */
  readonly high: number;
  readonly ground: number;
  /** From the post's middle to the stake's, level. */
  readonly out: number;
}

/** How high above the ground a brace is screwed to its stake: as much as it is wide, so that no corner is in the ground. */
export function footOf({ board }: BracingSpec): Ticks {
  return board.value.width.value;
}

/** How far up from the stake to the post a brace goes for one tick of its way out. */
export function slopeOf(bracing: BracingSpec, { high, ground, out }: BracePlace): number {
  return (high - ground - footOf(bracing)) / out;
}

/**
 * A brace and its stake. The brace's middle line meets that of the post and, a board's width above the ground, that of the
 * stake. Its upper end is cut plumb where the post's far edge is, its lower end is square, half its width past the stake's middle, and
 * what is wanting to the next mark of the tape farther. The stake stands against it, a third of its length above the ground.
 */
export function postBrace(
  spec: RunSpec,
  bracing: BracingSpec,
  post: Pick<PlacedPost, 'mark'>,
  place: BracePlace,
): readonly [brace: Piece, stake: Piece] {
  const { axis, way, face, outward, middle, half, ground, out } = place;
  const { name, width, thickness } = bracing.board.value;
  const [wide, thick] = [width.value, thickness.value];
  const slope = slopeOf(bracing, place);
  const long = Math.hypot(1, slope);
  const [cos, sin] = [1 / long, slope / long];
  const foot = middle + way * out;
  // From the middle of the foot to the post is forward; width goes forward and down.
  const vec = (forward: number, up: number): Vec3 =>
    axis === 'along' ? [0 - way * forward, 0, up] : [0, 0 - way * forward, up];
  const at = (a: number, side: number, z: number): Vec3 => (axis === 'along' ? [a, side, z] : [side, a, z]);
  // The way its thickness goes, which makes its axes right-handed.
  const through = axis === 'along' ? ((0 - way) as 1 | -1) : way;
  const inner = through === outward ? face : face + outward * thick;
  const end = (out + half + (wide / 2) * sin) / cos;
  const past = ceilToStep(Math.ceil(end + wide / 2 - ROUNDING), spec.measure.step) - end;
  const { key, number, gate } = post.mark;
  const about = {
    run: spec.name,
    ...(gate === undefined ? {} : { gate }),
    side: 'middle' as const,
    from: [bracing.origin, spec.origin],
  };
  const brace = makePiece(
    {
      ...about,
      key: `${key}/brace-${axis}`,
      label: postBraceLabel(postLabel(number), axis),
      role: 'prop',
      supports: [key, `${key}/stake-${axis}`],
    },
    {
      stock: name,
      ripped: false,
      origin: at(foot + (way * sin * wide) / 2, inner, ground + wide + (cos * wide) / 2),
      grain: vec(cos, sin),
      across: vec(sin, 0 - cos),
      through: at(0, through, 0),
      width: wide,
      thickness: thick,
      ends: [{ at: 0 - past }, { at: end, miter: 0 - slope }],
    },
  );
  const stake = bracing.stake.value;
  const [w, t] = [stake.width.value, stake.thickness.value];
  const length = bracing.stakeLength.value;
  const above = Math.floor(length / 3);
  const against = face + outward * thick;
  return [
    brace,
    makePiece(
      {
        ...about,
        key: `${key}/stake-${axis}`,
        label: stakeLabel(postLabel(number), axis),
        role: 'stake',
        supports: [],
      },
      {
        stock: stake.name,
        ripped: false,
        origin: at(
          foot - w / 2,
          (axis === 'along') === (outward === 1) ? against : against + outward * t,
          ground + above - length,
        ),
        grain: [0, 0, 1],
        across: at(1, 0, 0),
        through: at(0, axis === 'along' ? 1 : -1, 0),
        width: w,
        thickness: t,
        // Pointed, so that it can be driven.
        ends: [{ at: 0, miter: 1 }, { at: length }],
      },
    ),
  ];
}

/** Of floats, so that a mark of the tape stays one. */
const ROUNDING = 1e-4;
