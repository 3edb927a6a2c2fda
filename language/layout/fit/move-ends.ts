import type { Ticks } from '../../units/index.ts';
import { type Courses, greatestCount, nominalCount } from './courses.ts';
import { type Draft, nominalDraft } from './draft.ts';
import { usualBottom } from './habits.ts';
import { hasBand } from './problem.ts';

/**
 * Moves the ends so that the pattern closes at its nominal gap.
 *
 * Level: the bottom rises within its band; only what that cannot take lowers the top. Upright: what
 * is left goes to the two edges alike.
 */
export function movedEnds(courses: Courses): Draft[] {
  const { problem } = courses;
  if (problem.upright) return sharedEdges(courses);
  const { ends } = problem;
  if (!ends || !hasBand(problem)) return [];
  const rise = Math.max(0, ends.bottom.high - ends.bottom.low);
  const drop = Math.max(0, ends.height.high - ends.height.low);
  return closingCounts(courses, problem.space - rise - drop, problem.space - 1).map((count) => {
    const spare = problem.space - courses.need(count);
    return nominalDraft(courses, count, {
      kind: 'move-ends',
      bottom: ends.bottom.low + Math.min(spare, rise),
      height: ends.height.high - Math.max(0, spare - rise),
      moved: spare,
    });
  });
}

/** Where the text holds both ends still: the bottom anywhere it usually is. Offered, never chosen. */
export function usualEnds(courses: Courses): Draft[] {
  const { problem } = courses;
  const { ends, upright, measure, space } = problem;
  if (upright || !ends || hasBand(problem)) return [];
  const { low, high } = usualBottom(measure);
  return closingCounts(courses, space + ends.bottom.low - high, space + ends.bottom.low - low)
    .map((count) => {
      const spare = space - courses.need(count);
      return nominalDraft(courses, count, {
        kind: 'move-ends',
        bottom: ends.bottom.low + spare,
        moved: Math.abs(spare),
      });
    })
    .filter(({ moved }) => moved > 0);
}

/** Allowed counts that need from `least` to `most` at the nominal gap. */
function closingCounts(courses: Courses, least: Ticks, most: Ticks): number[] {
  const last = greatestCount((n) => n === 0 || courses.need(n) <= most);
  const first = 1 + greatestCount((n) => n === 0 || courses.need(n) < least);
  const counts: number[] = [];
  for (let n = first; n <= last; n++) if (courses.mayEnd(n)) counts.push(n);
  return counts;
}

function sharedEdges(courses: Courses): Draft[] {
  const { space, edgeGap } = courses.problem;
  const count = nominalCount(courses);
  const spare = space - courses.need(count);
  if (count === 0 || spare === 0) return [];
  const lead = edgeGap + Math.floor(spare / 2);
  const tail = edgeGap + Math.ceil(spare / 2);
  return [nominalDraft(courses, count, { kind: 'move-ends', lead, tail, moved: spare })];
}
