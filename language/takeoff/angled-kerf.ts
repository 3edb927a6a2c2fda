import type { Cut } from '../layout/index.ts';
import { ceilToStep, type Ticks } from '../units/index.ts';

/**
 * What an angled end takes from a board more than a square cut does, up to the next mark of the tape: a blade goes as far
 * along the board as its kerf over the cosine of the cut, so of a cut across the board with these slopes
 * `kerf * sqrt(1 + tan^2(miter) + tan^2(bevel))` (geometry). Of two unlike ends the steeper counts.
 *
 * @returns 0 where both ends are square
 */
export function moreKerf({ ends }: Pick<Cut, 'ends'>, kerf: Ticks, step: Ticks): Ticks {
  const along = ends.map(({ miter, bevel }) => Math.hypot(1, tangent(miter), tangent(bevel)));
  const more = kerf * (Math.max(...along) - 1);
  return more > 1e-6 && Number.isFinite(more) ? ceilToStep(more, step) : 0;
}

/** The same where the longest board gives so much: a piece as long as a board needs no cut beside it. */
export function moreWithin(
  cut: Pick<Cut, 'ends'>,
  length: Ticks,
  longest: Ticks,
  { kerf, step }: { readonly kerf: Ticks; readonly step: Ticks },
): Ticks {
  return Math.min(moreKerf(cut, kerf, step), Math.max(0, longest - length));
}

const tangent = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);
