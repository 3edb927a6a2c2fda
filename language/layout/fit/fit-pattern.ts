import type { Ticks } from '../../units/index.ts';
import type { FitChoice, TextChange } from '../layout.ts';
import { asksOf } from './asks.ts';
import { choose } from './choose.ts';
import { coursesOf, nominalCount } from './courses.ts';
import type { Draft } from './draft.ts';
import { restatedBy } from './edits.ts';
import { offers } from './offers.ts';
import { type FitProblem, isSound, usableSpace } from './problem.ts';

/** What a pattern does in its space, and what else it could do. */
export interface PatternFit {
  /** What is built; undefined when nothing asked for closes the pattern. */
  readonly chosen?: FitChoice;
  /** What the nominal pattern leaves of the space. */
  readonly leftover: Ticks;
  /** Slats of the nominal pattern; 0 when none that may be the last goes in. */
  readonly nominalCount: number;
  /** The others, best first. */
  readonly choices: readonly FitChoice[];
}

/**
 * Fits a pattern to its space. Whole ticks throughout: slats, trim, gaps and edges of every choice
 * sum to the space exactly. A problem that is not one (no slats, a length that is none) has no
 * choices.
 */
export function fitPattern(problem: FitProblem): PatternFit {
  if (!isSound(problem)) {
    return { leftover: usableSpace(problem), nominalCount: 0, choices: [] };
  }
  const courses = coursesOf(problem);
  const asks = asksOf(problem.remedies);
  const count = nominalCount(courses);
  const chosen = choose(courses, asks);
  return {
    ...(chosen ? { chosen: choiceOf(chosen, []) } : {}),
    leftover: count > 0 ? problem.space - courses.need(count) : problem.space,
    nominalCount: count,
    choices: offers(courses, asks, chosen).map(({ draft, changes, edit }) => ({
      ...choiceOf(draft, changes),
      restated: restatedBy(edit),
    })),
  };
}

/** What is built of a problem, without the search for what else would be. */
export function chosenFit(problem: FitProblem): FitChoice | undefined {
  if (!isSound(problem)) return undefined;
  const chosen = choose(coursesOf(problem), asksOf(problem.remedies));
  return chosen && choiceOf(chosen, []);
}

function choiceOf({ taken, moved, ...figures }: Draft, changes: readonly TextChange[]): FitChoice {
  return { ...figures, changes };
}
