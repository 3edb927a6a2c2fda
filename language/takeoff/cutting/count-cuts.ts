import { solveKnapsacks } from './knapsack.ts';
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

const LARGEST = 2 ** 46;

export function cutOf(problem: Problem, duals: ArrayLike<number>): CountCut | undefined {
  const { sizes, demands, capacities } = problem;
  const total = demands.reduce((sum, demand, i) => sum + demand * Math.max(0, duals[i] as number), 0);
  if (!(total > 0) || !Number.isFinite(total)) return undefined;
  const worths = sizes.map((_, i) => Math.floor((Math.max(0, duals[i] as number) / total) * LARGEST));
  const need = demands.reduce((sum, demand, i) => sum + demand * (worths[i] as number), 0);
  const { best } = solveKnapsacks(sizes, demands, worths, capacities);
  return { worths, most: [...best], need };
}

export function fulfills({ most, need }: CountCut, counts: readonly number[]): boolean {
  let sum = 0;
  for (let j = 0; j < counts.length; j++) sum += (most[j] as number) * (counts[j] as number);
  return sum >= need;
}

/** The number of boards of each stock that costs least of all that may be possible still. */
export interface Counts {
  readonly counts: readonly number[];
  readonly cost: number;
}

/** What a search over counts comes to: the cheapest left, or that there is none below the limit, or it is not known. */
export type CountSearch =
  | { readonly kind: 'found'; readonly cheapest: Counts }
  | { readonly kind: 'none' }
  | { readonly kind: 'unfinished'; readonly bound: number };

const MOST_STEPS = 400_000;

/**
 * Searches counts that fulfill every cut and cost less than `below`, cheapest first. Counts that are nowhere more than
 * those of `impossible` are left out: with fewer boards one cannot do what one cannot with more. What is free is
 * used in full.
 */
export function cheapestCounts(
  { costs, available }: Problem,
  cuts: readonly CountCut[],
  impossible: readonly (readonly number[])[],
  below: number,
): CountSearch {
  const stocks = costs.map((_, j) => j);
  const counts = stocks.map((j) => (costs[j] === 0 ? (available[j] as number) : 0));
  const last = cuts.at(-1);
  const worth = (j: number) => (last?.most[j] ?? 0) / Math.max(1, costs[j] as number);
  const order = stocks.filter((j) => costs[j] !== 0).sort((a, b) => worth(b) - worth(a));
  const needs = cuts.map(({ most, need }) =>
    stocks.reduce((left, j) => left - (most[j] as number) * (counts[j] as number), need),
  );
  // Of each cut, for each depth: stocks still open, by what their share of the need costs.
  const open = cuts.map(({ most }) =>
    order.map((_, depth) =>
      order
        .slice(depth)
        .filter((j) => (most[j] as number) > 0)
        .map((j) => ({ j, most: most[j] as number, price: (costs[j] as number) / (most[j] as number) }))
        .sort((a, b) => a.price - b.price),
    ),
  );
  /** Least cost of what is still needed, fractions of a board allowed; whole, since costs are. */
  const leastRest = (depth: number): number => {
    let least = 0;
    for (let k = 0; k < cuts.length; k++) {
      let need = needs[k] as number;
      if (need <= 0) continue;
      let cost = 0;
      for (const one of open[k]?.[depth] ?? []) {
        const share = Math.min(need, one.most * (available[one.j] as number));
        cost += share * one.price;
        need -= share;
        if (need <= 0) break;
      }
      if (need > 0) return Infinity;
      least = Math.max(least, Math.ceil(cost * (1 - 1e-12) - 1e-6));
    }
    return least;
  };
  const bound = leastRest(0);
  if (bound >= below) return { kind: 'none' };
  let cheapest: Counts | undefined;
  let limit = below;
  let steps = 0;
  let unfinished = false;
  const take = (j: number, by: number) => {
    for (let k = 0; k < cuts.length; k++) needs[k] = (needs[k] as number) - by * (cuts[k]?.most[j] as number);
    counts[j] = (counts[j] as number) + by;
  };
  const dive = (depth: number, cost: number): void => {
    if (limit <= bound || unfinished) return;
    if (++steps > MOST_STEPS) {
      unfinished = true;
      return;
    }
    const j = order[depth];
    if (j === undefined) {
      if (cost >= limit || needs.some((need) => need > 0)) return;
      if (impossible.some((one) => counts.every((count, at) => count <= (one[at] as number)))) return;
      cheapest = { counts: [...counts], cost };
      limit = cost;
      return;
    }
    const rest = leastRest(depth);
    if (cost + rest >= limit) return;
    const price = costs[j] as number;
    let most = 0;
    for (let k = 0; k < cuts.length; k++) {
      const [need, each] = [needs[k] as number, cuts[k]?.most[j] as number];
      // More than every cut asks of it is never cheaper.
      if (need > 0 && each > 0) most = Math.max(most, Math.ceil(need / each));
    }
    // Counts known to be impossible may ask for more than the cuts do.
    for (const one of impossible) most = Math.max(most, (one[j] as number) + 1);
    most = Math.min(most, available[j] as number, Math.floor((limit - 1 - cost) / price));
    take(j, most);
    for (let many = most; many >= 0; many--) {
      dive(depth + 1, cost + many * price);
      if (many > 0) take(j, -1);
    }
  };
  dive(0, 0);
  if (unfinished) return { kind: 'unfinished', bound };
  return cheapest ? { kind: 'found', cheapest } : { kind: 'none' };
}
