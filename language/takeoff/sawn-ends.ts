import type { Piece } from '../layout/index.ts';
import type { Stock } from '../model/index.ts';
import type { Ticks } from '../units/index.ts';
import type { CutEnd } from './cutting/index.ts';

/** How a piece lies on the saw: its width across the board, and what the board is thick. */
export interface Lies {
  readonly width: Ticks;
  readonly thickness: Ticks;
  readonly kerf: Ticks;
}

/**
 * The ends of a piece as the planner knows them; undefined where both are square. A blade goes as far along the board as
 * its kerf over the cosine of the cut: with these slopes `kerf * sqrt(1 + tan^2(miter) + tan^2(bevel))` (geometry). Only
 * what is a full, straight board between its ends, laid with its width across, shares the triangles of its ends with
 * others; anything else takes its room from tip to tip.
 */
export function sawnEnds({ cut }: Piece, lies: Lies): readonly [CutEnd, CutEnd] | undefined {
  if (cut.ends.every(({ miter, bevel }) => miter === 0 && bevel === 0)) return undefined;
  const isPlain =
    cut.width === lies.width &&
    cut.thickness === lies.thickness &&
    !cut.taper &&
    !cut.scribe &&
    !cut.edge &&
    !cut.hip &&
    !cut.grooves;
  const [first, second] = cut.ends.map(({ miter, bevel }): CutEnd => {
    const [across, through] = [tangent(miter), tangent(bevel)];
    const along = lies.kerf * Math.hypot(1, across, through);
    const kerf = Number.isFinite(along) ? along : lies.kerf;
    return isPlain
      ? { across: steady(across * lies.width), through: steady(through * lies.thickness), kerf }
      : { across: 0, through: 0, kerf };
  });
  return first && second ? [first, second] : undefined;
}

/** Of boards of wood both faces are alike; of what comes shaped, or finished, the same one stays up. */
export function turnsOver(stock: Stock): boolean {
  if (stock.kind === 'channel' || stock.wall) return false;
  return stock.material === undefined || stock.material.kind.value === 'wood';
}

/** Through the board that lies on the saw. */
export const thicknessOf = (stock: Stock): Ticks =>
  stock.kind === 'post' ? stock.through.value : stock.thickness.value;

/** Angles that were stated alike and worked out apart are alike to a thousandth of a tick. */
const steady = (x: number): number => Math.round(x * 1000) / 1000;

const tangent = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);
