import type { Remedy } from '../../model/index.ts';
import { changedWidth } from './change-width.ts';
import type { Courses } from './courses.ts';
import type { Draft } from './draft.ts';
import { evenGaps } from './even-gaps.ts';
import { movedEnds } from './move-ends.ts';
import { type FitProblem, hasBand, type TrimBoard } from './problem.ts';
import { rippedLast } from './rip-last.ts';
import { shortRepeat, shortRepeatGaps } from './short-repeat.ts';
import { trimBoardsOf, trimmed } from './trim.ts';

/** A remedy as asked for in the text, with no more of a trim board than a fit needs to know. */
export type Ask =
  | Exclude<Remedy, { kind: 'trim' }>
  | { readonly kind: 'trim'; readonly board?: TrimBoard; readonly edge: 'top' | 'bottom' };

/** Drops what a fit need not know of a trim board. */
export function asksOf(remedies: readonly Remedy[]): Ask[] {
  return remedies.map((remedy) => {
    if (remedy.kind !== 'trim' || !remedy.board) return remedy as Ask;
    const { name, width } = remedy.board;
    return { kind: 'trim', edge: remedy.edge, board: { stock: name, width: width.value } };
  });
}

/**
 * The order in which remedies are tried: as written. A band stated for an end means that the ends
 * move first, unless the text places that itself; upright slats with nothing asked for leave what is
 * over at the two edges (common practice).
 */
export function triedInOrder(problem: FitProblem, asks: readonly Ask[]): readonly Ask[] {
  const moves = asks.some(({ kind }) => kind === 'move-ends');
  const implied = problem.upright ? asks.length === 0 : hasBand(problem) && !moves;
  return implied ? [{ kind: 'move-ends' }, ...asks] : asks;
}

/** Every way the pattern closes by this remedy. */
export function draftsFor(courses: Courses, ask: Ask, asks: readonly Ask[]): Draft[] {
  switch (ask.kind) {
    case 'move-ends':
      return movedEnds(courses);
    case 'gaps':
      return evenGaps(courses, ask);
    case 'short-repeat':
      return shortRepeat(courses, shortRepeatGaps(courses, asks));
    case 'rip-last':
      return rippedLast(courses, ask.least);
    case 'change-width':
      return changedWidth(courses, ask.slat, ask.width);
    case 'trim':
      return trimmed(courses, ask.edge, ask.board ? [ask.board] : trimBoardsOf(courses.problem));
  }
}
