import { type ColumnPool, isWithin } from './column-pool.ts';
import type { Packing, Pattern, Problem } from './problem.ts';
import { type Cover, type Relaxed, relax } from './relaxation.ts';
import { cutOneByOne } from './sequential.ts';

/** How a dive makes whole boards of fractions. */
export interface Dive {
  readonly random: () => number;
  /** How far choices stray from the largest fraction, 0 to 1. */
  readonly stray: number;
}

/**
 * Makes a plan of whole boards from a relaxed one: takes what is whole, rounds one fraction up, covers the rest anew,
 * and so on (diving; Vance, 1998, and Belov and Scheithauer, 2006, for rests). Undefined when limits leave pieces.
 */
export function* dive(
  problem: Problem,
  cover: Cover,
  pool: ColumnPool,
  { random, stray }: Dive,
  first?: Relaxed,
): Generator<undefined, Packing | undefined> {
  const demands = Int32Array.from(cover.demands);
  const limits = Float64Array.from(cover.limits);
  const packing: { pattern: Pattern; times: number }[] = [];
  const take = (pattern: Pattern, times: number) => {
    for (const [k, item] of pattern.items.entries())
      demands[item] = (demands[item] as number) - (pattern.counts[k] as number) * times;
    limits[pattern.stock] = (limits[pattern.stock] as number) - times;
    packing.push({ pattern, times });
  };
  const room = (pattern: Pattern) =>
    isWithin(pattern, demands) && (limits[pattern.stock] as number) > 0 ? pattern : undefined;
  let relaxed = first;
  while (demands.some((demand) => demand > 0)) {
    relaxed ??= yield* relax(problem, { ...cover, demands, limits }, pool);
    yield;
    // Nothing rounded to whole boards covers more than fractions do.
    if (cover.aim === 'fit' && relaxed.uncovered > 1e-6) return undefined;
    let taken = false;
    for (const { column, times } of relaxed.used) {
      const whole = Math.min(timesWithin(column.pattern, demands, limits), Math.floor(times + 1e-6));
      if (whole > 0) {
        take(column.pattern, whole);
        taken = true;
      }
    }
    if (!taken) {
      const candidates = relaxed.used
        .filter(({ column }) => room(column.pattern))
        .map((one) => ({ ...one, rank: one.times + stray * random() }))
        .sort((a, b) => b.rank - a.rank);
      const chosen = candidates[0];
      if (!chosen) {
        const rest = cutOneByOne(problem, { demands, limits }, problem.sizes);
        return rest && [...packing, ...rest];
      }
      take(chosen.column.pattern, 1);
    }
    relaxed = undefined;
  }
  return packing;
}

function timesWithin({ stock, items, counts }: Pattern, demands: Int32Array, limits: Float64Array): number {
  let times = limits[stock] as number;
  for (const [k, item] of items.entries())
    times = Math.min(times, Math.floor((demands[item] as number) / (counts[k] as number)));
  return times;
}
