import type { LengthProblem, RefusedLength } from './parsed-length.ts';

/**
 * Explains one kind of refused spelling, or passes with undefined. `through` blames `problem` and takes its
 * fixes from a spelling nearer to an accepted one.
 */
export type Explain = (
  plain: string,
  through: (problem: LengthProblem, nearer: string) => RefusedLength,
) => RefusedLength | undefined;
