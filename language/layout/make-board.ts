import type { Ticks } from '../units/index.ts';
import { type About, makePiece, type Shape } from './make-piece.ts';
import type { Groove, Piece, Vec3 } from './piece.ts';

/** A block along the axes of the run, whole ticks, each second number greater than the first. */
export interface Block {
  readonly x: readonly [Ticks, Ticks];
  readonly y: readonly [Ticks, Ticks];
  readonly z: readonly [Ticks, Ticks];
}

const ALONG: Vec3 = [1, 0, 0];
const BACK: Vec3 = [0, 1, 0];
const UP: Vec3 = [0, 0, 1];
const DOWN: Vec3 = [0, 0, -1];
const START = { at: 0 };

/**
 * A square-cut piece that shows its width to the front: level ones have the grain along the run and read
 * from the left, upright ones have it up from the ground.
 */
export function makeBoard(
  about: About,
  stock: {
    readonly name: string;
    readonly ripped?: boolean;
    readonly grooves?: readonly Groove[];
    readonly comesGrooved?: boolean;
  },
  upright: boolean,
  { x, y, z }: Block,
): Piece {
  const shape: Shape = {
    stock: stock.name,
    ripped: stock.ripped ?? false,
    origin: [x[0], y[0], upright ? z[0] : z[1]],
    grain: upright ? UP : ALONG,
    across: upright ? ALONG : DOWN,
    through: BACK,
    width: upright ? x[1] - x[0] : z[1] - z[0],
    thickness: y[1] - y[0],
    ends: [START, { at: upright ? z[1] - z[0] : x[1] - x[0] }],
    ...(stock.grooves ? { grooves: stock.grooves, comesGrooved: stock.comesGrooved } : {}),
  };
  return makePiece(about, shape);
}
