import { bestFillings, patternAt, patternOf } from './fillings.ts';
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
    const whole = usable.flatMap((j) => holdingAll(problem, j, demands, left) ?? []);
    const cheapest = least(whole, ({ stock }) => costs[stock] as number);
    const knapsacks = bestFillings(problem, demands, worths, { steps: STEPS, roughly: true });
    const ratio = (j: number) => (knapsacks.best[j] as number) / Math.max(1e-9, costs[j] as number);
    let next = most(usable, ratio);
    while (next !== undefined) {
      const hoped = ratio(next);
      knapsacks.filling(next);
      // Where it gives less than hoped, another may give more.
      if (ratio(next) === hoped) break;
      next = most(usable, ratio);
    }
    const pattern = cheapest ?? (next === undefined ? undefined : patternAt(next, knapsacks, next));
    if (!pattern || pattern.items.length === 0) return undefined;
    const { stock } = pattern;
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

/** The pattern with all pieces that are left, where one board of the stock holds them. */
function holdingAll(problem: Problem, stock: number, demands: Int32Array, left: number): Pattern | undefined {
  if ((problem.capacities[stock] as number) < left) return undefined;
  if (!problem.ripping) return patternOf(stock, demands);
  const found = bestFillings(problem, demands, problem.sizes, { steps: STEPS }, [stock]);
  return found.best[0] === left ? patternAt(stock, found, 0) : undefined;
}

function least<One>(list: readonly One[], by: (one: One) => number): One | undefined {
  return list.reduce<One | undefined>(
    (held, one) => (held === undefined || by(one) < by(held) ? one : held),
    undefined,
  );
}

function most<One>(list: readonly One[], by: (one: One) => number): One | undefined {
  return least(list, (one) => 0 - by(one));
}
