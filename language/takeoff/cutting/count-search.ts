import type { CountCut } from './count-cuts.ts';
import type { Problem } from './problem.ts';

/** Numbers of boards of each stock, and their combined cost. */
export interface Counts {
  readonly counts: readonly number[];
  readonly cost: number;
}

/** The cheapest numbers left; or that there are none below the limit; or that none below `bound` are left. */
export type CountAnswer =
  | { readonly kind: 'found'; readonly cheapest: Counts }
  | { readonly kind: 'none' }
  | { readonly kind: 'unfinished'; readonly bound: number };

/** Tables hold at most so many prices, and are made for so many cuts. */
const MOST_PRICES = 3_000_000;
const MOST_TABLES = 12_000_000;
const MOST_STEPS = 300_000;

/** Of a cut: the most worth that a sum of money buys from the stocks of an order, from each place of it on. */
type Tables = readonly Float64Array[];

/**
 * Searches the numbers of boards that no cut rules out, cheapest first; of those that cost alike, fewest boards first.
 * For some cuts a table says, for every sum of money, how much worth it buys (an unbounded knapsack), so that the
 * search turns back where what is left of the sum cannot buy what is left of the need.
 */
export class CountSearch {
  private readonly problem: Problem;
  private readonly order: readonly number[];
  /** Prices in their greatest common measure. */
  private readonly prices: readonly number[];
  private readonly measure: number;
  private readonly most: number;
  private readonly tables = new Map<CountCut, Tables>();
  private readonly free: readonly number[];
  /** Below this no numbers are left. */
  private refuted = 0;

  /** @param below combined cost of a plan that is known */
  constructor(problem: Problem, guide: CountCut, below: number) {
    this.problem = problem;
    const { costs, available, scale } = problem;
    const price = (j: number) => Math.floor((costs[j] as number) / scale);
    const worth = (j: number) => (guide.most[j] as number) / (costs[j] as number);
    const stocks = costs.map((_, j) => j);
    this.order = stocks.filter((j) => costs[j] !== 0).sort((a, b) => worth(b) - worth(a));
    // Prices too fine for a table are taken down to what it can hold: then it promises too much, never too little.
    const finest = Math.ceil(below / scale / MOST_PRICES);
    this.measure = Math.max(1, finest, this.order.map(price).reduce(greatestCommon, 0));
    this.prices = this.order.map((j) => Math.floor(price(j) / this.measure));
    this.most = Math.floor(below / scale / this.measure);
    this.free = stocks.map((j) => (costs[j] === 0 ? (available[j] as number) : 0));
  }

  /**
   * @param impossible numbers that are ruled out, with all that are nowhere more: with fewer boards one cannot do what
   * one cannot with more
   * @param below combined cost that is not worth reaching
   * @param forGood whether all of `impossible` are that, and none is only undecided
   */
  cheapest(
    cuts: readonly CountCut[],
    impossible: readonly (readonly number[])[],
    below: number,
    forGood: boolean,
  ): CountAnswer {
    const { scale } = this.problem;
    const needs = cuts.map(({ most, need }) =>
      this.free.reduce((left, many, j) => left - many * (most[j] as number), need),
    );
    const tabled = this.tablesFor(cuts);
    let best: Counts | undefined;
    for (
      let sum = this.refuted;
      sum <= this.most && sum * this.measure * scale < (best?.cost ?? below);
      sum++
    ) {
      if (tabled.some(({ table, k }) => (needs[k] as number) > (table[0]?.[sum] ?? Infinity))) {
        this.refuted = sum + 1;
        continue;
      }
      const answer = this.within(sum, cuts, [...needs], tabled, impossible, best?.cost ?? below);
      if (answer === 'unfinished') return { kind: 'unfinished', bound: sum * this.measure * scale };
      if (answer) best = answer;
      else if (forGood && !best) this.refuted = sum + 1;
    }
    return best ? { kind: 'found', cheapest: best } : { kind: 'none' };
  }

  private tablesFor(cuts: readonly CountCut[]): { readonly table: Tables; readonly k: number }[] {
    const many = Math.min(
      cuts.length,
      Math.max(1, Math.floor(MOST_TABLES / (this.most * this.order.length + 1))),
    );
    // The newest say most; the guide, second of all, says what the program without limits does.
    const chosen = [...new Set([1, ...Array.from({ length: many }, (_, i) => cuts.length - 1 - i)])]
      .filter((k) => k >= 0 && k < cuts.length)
      .slice(0, many);
    const kept = new Set(chosen.map((k) => cuts[k] as CountCut));
    for (const cut of this.tables.keys()) if (!kept.has(cut)) this.tables.delete(cut);
    return chosen.map((k) => {
      const cut = cuts[k] as CountCut;
      const table = this.tables.get(cut) ?? this.tableOf(cut);
      this.tables.set(cut, table);
      return { table, k };
    });
  }

  private tableOf({ most }: CountCut): Tables {
    const tables: Float64Array[] = [new Float64Array(this.most + 1)];
    for (let depth = this.order.length - 1; depth >= 0; depth--) {
      const j = this.order[depth] as number;
      const price = this.prices[depth] as number;
      const worth = most[j] as number;
      const table = (tables[0] as Float64Array).slice();
      const available = this.problem.available[j] as number;
      if (price === 0) {
        table.forEach((value, sum) => {
          table[sum] = value + worth * available;
        });
      } else if (available * price > this.most) {
        for (let sum = price; sum <= this.most; sum++)
          table[sum] = Math.max(table[sum] as number, (table[sum - price] as number) + worth);
      } else {
        for (let left = available, bundle = 1; left > 0; bundle *= 2) {
          const taken = Math.min(bundle, left);
          left -= taken;
          for (let sum = this.most; sum >= price * taken; sum--)
            table[sum] = Math.max(
              table[sum] as number,
              (table[sum - price * taken] as number) + worth * taken,
            );
        }
      }
      tables.unshift(table);
    }
    return tables;
  }

  /** Numbers that cost no more than a sum of money, with fewest boards; undefined when there are none. */
  private within(
    sum: number,
    cuts: readonly CountCut[],
    needs: number[],
    tabled: readonly { readonly table: Tables; readonly k: number }[],
    impossible: readonly (readonly number[])[],
    below: number,
  ): Counts | undefined | 'unfinished' {
    const { available, costs } = this.problem;
    const { order, prices } = this;
    const counts = [...this.free];
    let found: Counts | undefined;
    let limit = below;
    let steps = 0;
    const take = (j: number, by: number) => {
      for (let k = 0; k < cuts.length; k++)
        needs[k] = (needs[k] as number) - by * ((cuts[k] as CountCut).most[j] as number);
      counts[j] = (counts[j] as number) + by;
    };
    const dive = (depth: number, money: number, cost: number): boolean => {
      if (++steps > MOST_STEPS) return false;
      for (const { table, k } of tabled)
        if ((needs[k] as number) > ((table[depth] as Float64Array)[money] as number)) return true;
      const j = order[depth];
      if (j === undefined) {
        if (cost >= limit || needs.some((need) => need > 0)) return true;
        if (impossible.some((one) => counts.every((many, at) => many <= (one[at] as number)))) return true;
        found = { counts: [...counts], cost };
        limit = cost;
        return true;
      }
      const price = prices[depth] as number;
      let most = 0;
      let least = 0;
      for (let k = 0; k < cuts.length; k++) {
        const [need, each] = [needs[k] as number, (cuts[k] as CountCut).most[j] as number];
        if (need <= 0) continue;
        // More than every cut asks of it is never cheaper; the last must give all that is still needed.
        if (each > 0) most = Math.max(most, Math.ceil(need / each));
        if (depth === order.length - 1) least = Math.max(least, each > 0 ? Math.ceil(need / each) : Infinity);
      }
      for (const one of impossible) most = Math.max(most, (one[j] as number) + 1);
      most = Math.min(most, available[j] as number, price > 0 ? Math.floor(money / price) : Infinity);
      if (most < least) return true;
      take(j, most);
      let complete = true;
      let many = most;
      for (; many >= least; many--) {
        complete = dive(depth + 1, money - many * price, cost + many * (costs[j] as number));
        if (!complete || many === least) break;
        take(j, -1);
      }
      take(j, -many);
      return complete;
    };
    const complete = dive(0, sum, 0);
    return found ?? (complete ? undefined : 'unfinished');
  }
}

function greatestCommon(a: number, b: number): number {
  let [x, y] = [a, b];
  while (y !== 0) [x, y] = [y, x % y];
  return x;
}
