import { floorToStep, type Ticks } from '../units/index.ts';
import type { SlatEnd } from './corner.ts';
import type { Block } from './make-board.ts';
import { type About, type End, makePiece } from './make-piece.ts';
import type { Piece } from './piece.ts';

/** How a level slat on a face ends at corners. */
export interface CornerEnds {
  readonly face: 'front' | 'back';
  /** Its longest length is a whole number of these, which an end that meets no other run gives up. */
  readonly step: Ticks;
  readonly low?: SlatEnd;
  readonly high?: SlatEnd;
}

/** A level slat on a face with one or both ends cut to a corner; square elsewhere, as `block` says. */
export function makeCornerSlat(
  about: About,
  stock: { readonly name: string; readonly ripped?: boolean },
  { x, y, z }: Block,
  { face, step, low, high }: CornerEnds,
): Piece {
  const thickness = y[1] - y[0];
  // Thickness is measured from the front, and ends are known at the post.
  const endOf = (corner: SlatEnd | undefined, square: Ticks): End => {
    if (!corner) return { at: square };
    if (face === 'back') return { at: corner.at, bevel: corner.slope };
    return { at: corner.at + corner.slope * thickness, bevel: -corner.slope };
  };
  const first = endOf(low, x[0]);
  const second = endOf(high, x[1]);
  const reach = ({ at, bevel = 0 }: End) => [at, at + bevel * thickness];
  const long = Math.max(...reach(second)) - Math.min(...reach(first));
  const spare = long - (floorToStep(long + 1e-6, step) || long);
  const fromFirst = !low && high !== undefined;
  const ends: readonly [End, End] = fromFirst
    ? [{ ...first, at: first.at + spare }, second]
    : [first, { ...second, at: second.at - spare }];
  return makePiece(about, {
    stock: stock.name,
    ripped: stock.ripped ?? false,
    origin: [0, y[0], z[1]],
    grain: [1, 0, 0],
    across: [0, 0, -1],
    through: [0, 1, 0],
    width: z[1] - z[0],
    thickness,
    ends,
  });
}
