import { asDrawn } from './as-drawn.ts';
import { type Ask, draftsFor, triedInOrder } from './asks.ts';
import type { Courses } from './courses.ts';
import type { Draft } from './draft.ts';

/** What is built: the pattern as drawn when it closes, else the first remedy asked for that works. */
export function choose(courses: Courses, asks: readonly Ask[]): Draft | undefined {
  const [drawn] = asDrawn(courses);
  if (drawn) return drawn;
  for (const ask of triedInOrder(courses.problem, asks)) {
    const best = nearestToNominal(draftsFor(courses, ask, asks));
    if (best) return best;
  }
  return undefined;
}

/** Of several counts: the one whose gaps are nearest to the nominal gap, then the one with more slats. */
function nearestToNominal(drafts: readonly Draft[]): Draft | undefined {
  let best: Draft | undefined;
  for (const draft of drafts) {
    if (!best || draft.gapChange < best.gapChange) best = draft;
    else if (draft.gapChange === best.gapChange && draft.count > best.count) best = draft;
  }
  return best;
}
