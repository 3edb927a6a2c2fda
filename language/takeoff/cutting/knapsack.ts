import { type Found, searchKnapsack } from './knapsack-search.ts';
import type { Segment } from './problem.ts';

/** Bounded knapsacks over one set of sizes, one for each capacity asked for. */
export interface Knapsacks {
  /** What the filling found is worth, for each capacity. */
  readonly best: Float64Array;
  /** No filling is worth more; the same as `best` where that is known to be the greatest. */
  readonly atMost: Float64Array;
  /** How many of each size the filling found for the capacity of that index has. */
  filling(at: number): Int32Array;
  /** Where boards are ripped: one way to cut it. */
  segments?(at: number): readonly Segment[];
}

/** How hard to look. */
export interface Effort {
  /** By capacity: fillings worth no more than this are of no interest, and `best` may be 0 then. */
  readonly above?: ArrayLike<number>;
  /** Give up after so many steps for a capacity and take what is found, instead of making a table. */
  readonly steps?: number;
  /** Where boards are ripped: `best` is what there can be at most until the filling is asked for. */
  readonly roughly?: boolean;
}

/** Above so many cells a table is not made: it would hold up whoever waits. */
const LARGEST_TABLE = 24_000_000;
const SEARCH_STEPS = 200_000;

/**
 * Best fillings by searching, which is quick where a board holds few pieces; where that takes long, by a table over
 * all capacities. Whole values below 2^46 in sum give whole, exact answers.
 *
 * @param sizes whole and greater than 0
 * @param bounds how many of each may be taken
 * @param values what each is worth; those worth nothing are left out
 */
export function solveKnapsacks(
  sizes: readonly number[],
  bounds: ArrayLike<number>,
  values: ArrayLike<number>,
  capacities: readonly number[],
  { above, steps }: Effort = {},
): Knapsacks {
  const cells = cellsOf(sizes, bounds, values, capacities);
  const most = steps ?? (cells > LARGEST_TABLE ? SEARCH_STEPS : Math.max(1_000, cells / 200));
  const found: Found[] = [];
  for (const [at, capacity] of capacities.entries()) {
    const one = searchKnapsack(sizes, bounds, values, capacity, above?.[at] ?? 0, most);
    if (!one.finished && steps === undefined && cells <= LARGEST_TABLE)
      return tabulated(sizes, bounds, values, capacities);
    found.push(one);
  }
  return {
    best: Float64Array.from(found, ({ value }) => value),
    atMost: Float64Array.from(found, ({ atMost }) => atMost),
    filling: (at) => (found[at] as Found).counts,
  };
}

function cellsOf(
  sizes: readonly number[],
  bounds: ArrayLike<number>,
  values: ArrayLike<number>,
  capacities: readonly number[],
): number {
  const largest = Math.max(0, ...capacities);
  let bundles = 0;
  for (let item = 0; item < sizes.length; item++) {
    const most = Math.min(bounds[item] as number, Math.floor(largest / (sizes[item] as number)));
    if ((values[item] as number) > 0 && most > 0) bundles += Math.ceil(Math.log2(most + 1));
  }
  return bundles * (largest + 1);
}

/**
 * For every capacity up to the largest at once, by dynamic programming over whole sizes, counts taken in powers of two
 * (Martello and Toth, Knapsack Problems, 1990, chapter 3).
 */
export function tabulated(
  sizes: readonly number[],
  bounds: ArrayLike<number>,
  values: ArrayLike<number>,
  capacities: readonly number[],
): Knapsacks {
  const largest = Math.max(0, ...capacities);
  const bundles: { item: number; many: number; size: number }[] = [];
  for (let item = 0; item < sizes.length; item++) {
    if (!((values[item] as number) > 0)) continue;
    const size = sizes[item] as number;
    let left = Math.min(bounds[item] as number, Math.floor(largest / size));
    for (let many = 1; left > 0; many *= 2) {
      const taken = Math.min(many, left);
      bundles.push({ item, many: taken, size: size * taken });
      left -= taken;
    }
  }
  const width = largest + 1;
  const best = new Float64Array(width);
  const taken = new Uint8Array(bundles.length * width);
  for (const [row, { item, many, size }] of bundles.entries()) {
    const value = (values[item] as number) * many;
    const start = row * width;
    for (let c = largest; c >= size; c--) {
      const withIt = (best[c - size] as number) + value;
      if (withIt > (best[c] as number)) {
        best[c] = withIt;
        taken[start + c] = 1;
      }
    }
  }
  const greatest = Float64Array.from(capacities, (capacity) => best[Math.max(0, capacity)] as number);
  return {
    best: greatest,
    atMost: greatest,
    filling: (at) => {
      const counts = new Int32Array(sizes.length);
      let c = Math.max(0, capacities[at] as number);
      for (let row = bundles.length - 1; row >= 0; row--) {
        const bundle = bundles[row] as (typeof bundles)[number];
        if (taken[row * width + c] !== 1) continue;
        counts[bundle.item] = (counts[bundle.item] as number) + bundle.many;
        c -= bundle.size;
      }
      return counts;
    },
  };
}
