import { type ColumnPool, isWithin, patternOf } from './column-pool.ts';
import { solveKnapsacks } from './knapsack.ts';
import { type Column, Master } from './master.ts';
import type { Problem } from './problem.ts';

/** What a linear program covers and with what. */
export interface Cover {
  readonly demands: ArrayLike<number>;
  /** Boards of each stock that may be used. */
  readonly limits: ArrayLike<number>;
  /** `cost`: cheapest boards; what stays uncovered costs more than any. `fit`: as much as fits, boards free. */
  readonly aim: 'cost' | 'fit';
}

export interface Relaxed {
  readonly value: number;
  /** By size: what one more of it would cost. */
  readonly duals: Float64Array;
  /** Patterns and how often, fractions of a board too. */
  readonly used: readonly { readonly column: Column; readonly times: number }[];
  /** How much is left uncovered, weighed by size. */
  readonly uncovered: number;
}

/** Reduced costs nearer to 0, against what a board is worth, are rounding. */
const TOLERANCE = 1e-9;

/**
 * Covers demands with fractions of patterns: column generation, where each new pattern is a best filling of a
 * board by the current worth of the pieces (Gilmore and Gomory, 1961 and 1963). Yields after every round.
 */
export function* relax(
  problem: Problem,
  { demands, limits, aim }: Cover,
  pool: ColumnPool,
): Generator<undefined, Relaxed> {
  const { sizes, capacities, costs } = problem;
  const dearest = Math.max(1, ...costs);
  const penalties = sizes.map((size) => (aim === 'fit' ? size : dearest * 4));
  const master = new Master(demands, limits, penalties);
  const costOf = (stock: number) => (aim === 'fit' ? 0 : (costs[stock] as number));
  const usable = (stock: number) => (limits[stock] as number) > 0;
  for (const pattern of pool.patterns)
    if (usable(pattern.stock) && isWithin(pattern, demands))
      master.columns.push({ pattern, cost: costOf(pattern.stock) });
  for (let round = 0; round < 5_000; round++) {
    master.optimize();
    const knapsacks = solveKnapsacks(sizes, demands, master.duals, capacities);
    let found = false;
    for (let stock = 0; stock < capacities.length; stock++) {
      if (!usable(stock)) continue;
      const best = knapsacks.best[stock] as number;
      const cost = costOf(stock);
      const reduced = cost - (master.duals[sizes.length + stock] as number) - best;
      if (reduced >= -TOLERANCE * Math.max(1, best)) continue;
      const pattern = patternOf(stock, knapsacks.filling(stock));
      if (pool.add(pattern)) {
        found = true;
        master.columns.push({ pattern, cost });
      }
    }
    if (!found) break;
    yield;
  }
  return {
    value: master.value,
    duals: master.duals.slice(0, sizes.length),
    used: master.solution(),
    uncovered: master.uncovered,
  };
}
