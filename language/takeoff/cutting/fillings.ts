import { type Effort, type Knapsacks, solveKnapsacks } from './knapsack.ts';
import type { Pattern, Problem } from './problem.ts';
import { ripFillings } from './rip-filling.ts';

/**
 * Best fillings of boards of some stocks, by what pieces are worth: bounded knapsacks, or where boards are ripped
 * knapsacks in two stages. Whole values below 2^46 in sum give whole, exact bounds.
 *
 * @param bounds how many of each size may be taken
 * @param stocks by default all; `above` goes by their places here
 */
export function bestFillings(
  problem: Problem,
  bounds: ArrayLike<number>,
  values: ArrayLike<number>,
  effort: Effort = {},
  stocks: readonly number[] = [...problem.capacities.keys()],
): Knapsacks {
  const { ripping, sizes, capacities } = problem;
  if (ripping)
    return ripFillings({ ...problem, ripping }, bounds, values, stocks, {
      above: effort.above,
      thorough: effort.steps === undefined,
      roughly: effort.roughly === true,
    });
  return solveKnapsacks(
    sizes,
    bounds,
    values,
    stocks.map((stock) => capacities[stock] as number),
    effort,
  );
}

/** The pattern of a filling found, by its place. */
export function patternAt(stock: number, knapsacks: Knapsacks, at: number): Pattern {
  const segments = knapsacks.segments?.(at);
  const pattern = patternOf(stock, knapsacks.filling(at));
  return segments ? { ...pattern, segments } : pattern;
}

/** A pattern from how many of each size a board has. */
export function patternOf(stock: number, counts: ArrayLike<number>): Pattern {
  const items: number[] = [];
  const many: number[] = [];
  for (let i = 0; i < counts.length; i++) {
    if ((counts[i] as number) === 0) continue;
    items.push(i);
    many.push(counts[i] as number);
  }
  return { stock, items, counts: many };
}
