import { type Courses, nominalCount } from './courses.ts';
import { type Draft, nominalDraft } from './draft.ts';

/** The pattern as drawn, when it fills its space to the tick. */
export function asDrawn(courses: Courses): Draft[] {
  const count = nominalCount(courses);
  if (count === 0 || courses.need(count) !== courses.problem.space) return [];
  return [nominalDraft(courses, count, { kind: 'as-drawn' })];
}
