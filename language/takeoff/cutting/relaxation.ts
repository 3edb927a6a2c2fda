import { type ColumnPool, isWithin } from './column-pool.ts';
import { bestFillings, patternAt } from './fillings.ts';
import type { Knapsacks } from './knapsack.ts';
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

/** Of a search for a column before a full one. */
const QUICK_STEPS = 4_000;
/** Columns priced in one round for one stock. */
const MOST_AT_ONCE = 12;

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
    const duals = master.duals;
    const prices = capacities.map((_, stock) => costOf(stock) - (duals[sizes.length + stock] as number));
    const above = prices.map((price) => price + TOLERANCE * Math.max(1, price));
    // A short search is often enough to find some that help; that there are none takes a full one.
    let knapsacks = bestFillings(problem, demands, duals, { above, steps: QUICK_STEPS });
    if (!capacities.some((_, j) => usable(j) && (knapsacks.best[j] as number) > (above[j] as number)))
      knapsacks = bestFillings(problem, demands, duals, { above });
    if (aim === 'fit' && tooLittle(demands, limits, duals, knapsacks)) break;
    let found = false;
    for (let stock = 0; stock < capacities.length; stock++) {
      if (!usable(stock) || (knapsacks.best[stock] as number) <= (above[stock] as number)) continue;
      const rest = Int32Array.from(demands);
      let pattern = patternAt(stock, knapsacks, stock);
      for (let more = 0; more < MOST_AT_ONCE; more++) {
        if (pool.add(pattern)) {
          found = true;
          master.columns.push({ pattern, cost: costOf(stock) });
        }
        // Columns of other pieces help one another: those of this filling are put aside, and again.
        for (const item of pattern.items) rest[item] = 0;
        const effort = { above: [above[stock] as number], steps: 2_000 };
        const other = bestFillings(problem, rest, duals, effort, [stock]);
        if ((other.best[0] as number) <= (above[stock] as number)) break;
        pattern = patternAt(stock, other, 0);
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

/** Whether what the boards hold at most, by these worths, is clearly less than what is asked: nothing covers it all. */
function tooLittle(
  demands: ArrayLike<number>,
  limits: ArrayLike<number>,
  duals: Float64Array,
  { atMost }: Knapsacks,
): boolean {
  let need = 0;
  for (let i = 0; i < demands.length; i++) need += (demands[i] as number) * Math.max(0, duals[i] as number);
  let give = 0;
  for (let j = 0; j < atMost.length; j++)
    if ((limits[j] as number) > 0) give += (limits[j] as number) * (atMost[j] as number);
  return need > give * (1 + 1e-6) + 1e-6;
}
