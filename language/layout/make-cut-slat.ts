import { floorToStep, type Ticks } from '../units/index.ts';
import type { SlatEnd } from './corner.ts';
import { chordOf, type Edge } from './edge.ts';
import { heightAt, type Incline } from './incline.ts';
import type { Flush } from './infill.ts';
import type { Block } from './make-board.ts';
import { type About, type End, makePiece } from './make-piece.ts';
import type { Piece } from './piece.ts';

/** How a level slat ends where it is not just square. */
export interface SlatEnds {
  /** The face it lies on. */
  readonly face: 'front' | 'back';
  /** Its longest length is a whole number of these, which an end that meets no other run gives up. */
  readonly step: Ticks;
  /** Which end gives them up where neither meets another run. */
  readonly flush: Flush;
  /** At corners. */
  readonly low?: SlatEnd;
  readonly high?: SlatEnd;
  /** Its bottom edge, where it is ripped with a taper. */
  readonly taper?: Incline;
  /** At posts out of plumb; a corner comes first. */
  readonly edges?: { readonly low: Edge; readonly high: Edge };
}

/** A level slat with ends cut to corners or to posts out of plumb; square elsewhere, as `block` says. */
export function makeCutSlat(
  about: About,
  stock: { readonly name: string; readonly ripped?: boolean },
  { x, y, z }: Block,
  { face, step, flush, low, high, edges, taper }: SlatEnds,
): Piece {
  const thickness = y[1] - y[0];
  const width = z[1] - z[0];
  // Thickness is measured from the front, and ends are known at the post.
  const endOf = (corner: SlatEnd | undefined, edge: Edge | undefined, inward: 1 | -1, square: Ticks): End => {
    if (corner && face === 'back') return { at: corner.at, bevel: corner.slope };
    if (corner) return { at: corner.at + corner.slope * thickness, bevel: -corner.slope };
    if (!edge) return { at: square };
    const { top, bottom } = chordOf(edge, z, inward);
    return { at: top, miter: (bottom - top) / width };
  };
  const first = endOf(low, edges?.low, 1, x[0]);
  const second = endOf(high, edges?.high, -1, x[1]);
  const reach = ({ at, miter = 0, bevel = 0 }: End): readonly number[] =>
    [0, miter * width].flatMap((across) => [at + across, at + across + bevel * thickness]);
  const long = Math.max(...reach(second)) - Math.min(...reach(first));
  const spare = long - (floorToStep(long + 1e-6, step) || long);
  const atFirst = high ? (low ? 0 : 1) : low ? 0 : { start: 0, middle: 0.5, end: 1 }[flush];
  const ends: readonly [End, End] = [
    { ...first, at: first.at + atFirst * spare },
    { ...second, at: second.at - (1 - atFirst) * spare },
  ];
  return makePiece(about, {
    stock: stock.name,
    ripped: stock.ripped ?? false,
    origin: [0, y[0], z[1]],
    grain: [1, 0, 0],
    across: [0, 0, -1],
    through: [0, 1, 0],
    width,
    thickness,
    ends,
    ...(taper ? { taper: { start: z[1] - heightAt(taper, 0), per: 0 - taper.rise } } : {}),
  });
}
