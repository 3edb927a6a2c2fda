import type { CountCut } from './count-cuts.ts';
import { patternOf } from './fillings.ts';
import type { Packing, Pattern, Problem } from './problem.ts';

export type PackingSearch =
  | { readonly kind: 'packed'; readonly packing: Packing }
  | { readonly kind: 'impossible' }
  | { readonly kind: 'unfinished' };

/** Of one board at one time; more are not tried, and then nothing is proven impossible. */
const MOST_FILLINGS = 20_000;

/**
 * Whether pieces fit on just these boards, by trying all ways: the board that is hardest to fill next, with every
 * filling that is full (no further piece of those left fits) and has the largest piece left, fullest first. A branch
 * ends where more would be wasted than there is to waste, where a cut says that the rest does not go on the boards
 * left, or where the same rest was tried before.
 */
export function* packExactly(
  { sizes, demands: all, capacities }: Problem,
  counts: readonly number[],
  cuts: readonly CountCut[],
  mostSteps: number,
): Generator<undefined, PackingSearch> {
  const demands = Int32Array.from(all);
  const boards = Int32Array.from(counts);
  const chosen: Pattern[] = [];
  const tried = new Set<string>();
  let steps = 0;
  let waste = 0;
  for (let j = 0; j < boards.length; j++) waste += (boards[j] as number) * (capacities[j] as number);
  for (let i = 0; i < sizes.length; i++) waste -= (demands[i] as number) * (sizes[i] as number);
  if (waste < 0) return { kind: 'impossible' };
  let truncated = false;

  /** Whether a cut says that what is left does not go on the boards left. */
  const refuted = (): boolean =>
    cuts.some(({ worths, most }) => {
      let [need, give] = [0, 0];
      for (let i = 0; i < demands.length; i++) need += (demands[i] as number) * (worths[i] as number);
      for (let j = 0; j < boards.length; j++) give += (boards[j] as number) * (most[j] as number);
      return need > give;
    });

  function* search(slack: number): Generator<undefined, boolean | undefined> {
    const largest = demands.findIndex((demand) => demand > 0);
    if (largest < 0) return true;
    if (++steps > mostSteps) return undefined;
    if ((steps & 31) === 0) yield;
    const state = `${demands.join()} ${boards.join()}`;
    if (tried.has(state)) return false;
    if (refuted()) return false;
    let known: boolean | undefined = false;
    for (let j = 0; j < boards.length; j++) {
      if ((boards[j] as number) === 0 || (capacities[j] as number) < (sizes[largest] as number)) continue;
      // The largest piece must lie on some board: on one of this stock, or on one of a later.
      for (const filling of fullFillings(j, largest, slack)) {
        const pattern = patternOf(j, filling.counts);
        put(pattern, -1);
        chosen.push(pattern);
        const answer = yield* search(slack - filling.waste);
        if (answer === true) return true;
        chosen.pop();
        put(pattern, 1);
        if (answer === undefined) known = undefined;
        if (steps > mostSteps) return undefined;
      }
    }
    if (known === false && tried.size < 400_000) tried.add(state);
    return known;
  }

  const put = ({ stock, items, counts: many }: Pattern, by: 1 | -1) => {
    for (const [k, item] of items.entries())
      demands[item] = (demands[item] as number) + by * (many[k] as number);
    boards[stock] = (boards[stock] as number) + by;
  };

  /** Fillings of a board of stock j with at least one of the largest size, that waste no more than the slack. */
  const fullFillings = (
    j: number,
    largest: number,
    slack: number,
  ): { counts: Int32Array; waste: number }[] => {
    const found: { counts: Int32Array; waste: number }[] = [];
    const now = new Int32Array(sizes.length);
    const fill = (item: number, room: number): void => {
      if (found.length >= MOST_FILLINGS) {
        truncated = true;
        return;
      }
      let next = item;
      while (
        next < sizes.length &&
        ((demands[next] as number) === (now[next] as number) || (sizes[next] as number) > room)
      )
        next++;
      if (next >= sizes.length) {
        if (room <= slack && isFull(room, now)) found.push({ counts: now.slice(), waste: room });
        return;
      }
      const size = sizes[next] as number;
      const least = next === largest ? 1 : 0;
      const most = Math.min((demands[next] as number) - (now[next] as number), Math.floor(room / size));
      for (let many = most; many >= least; many--) {
        now[next] = many;
        fill(next + 1, room - many * size);
      }
      now[next] = 0;
    };
    fill(largest, capacities[j] as number);
    return found.sort((a, b) => a.waste - b.waste);
  };

  const isFull = (room: number, now: Int32Array): boolean => {
    for (let i = sizes.length - 1; i >= 0; i--)
      if ((demands[i] as number) > (now[i] as number)) return (sizes[i] as number) > room;
    return true;
  };

  const answer = yield* search(waste);
  if (answer === true) return { kind: 'packed', packing: chosen.map((pattern) => ({ pattern, times: 1 })) };
  return answer === false && !truncated ? { kind: 'impossible' } : { kind: 'unfinished' };
}
