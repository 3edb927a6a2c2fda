import { bestFillings } from './fillings.ts';
import type { Problem } from './problem.ts';

/**
 * What any plan must fulfill in the number of boards n of each stock: `sum(most_j n_j) >= need`, where pieces are
 * given whole worths, `need` is the worth of all and `most_j` the greatest worth one board of the stock can hold.
 * All numbers are whole and below 2^53, so that nothing rests on rounding: whatever worths are given, it holds.
 */
export interface CountCut {
  /** By size. */
  readonly worths: readonly number[];
  readonly most: readonly number[];
  readonly need: number;
}

const LARGEST = 2 ** 45;

export function cutOf(problem: Problem, duals: ArrayLike<number>): CountCut | undefined {
  const { sizes, demands } = problem;
  const total = demands.reduce((sum, demand, i) => sum + demand * Math.max(0, duals[i] as number), 0);
  if (!(total > 0) || !Number.isFinite(total)) return undefined;
  const worths = sizes.map((_, i) => Math.floor((Math.max(0, duals[i] as number) / total) * LARGEST));
  const need = demands.reduce((sum, demand, i) => sum + demand * (worths[i] as number), 0);
  const { atMost } = bestFillings(problem, demands, worths);
  // Where the greatest is not known, a bound in floats stands for it, made safe by a whole step up.
  return {
    worths,
    most: Array.from(atMost, (most) => Math.min(need, Number.isInteger(most) ? most : Math.ceil(most + 1))),
    need,
  };
}

export function fulfills({ most, need }: CountCut, counts: readonly number[]): boolean {
  let sum = 0;
  for (let j = 0; j < counts.length; j++) sum += (most[j] as number) * (counts[j] as number);
  return sum >= need;
}

/** What the cheapest length costs, for all the length needed. */
export function leastByLength({ sizes, demands, capacities, costs }: Problem): number {
  const length = sizes.reduce((sum, size, i) => sum + size * (demands[i] as number), 0);
  const cheapest = Math.min(...capacities.map((capacity, j) => (costs[j] as number) / capacity));
  return Math.max(0, Math.ceil(length * cheapest * (1 - 1e-12) - 1e-6));
}
