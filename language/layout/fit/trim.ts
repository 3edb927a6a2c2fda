import type { Ticks } from '../../units/index.ts';
import { type Courses, greatestCount } from './courses.ts';
import { type Draft, nominalDraft } from './draft.ts';
import { narrowest } from './habits.ts';
import type { FitProblem, TrimBoard } from './problem.ts';

/** What trim is ripped from when the text names no board: those given, else the pattern's widest slat. */
export function trimBoardsOf({ trimBoards, repeat }: FitProblem): readonly TrimBoard[] {
  if (trimBoards.length > 0) return trimBoards;
  return repeat.reduce<readonly TrimBoard[]>(
    ([widest], slat) => [!widest || slat.width > widest.width ? slat : widest],
    [],
  );
}

/**
 * A board at one edge, one gap from the slats, that takes up what the slats leave. It is ripped from
 * the narrowest of `boards` that is wide enough. Of the counts that work the greatest is taken: the
 * least trim.
 */
export function trimmed(courses: Courses, edge: 'top' | 'bottom', boards: readonly TrimBoard[]): Draft[] {
  const { problem } = courses;
  const least = narrowest(problem.measure);
  const trimFor = (n: number): Ticks => problem.space - courses.need(n) - problem.gap;
  let count = greatestCount((n) => n === 0 || trimFor(n) >= least);
  for (let tries = problem.repeat.length; count > 0 && !courses.mayEnd(count); count--) {
    if (--tries <= 0) return [];
  }
  if (count === 0) return [];
  const width = trimFor(count);
  const board = narrowestFor(width, boards);
  if (!board) return [];
  const { stock } = board;
  return [
    nominalDraft(courses, count, { kind: 'trim', slat: stock, width, edge, taken: board.width - width }),
  ];
}

function narrowestFor(width: Ticks, boards: readonly TrimBoard[]): TrimBoard | undefined {
  let best: TrimBoard | undefined;
  for (const board of boards) {
    if (board.width >= width && (!best || board.width < best.width)) best = board;
  }
  return best;
}
