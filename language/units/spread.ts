import { floorToStep } from './round.ts';
import type { Ticks } from './ticks.ts';

/**
 * Splits a whole `total` into `n` whole parts that differ by at most one tick, or one `step`, and sum exactly
 * to it. The larger parts are spread among the smaller as evenly as whole numbers allow. Where `total` is no
 * multiple of `step`, what is left over goes to one of the smaller parts near the middle. No parts for n < 1.
 *
 * The spreading is Bresenham's: part i is the difference of two neighboring points on a rounded line
 * (J. E. Bresenham, "Algorithm for computer control of a digital plotter", IBM Systems Journal 4(1), 1965).
 */
export function spreadEvenly(total: Ticks, n: number, step: Ticks = 1): Ticks[] {
  if (!(n >= 1)) return [];
  const count = Math.floor(n);
  const size = step > 1 ? step : 1;
  const marked = floorToStep(total, size);
  const steps = marked / size;
  const least = Math.floor(steps / count);
  const extra = steps - least * count;
  const half = Math.floor(count / 2);
  const line = (i: number) => Math.floor((i * extra + half) / count);

  const parts = Array.from({ length: count }, (_, i) => (least + line(i + 1) - line(i)) * size);
  const rest = Math.floor(total) - marked;
  if (rest > 0) {
    const at = middleOf(parts, least * size);
    parts[at] = least * size + rest;
  }
  return parts;
}

/** The place of the part equal to `value` that is nearest to the middle. There is always one. */
function middleOf(parts: readonly number[], value: number): number {
  const middle = (parts.length - 1) / 2;
  let best = -1;
  parts.forEach((part, i) => {
    if (part === value && (best < 0 || Math.abs(i - middle) < Math.abs(best - middle))) best = i;
  });
  return best;
}
