import type { CountCut } from './count-cuts.ts';
import { patternOf } from './fillings.ts';
import { tabulated } from './knapsack.ts';
import type { Pattern, Problem } from './problem.ts';

/** Boards of more units than this would take too large a table. */
const LARGEST = 100_000;

/**
 * Every pattern that a plan on just these numbers of boards can have. Of each cut, a plan has so much to spare,
 * `sum(most_j n_j) - need`, and each board takes of it what its pieces are worth less than the most it could hold; so
 * a pattern that takes more than there is to spare is in no plan (reduced cost fixing). Yields now and then; undefined
 * when there are more than `atMost`.
 */
export function* allPatterns(
  { sizes, demands, capacities }: Problem,
  counts: readonly number[],
  cuts: readonly CountCut[],
  atMost: number,
): Generator<undefined, Pattern[] | undefined> {
  const spare = cuts.map(({ most, need }) =>
    counts.reduce((sum, n, j) => sum + n * (most[j] as number), 0 - need),
  );
  if (spare.some((one) => one < 0)) return [];
  const largest = Math.max(...capacities);
  if (largest > LARGEST) return undefined;
  const every = Array.from({ length: largest + 1 }, (_, c) => c);
  // The cuts with least to spare rule out most; of each, the most that any room can still hold.
  const chosen = cuts
    .map((cut, k) => ({
      cut,
      spare: spare[k] as number,
      share: (spare[k] as number) / Math.max(1, cut.need),
    }))
    .sort((a, b) => a.share - b.share)
    .slice(0, 6)
    .map((one) => ({ ...one, hope: tabulated(sizes, demands, one.cut.worths, every).best }));
  const found: Pattern[] = [];
  const now = new Int32Array(sizes.length);
  const worth = new Float64Array(chosen.length);
  let steps = 0;
  let overflow = false;

  function* fill(stock: number, item: number, room: number): Generator<undefined, void> {
    if (overflow) return;
    if ((++steps & 8191) === 0) yield;
    if (steps > 4_000_000) overflow = true;
    for (const [k, { cut, spare, hope }] of chosen.entries())
      if ((worth[k] as number) + (hope[room] as number) < (cut.most[stock] as number) - spare) return;
    let next = item;
    while (next < sizes.length && (sizes[next] as number) > room) next++;
    if (next >= sizes.length) {
      for (const [k, { cut, spare }] of chosen.entries())
        if ((worth[k] as number) < (cut.most[stock] as number) - spare) return;
      found.push(patternOf(stock, now));
      if (found.length > atMost) overflow = true;
      return;
    }
    const size = sizes[next] as number;
    const add = (by: number) => {
      now[next] = (now[next] as number) + by;
      for (const [k, { cut }] of chosen.entries())
        worth[k] = (worth[k] as number) + by * (cut.worths[next] as number);
    };
    const many = Math.min(demands[next] as number, Math.floor(room / size));
    add(many);
    for (let left = many; left >= 0; left--) {
      yield* fill(stock, next + 1, room - left * size);
      if (left > 0) add(-1);
    }
  }

  for (let stock = 0; stock < capacities.length; stock++) {
    if ((counts[stock] as number) === 0) continue;
    yield* fill(stock, 0, capacities[stock] as number);
    if (overflow) return undefined;
  }
  return found;
}
