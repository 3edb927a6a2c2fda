import type { Ticks } from '../../units/index.ts';
import { type Courses, greatestCount } from './courses.ts';
import { type Draft, nominalDraft } from './draft.ts';
import { narrowestLast } from './habits.ts';
import { MOST_SLATS } from './problem.ts';

/**
 * Rips the last slat so that it closes the space at the nominal gap. It is left no narrower than
 * `least`; where that is not stated, than a strip that still looks meant (common practice).
 */
export function rippedLast(courses: Courses, least?: Ticks): Draft[] {
  const { problem } = courses;
  // Of the counts that do not go in whole, only the first allowed one can go in ripped.
  let count = 1 + greatestCount((n) => n === 0 || courses.need(n) <= problem.space);
  for (let tries = problem.repeat.length; !courses.mayEnd(count); count++) {
    if (--tries <= 0) return [];
  }
  if (count > MOST_SLATS) return [];
  const last = courses.slat(count);
  const width = last.width - (courses.need(count) - problem.space);
  if (width < Math.max(1, least ?? narrowestLast(last.width, problem.measure))) return [];
  return [
    nominalDraft(courses, count, { kind: 'rip-last', slat: last.stock, width, taken: last.width - width }),
  ];
}
