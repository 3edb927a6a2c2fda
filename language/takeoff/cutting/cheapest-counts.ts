import type { CountCut } from './count-cuts.ts';
import type { Problem } from './problem.ts';

/** What a search over numbers of boards comes to. */
export type CountSearch =
  /** Some that may be possible; they cost what the bound allows, or at least no more money. */
  | { readonly kind: 'found'; readonly counts: readonly number[]; readonly bound: number }
  /** There are none below the limit. */
  | { readonly kind: 'none' }
  | { readonly kind: 'unfinished'; readonly bound: number };

/** What is searched for. */
export interface CountsWanted {
  readonly cuts: readonly CountCut[];
  /** Numbers of boards that are nowhere more than these are left out: fewer boards do not do what more cannot. */
  readonly excluded: readonly (readonly number[])[];
  readonly below: number;
  /** Numbers to look near first. */
  readonly near: readonly number[];
  /** Give up after so many. */
  readonly steps: number;
}

/**
 * Searches numbers of boards that fulfill every cut, in windows of cost that grow from what the cuts allow: first
 * those that cost the same money, then a little more. A window searched in vain raises the bound. What is free is used
 * in full.
 */
export function cheapestCounts(problem: Problem, wanted: CountsWanted): CountSearch {
  const { costs, available, scale } = problem;
  const { cuts, excluded, below, near, steps: mostSteps } = wanted;
  const stocks = costs.map((_, j) => j);
  const counts = stocks.map((j) => (costs[j] === 0 ? (available[j] as number) : 0));
  const paid = stocks.filter((j) => costs[j] !== 0);
  // The stock most of it is made of last: its number then follows from what is left.
  const order = [...paid].sort((a, b) => (near[a] as number) - (near[b] as number));
  const needs = cuts.map(({ most, need }) =>
    stocks.reduce((left, j) => left - (most[j] as number) * (counts[j] as number), need),
  );
  const least = leastRests(problem, cuts, order, needs);
  let bound = least(0);
  let limit = 0;
  let steps = 0;
  const take = (j: number, by: number) => {
    for (let k = 0; k < cuts.length; k++) needs[k] = (needs[k] as number) - by * (cuts[k]?.most[j] as number);
    counts[j] = (counts[j] as number) + by;
  };
  const isExcluded = () => excluded.some((one) => counts.every((count, at) => count <= (one[at] as number)));

  /** Least number of the last stock that fulfills what is left. */
  const lastNumber = (j: number): number => {
    let many = 0;
    for (let k = 0; k < cuts.length; k++) {
      const [need, each] = [needs[k] as number, cuts[k]?.most[j] as number];
      if (need > 0) many = Math.max(many, each > 0 ? Math.ceil(need / each) : Infinity);
    }
    return many;
  };

  /** Leaves `counts` at what it finds. */
  const descend = (depth: number, cost: number): boolean => {
    const j = order[depth];
    if (j === undefined) return cost < limit && needs.every((need) => need <= 0) && !isExcluded();
    if (++steps > mostSteps) return false;
    const price = costs[j] as number;
    const most = Math.min(available[j] as number, Math.floor((limit - 1 - cost) / price));
    const last = depth === order.length - 1;
    const tryNumber = (many: number): 'found' | 'in' | 'out' => {
      steps++;
      take(j, many);
      if (cost + many * price + (last ? 0 : least(depth + 1)) < limit) {
        if (descend(depth + 1, cost + many * price)) return 'found';
        take(j, -many);
        return 'in';
      }
      take(j, -many);
      return 'out';
    };
    if (last) {
      for (let many = lastNumber(j); many <= most; many++) if (tryNumber(many) === 'found') return true;
      return false;
    }
    // Least cost is convex in the number: once outside behind the inside, outside for good.
    const start = Math.min(most, Math.max(0, Math.round(near[j] as number)));
    for (const step of [1, -1]) {
      let inside = false;
      for (let many = step > 0 ? start : start - 1; many >= 0 && many <= most; many += step) {
        const answer = tryNumber(many);
        if (answer === 'found') return true;
        if (answer === 'in') inside = true;
        else if (inside) break;
        if (steps > mostSteps) return false;
      }
    }
    return false;
  };

  for (let width = 1; ; width *= 2) {
    if (bound >= below) return { kind: 'none' };
    limit = Math.min(below, (Math.floor(bound / scale) + width) * scale);
    if (descend(0, 0)) return { kind: 'found', counts: [...counts], bound };
    if (steps > mostSteps) return { kind: 'unfinished', bound };
    bound = limit;
  }
}

/** By depth: least cost of what is still needed, fractions of a board allowed; whole, since costs are. */
function leastRests(
  { costs, available }: Problem,
  cuts: readonly CountCut[],
  order: readonly number[],
  needs: readonly number[],
): (depth: number) => number {
  const open = cuts.map(({ most }) =>
    order.map((_, depth) =>
      order
        .slice(depth)
        .filter((j) => (most[j] as number) > 0)
        .map((j) => ({ j, most: most[j] as number, price: (costs[j] as number) / (most[j] as number) }))
        .sort((a, b) => a.price - b.price),
    ),
  );
  return (depth) => {
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
}
