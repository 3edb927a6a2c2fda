import type { TextChange } from '../layout.ts';
import { type Ask, draftsFor } from './asks.ts';
import { leastChanges } from './change-width.ts';
import { changesFor } from './changes.ts';
import { choose } from './choose.ts';
import { type Courses, coursesOf } from './courses.ts';
import type { Draft } from './draft.ts';
import { type Edit, edited, editsFor } from './edits.ts';
import { evenGaps, usualGaps } from './even-gaps.ts';
import { movedEnds, usualEnds } from './move-ends.ts';
import { byRank } from './rank.ts';
import { rippedLast } from './rip-last.ts';
import { shortRepeat } from './short-repeat.ts';
import { trimBoardsOf, trimmed } from './trim.ts';

/** More choices of one kind than this are not offered. */
export const MOST_OFFERS = 8;

/** A draft and the edits of the text that make it. */
export interface Offer {
  readonly draft: Draft;
  readonly changes: readonly TextChange[];
  readonly edit: Edit;
}

/**
 * What else would close the pattern, best first: by every remedy with the usual limits and by those
 * asked for. Only what an edit of the text brings about exactly is offered.
 */
export function offers(courses: Courses, asks: readonly Ask[], chosen: Draft | undefined): Offer[] {
  const found: Offer[] = [];
  const taken = new Map<string, number>();
  const seen = new Set(chosen ? [figuresOf(chosen)] : []);
  for (const draft of everyDraft(courses, asks).sort(byRank)) {
    const figures = figuresOf(draft);
    const number = taken.get(draft.kind) ?? 0;
    if (seen.has(figures) || number >= MOST_OFFERS) continue;
    seen.add(figures);
    taken.set(draft.kind, number + 1);
    const edit = editsFor(courses.problem, asks, draft).find((each) => makes(courses, asks, each, draft));
    if (edit) found.push({ draft, changes: changesFor(courses.problem, edit), edit });
  }
  return found;
}

function everyDraft(courses: Courses, asks: readonly Ask[]): Draft[] {
  const boards = trimBoardsOf(courses.problem);
  return [
    ...movedEnds(courses),
    ...usualEnds(courses),
    ...evenGaps(courses, usualGaps(courses)),
    ...shortRepeat(courses, usualGaps(courses)),
    ...rippedLast(courses),
    ...leastChanges(courses),
    ...trimmed(courses, 'bottom', boards),
    ...trimmed(courses, 'top', boards),
    ...asks.flatMap((ask) => draftsFor(courses, ask, asks)),
  ];
}

/** Whether laying out again after the edit chooses this draft, to the tick. */
function makes(courses: Courses, asks: readonly Ask[], edit: Edit, draft: Draft): boolean {
  const built = choose(coursesOf(edited(courses.problem, edit)), edit.asks ?? asks);
  if (!built) return false;
  const kind = built.kind === 'as-drawn' ? draft.kind : built.kind;
  return figuresOf({ ...built, kind }) === figuresOf(draft);
}

/** Everything by which two choices can differ on the wall. */
function figuresOf({ kind, count, gap, lead, tail, bottom, height, width, slat, edge }: Draft): string {
  return [kind, count, gap, lead, tail, bottom, height, width, slat, edge].join('|');
}
