import type { Ticks } from '../../units/index.ts';
import { type Courses, countsWithin } from './courses.ts';
import { type Draft, sharedDraft } from './draft.ts';
import { gapTolerance } from './habits.ts';

/** Gaps that a builder accepts. */
export interface GapBand {
  readonly low: Ticks;
  readonly high: Ticks;
}

/** Where no gaps are stated: as far from the nominal one as is not seen. */
export function usualGaps({ problem }: Courses): GapBand {
  const tolerance = gapTolerance(problem);
  return { low: Math.max(0, problem.gap - tolerance), high: problem.gap + tolerance };
}

/** Spreads what is left over all gaps, for every count that the closing rule allows. */
export function evenGaps(courses: Courses, { low, high }: GapBand): Draft[] {
  return countsWithin(courses, low, high)
    .filter((count) => courses.mayEnd(count))
    .map((count) => sharedDraft(courses, count, courses.left(count), { kind: 'gaps' }));
}
