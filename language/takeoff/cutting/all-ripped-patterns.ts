import type { CountCut } from './count-cuts.ts';
import { patternOf } from './fillings.ts';
import type { Pattern, Problem, Ripping } from './problem.ts';
import { searchRips } from './rip-search.ts';
import { ripTables } from './rip-tables.ts';

/** Steps of looking for each pattern that may be kept. */
const STEPS_EACH = 8;

/**
 * As `allPatterns`, for boards that are ripped: every pattern that a plan on just these numbers of boards can have, found
 * by the cut with least to spare and held against the others. Undefined when there are more than `atMost`.
 */
export function* allRippedPatterns(
  { ripping, demands, capacities }: Problem & { readonly ripping: Ripping },
  counts: readonly number[],
  cuts: readonly CountCut[],
  atMost: number,
): Generator<undefined, Pattern[] | undefined> {
  if (ripping.coarse) return undefined;
  const spares = cuts
    .map((cut) => ({
      cut,
      spare: counts.reduce((sum, n, j) => sum + n * (cut.most[j] as number), 0 - cut.need),
    }))
    .sort((a, b) => a.spare / Math.max(1, a.cut.need) - b.spare / Math.max(1, b.cut.need));
  const [tightest] = spares;
  if (!tightest) return undefined;
  if (tightest.spare < 0) return [];
  const tables = ripTables(ripping, demands, tightest.cut.worths);
  const found = new Map<string, Pattern>();
  for (let stock = 0; stock < capacities.length; stock++) {
    if ((counts[stock] as number) === 0) continue;
    yield;
    const wanted = {
      stock,
      bounds: demands,
      values: tightest.cut.worths,
      tables,
      least: Math.max(0, (tightest.cut.most[stock] as number) - tightest.spare),
      orMore: true,
      steps: STEPS_EACH * atMost,
    };
    const end = searchRips(ripping, wanted, (_, has, segments) => {
      const key = `${stock} ${has.join()}`;
      const fails = ({ cut, spare }: (typeof spares)[number]) =>
        cut.worths.reduce((sum, worth, item) => sum + worth * (has[item] as number), 0) <
        (cut.most[stock] as number) - spare;
      if (found.has(key) || spares.some(fails)) return undefined;
      found.set(key, { ...patternOf(stock, has), segments: segments() });
      return found.size > atMost ? 'stop' : undefined;
    });
    if (end !== 'finished') return undefined;
  }
  return [...found.values()];
}
