import { emptyFilling, type Filling, fillByTables } from './fill-by-tables.ts';
import type { Knapsacks } from './knapsack.ts';
import type { Problem, Ripping } from './problem.ts';
import { searchRips } from './rip-search.ts';
import { ripTables } from './rip-tables.ts';

/** Of a full search for a better filling than the tables lead to. */
const SEARCH_STEPS = 20_000;

interface RipEffort {
  readonly above: ArrayLike<number> | undefined;
  readonly thorough: boolean;
  readonly roughly: boolean;
}

/** As `bestFillings`, for boards that are ripped: of the stocks asked for, in their order. */
export function ripFillings(
  { ripping, sizes, capacities }: Problem & { readonly ripping: Ripping },
  bounds: ArrayLike<number>,
  values: ArrayLike<number>,
  stocks: readonly number[],
  { above, thorough, roughly }: RipEffort,
): Knapsacks {
  const tables = ripTables(ripping, bounds, values);
  let total = 0;
  for (let i = 0; i < sizes.length; i++) total += (bounds[i] as number) * Math.max(0, values[i] as number);
  const found = stocks.map((stock, at): { atMost: number; filling: Filling | undefined } => {
    const room = ripping.room[stock] as number;
    const byTable = (tables.board[ripping.acrossOf[stock] as number] as Float64Array)[room] as number;
    let atMost = Math.min(total, byTable);
    if (ripping.coarse)
      atMost = Math.max(atMost, bySpace(sizes, bounds, values, capacities[stock] as number));
    if (roughly) return { atMost, filling: undefined };
    const asked = above?.[at] ?? 0;
    const filling = emptyFilling(bounds);
    if (atMost <= asked) return { atMost, filling };
    fillByTables(ripping, filling, values, stock, room, tables);
    if (!thorough || ripping.coarse || filling.worth >= atMost) return { atMost, filling };
    let better = filling;
    const wanted = {
      stock,
      bounds,
      values,
      tables,
      least: Math.max(asked, filling.worth),
      orMore: false,
      steps: SEARCH_STEPS,
    };
    const end = searchRips(ripping, wanted, (worth, counts, segments) => {
      better = { counts: counts.slice(), left: better.left, segments: segments(), worth };
      return worth;
    });
    // Whatever is worth more was looked for; less than was asked for is of no interest.
    if (end === 'finished') atMost = Math.max(asked, better.worth);
    return { atMost, filling: better };
  });
  const best = Float64Array.from(found, ({ filling, atMost }) => filling?.worth ?? atMost);
  const made = (at: number): Filling => {
    const one = found[at] as (typeof found)[number];
    if (one.filling) return one.filling;
    const filling = emptyFilling(bounds);
    const stock = stocks[at] as number;
    fillByTables(ripping, filling, values, stock, ripping.room[stock] as number, tables);
    one.filling = filling;
    best[at] = filling.worth;
    return filling;
  };
  return {
    best,
    atMost: Float64Array.from(found, ({ atMost }) => atMost),
    filling: (at) => made(at).counts,
    segments: (at) => made(at).segments,
  };
}

/** What space alone allows: the densest first, fractions too (Dantzig, 1957). */
function bySpace(
  sizes: readonly number[],
  bounds: ArrayLike<number>,
  values: ArrayLike<number>,
  capacity: number,
): number {
  const order = sizes
    .map((size, item) => ({
      size: Math.max(1e-9, size),
      value: values[item] as number,
      many: bounds[item] as number,
    }))
    .filter(({ value, many }) => value > 0 && many > 0)
    .sort((a, b) => b.value / b.size - a.value / a.size);
  let [left, sum] = [capacity, 0];
  for (const { size, value, many } of order) {
    const taken = Math.min(many, left / size);
    sum += taken * value;
    left -= taken * size;
    if (left <= 0) break;
  }
  return sum * (1 + 1e-9);
}
