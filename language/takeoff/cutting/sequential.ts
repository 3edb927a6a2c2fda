import { patternOf } from './column-pool.ts';
import { solveKnapsacks } from './knapsack.ts';
import type { Packing, Pattern, Problem } from './problem.ts';

/** Boards that may be used, and pieces still to be cut. */
export interface Rest {
  readonly demands: ArrayLike<number>;
  readonly limits: ArrayLike<number>;
}

/** Spent on filling one board; a good plan at once is worth more than a best filling. */
const STEPS = 2_000;

/**
 * Cuts board after board, each filled with what is worth most of what is left, from the stock that gives most worth
 * for its cost (a sequential heuristic; Haessler, 1971). Undefined when limited stock runs out.
 *
 * @param worths by size; the size itself makes it fill boards as full as they go
 */
export function cutOneByOne(problem: Problem, rest: Rest, worths: ArrayLike<number>): Packing | undefined {
  const { sizes, capacities, costs } = problem;
  const demands = Int32Array.from(rest.demands);
  const limits = Float64Array.from(rest.limits);
  const packing: { pattern: Pattern; times: number }[] = [];
  let left = 0;
  for (let i = 0; i < sizes.length; i++) left += (demands[i] as number) * (sizes[i] as number);
  while (left > 0) {
    const usable = capacities.map((_, j) => j).filter((j) => (limits[j] as number) > 0);
    // All that is left on one board: the cheapest that takes it.
    const fits = usable.filter((j) => (capacities[j] as number) >= left);
    const cheapest = least(fits, (j) => costs[j] as number);
    const knapsacks = solveKnapsacks(sizes, demands, worths, capacities, { steps: STEPS });
    const stock =
      cheapest ?? most(usable, (j) => (knapsacks.best[j] as number) / Math.max(1e-9, costs[j] as number));
    if (stock === undefined) return undefined;
    const counts = cheapest === undefined ? knapsacks.filling(stock) : demands.slice();
    const pattern = patternOf(stock, counts);
    if (pattern.items.length === 0) return undefined;
    let times = limits[stock] as number;
    for (const [k, item] of pattern.items.entries())
      times = Math.min(times, Math.floor((demands[item] as number) / (pattern.counts[k] as number)));
    // The last ones are better decided board by board.
    times = Math.max(1, times > 3 ? times - 2 : 1);
    for (const [k, item] of pattern.items.entries()) {
      const taken = (pattern.counts[k] as number) * times;
      demands[item] = (demands[item] as number) - taken;
      left -= taken * (sizes[item] as number);
    }
    limits[stock] = (limits[stock] as number) - times;
    packing.push({ pattern, times });
  }
  return packing;
}

function least(list: readonly number[], by: (one: number) => number): number | undefined {
  return list.reduce<number | undefined>(
    (held, one) => (held === undefined || by(one) < by(held) ? one : held),
    undefined,
  );
}

function most(list: readonly number[], by: (one: number) => number): number | undefined {
  return least(list, (one) => 0 - by(one));
}
