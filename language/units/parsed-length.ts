import type { Ticks } from './ticks.ts';

/** What a stated length text amounts to. */
export type ParsedLength = StatedLength | RefusedLength;

export interface StatedLength {
  ok: true;
  ticks: Ticks;
  system: 'imperial' | 'metric';
  /** False when the length had to be rounded to a whole tick. */
  exact: boolean;
}

export interface RefusedLength {
  ok: false;
  problem: LengthProblem;
  /** The text that puts it right, where one reading stands before all others. */
  hint?: string;
  /** All candidates, where there are several; the first is `hint`, if there is a `hint`. */
  hints?: string[];
}

/** Why a text is refused as a length. */
export type LengthProblem =
  /** `7`, `1/2`: no unit */
  | 'bare-number'
  /** `6 in`, `2 yd`, `4zz` */
  | 'unknown-unit'
  /** `7' 14"` */
  | 'inches-over-foot'
  /** `10 - 1/2"`, `7' - 6"`: joined, or taken away? */
  | 'spaced-minus'
  /** `4,200 mm` */
  | 'thousands-mark'
  /** `2,4 m` */
  | 'decimal-comma'
  /** `12' 3` */
  | 'missing-inch-mark'
  /** `5/4"` */
  | 'improper-fraction'
  /** `1/0"` */
  | 'zero-denominator'
  /** `7.5' 3"`, `1/2'` */
  | 'fraction-of-foot'
  /** more than 10 km, or more digits than any length needs */
  | 'too-large'
  | 'not-a-length';

/** A refusal with its fixes, the likeliest first. */
export function refuse(problem: LengthProblem, fixes: readonly string[] = []): RefusedLength {
  const unique = [...new Set(fixes)];
  const [hint] = unique;
  if (hint === undefined) return { ok: false, problem };
  return unique.length > 1 ? { ok: false, problem, hint, hints: unique } : { ok: false, problem, hint };
}
