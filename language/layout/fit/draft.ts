import type { Ticks } from '../../units/index.ts';
import type { FitChoice } from '../layout.ts';
import type { Courses } from './courses.ts';

/** A choice before its text edits are known. */
export interface Draft extends Omit<FitChoice, 'changes'> {
  /** Width taken off a board, or put on. */
  readonly taken: Ticks;
  /** How far the ends of the infill move from where they were to be. */
  readonly moved: Ticks;
}

/** Slats at the nominal gap and whatever is different from that. */
export function nominalDraft(
  courses: Courses,
  count: number,
  different: Partial<Draft> & Pick<Draft, 'kind'>,
): Draft {
  const { gap, edgeGap, ends, upright } = courses.problem;
  return {
    count,
    gap,
    lead: edgeGap,
    tail: edgeGap,
    ...(ends && !upright ? { bottom: ends.bottom.low, height: ends.height.high } : {}),
    gapChange: 0,
    taken: 0,
    moved: 0,
    ...different,
  };
}

/**
 * Slats whose gaps share `left` ticks alike: where these do not come out, the odd ticks are spread
 * evenly, so that no two gaps differ by more than one.
 */
export function sharedDraft(
  courses: Courses,
  count: number,
  left: Ticks,
  different: Partial<Draft> & Pick<Draft, 'kind'>,
): Draft {
  const { gap, edgeHalf } = courses.problem;
  const shares = courses.shares(count);
  if (shares === 0) return nominalDraft(courses, count, different);
  return nominalDraft(courses, count, {
    gap: left / shares,
    gapChange: Math.ceil(Math.abs(left - shares * gap) / shares),
    ...(edgeHalf ? halfEdges(left, shares) : {}),
    ...different,
  });
}

/** Half a gap at each edge, rounded so that the gaps between still differ by no more than a tick. */
function halfEdges(left: Ticks, shares: number): { lead: Ticks; tail: Ticks } {
  const lead = Math.round(left / (2 * shares));
  return { lead, tail: left - Math.round((left * (2 * shares - 1)) / (2 * shares)) };
}
