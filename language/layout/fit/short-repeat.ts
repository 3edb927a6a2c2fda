import type { Ask } from './asks.ts';
import { type Courses, countsWithin } from './courses.ts';
import { type Draft, sharedDraft } from './draft.ts';
import { type GapBand, usualGaps } from './even-gaps.ts';

/** The gaps a short repeat may have: those that the fit states anywhere, else the usual ones. */
export function shortRepeatGaps(courses: Courses, asks: readonly Ask[]): GapBand {
  const stated = asks.find((ask) => ask.kind === 'gaps');
  return stated ?? usualGaps(courses);
}

/** Ends at a slat that the closing rule does not allow, with what is left spread over the gaps. */
export function shortRepeat(courses: Courses, gaps: GapBand): Draft[] {
  return countsWithin(courses, gaps.low, gaps.high)
    .filter((count) => !courses.mayEnd(count))
    .map((count) => sharedDraft(courses, count, courses.left(count), { kind: 'short-repeat' }));
}
