import type { Band, EndRule, Remedy } from '../../model/index.ts';
import { LONGEST, type Measure, type Ticks } from '../../units/index.ts';

/** More slats than this in one space are not counted: a slip of the pen, not a screen. */
export const MOST_SLATS = 20_000;

/** One slat of the repeat. */
export interface RepeatSlat {
  readonly stock: string;
  readonly width: Ticks;
  /** The widest it can be made: the width of the board itself, or of the board it is ripped from. */
  readonly from: Ticks;
}

/** A board that trim may be ripped from. */
export interface TrimBoard {
  readonly stock: string;
  readonly width: Ticks;
}

/** Where the text edits that make a choice go: node paths, as in `TextChange`. */
export interface FitTarget {
  readonly uri: string;
  /** The block of the run or gate, or of what was measured of the run; a new statement is appended to it. */
  readonly block: string;
  /** Set where there is no such block yet: how it begins. It is added at the end of the file. */
  readonly opens?: string;
  /** The fit statement of that block, when there is one. */
  readonly fit?: string;
  /** The bottom and height statements of that block, when there are. */
  readonly bottom?: string;
  readonly height?: string;
}

/** A pattern and the space it has to fill, all lengths in ticks. */
export interface FitProblem {
  readonly repeat: readonly RepeatSlat[];
  readonly gap: Ticks;
  /** Outside the first and last slat. */
  readonly edgeGap: Ticks;
  /** The edge gap is stated as half the gap, so that it follows when the gaps change. */
  readonly edgeHalf?: boolean;
  readonly end: EndRule;
  /** What the text asks for, in the order written. */
  readonly remedies: readonly Remedy[];
  readonly upright: boolean;
  /** In the direction the pattern reads. Level: from the high of `ends.height` to the low of `ends.bottom`. */
  readonly space: Ticks;
  /** Level infill: where its bottom and its top may be, above ground. */
  readonly ends?: { readonly bottom: Band; readonly height: Band };
  readonly measure: Measure;
  /** A neighbor shows the nominal gap, so that a change of gap is seen sooner. */
  readonly besideNominal: boolean;
  /** What trim may come from when the text names no board. */
  readonly trimBoards: readonly TrimBoard[];
  readonly target: FitTarget;
}

const isLength = (value: number): boolean => Number.isInteger(value) && value >= 0 && value <= LONGEST;

/** Whether there is anything to fit: a slat, and only lengths that a length can be. */
export function isSound(problem: FitProblem): boolean {
  return (
    problem.repeat.length > 0 &&
    problem.repeat.every(({ width, from }) => isLength(width) && width > 0 && isLength(from)) &&
    isLength(problem.gap) &&
    isLength(problem.edgeGap) &&
    isLength(problem.space) &&
    problem.space > 0
  );
}

/** Whether the text lets an end of the infill move. */
export function hasBand({ upright, ends }: FitProblem): boolean {
  return !upright && !!ends && (ends.bottom.high > ends.bottom.low || ends.height.high > ends.height.low);
}

/** The space, where it is one; nothing else is ever handed on as a length. */
export function usableSpace({ space }: FitProblem): Ticks {
  return Number.isFinite(space) ? Math.max(space, 0) : 0;
}
