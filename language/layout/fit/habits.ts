import { isMetric } from '../../model/index.ts';
import { inches, type Measure, mm, type Ticks } from '../../units/index.ts';
import type { FitProblem } from './problem.ts';

// Limits that hold where the text states none. All of them are common practice.

/** How far a gap may be from the nominal one: less where a neighbor shows the nominal gap beside it. */
export function gapTolerance({
  measure,
  besideNominal,
}: Pick<FitProblem, 'measure' | 'besideNominal'>): Ticks {
  if (isMetric(measure)) return mm(besideNominal ? 1.5 : 3);
  return inches(besideNominal ? 1 / 16 : 1 / 8);
}

/** Slats by turns on both faces reach at least this far past one another. */
export function leastOverlap(measure: Measure): Ticks {
  return isMetric(measure) ? mm(20) : inches(3 / 4);
}

/** No strip is made narrower than this. */
export function narrowest(measure: Measure): Ticks {
  return isMetric(measure) ? mm(40) : inches(1.5);
}

/** A last slat is not ripped narrower than this: nor less than half its width. */
export function narrowestLast(width: Ticks, measure: Measure): Ticks {
  return Math.max(narrowest(measure), Math.ceil(width / 2));
}

/** Where the bottom of a screen usually is above ground. */
export function usualBottom(measure: Measure): { low: Ticks; high: Ticks } {
  return isMetric(measure) ? { low: mm(50), high: mm(100) } : { low: inches(2), high: inches(4) };
}
