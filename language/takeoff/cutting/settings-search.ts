import type { CountCut } from './count-cuts.ts';
import { patternOf } from './fillings.ts';
import type { Packing, Pattern, Problem, Segment } from './problem.ts';

/** Pieces that are to be cut together, and what may be spent on them. */
export interface SettingsWanted {
  readonly demands: readonly number[];
  readonly limits: readonly number[];
  /** Combined cost (see `Problem.costs`) that boards may come to. */
  readonly cost: number;
  /** A setting for each size, and so many more. */
  readonly extra: number;
  readonly steps: number;
}

export type SettingsFound =
  | { readonly kind: 'found'; readonly packing: Packing }
  | { readonly kind: 'impossible' }
  | { readonly kind: 'unfinished' };

/** Where boards are ripped: how to cut just these pieces from one, if a way is found. */
export type CutWhole = (pattern: Pattern) => readonly Segment[] | undefined;

/** Ways to cut boards next, at one time; more are not tried, and then nothing is shown to be impossible. */
const MOST_WAYS = 4_000;
/** Of a step, what it takes to put one size on a board. */
const FILL_STEP = 0.02;
const MOST_REMEMBERED = 200_000;

interface Way {
  readonly pattern: Pattern;
  readonly times: number;
  /** Sizes of it that are not all cut by it, which take another setting later. */
  readonly open: number;
  readonly waste: number;
}

/**
 * Whether pieces can be cut with so many settings and for so much: tries ways to cut a board and how many boards are
 * cut that way, each with the largest size left. A plan has one setting for each size, and one more each time that a
 * way leaves some of a size uncut; so nearly every size of a way must come out even with the boards cut that way, and
 * few do. A branch ends where what is left costs more than there is, by the space and by the worths of the cuts.
 */
export function* planInSettings(
  problem: Problem,
  cuts: readonly CountCut[],
  { demands: wanted, limits: available, cost: mostCost, extra, steps: mostSteps }: SettingsWanted,
  cutWhole?: CutWhole,
): Generator<undefined, SettingsFound> {
  const { sizes, capacities, costs } = problem;
  const demands = Int32Array.from(wanted);
  const limits = Float64Array.from(available);
  const worths = worthsOf(problem, cuts);
  const chosen: Way[] = [];
  const failed = new Map<string, number>();
  let steps = 0;
  let truncated = false;
  const stopped = () => steps > mostSteps;

  function* search(cost: number, extra: number): Generator<undefined, boolean> {
    const largest = demands.findIndex((demand) => demand > 0);
    if (largest < 0) return true;
    const state = `${cost} ${demands.join()} ${limits.join()}`;
    if ((failed.get(state) ?? -1) >= extra) return false;
    for (const way of waysWith(largest, cost, extra)) {
      if (stopped()) return false;
      if ((++steps & 63) === 0) yield;
      const segments = cutWhole?.(way.pattern);
      if (cutWhole && !segments) continue;
      put(way, -1);
      chosen.push(segments ? { ...way, pattern: { ...way.pattern, segments } } : way);
      if (yield* search(cost - way.times * (costs[way.pattern.stock] as number), extra - way.open))
        return true;
      chosen.pop();
      put(way, 1);
    }
    if (!stopped() && failed.size < MOST_REMEMBERED) failed.set(state, extra);
    return false;
  }

  const put = ({ pattern: { stock, items, counts }, times }: Way, by: 1 | -1): void => {
    for (const [k, item] of items.entries())
      demands[item] = (demands[item] as number) + by * times * (counts[k] as number);
    limits[stock] = (limits[stock] as number) + by * times;
  };

  /** Those that leave enough to pay for the rest; what comes out even first, then what wastes least. */
  const waysWith = (largest: number, cost: number, extra: number): Way[] => {
    const found: Way[] = [];
    const left = worths.map(({ worth, free, most }) => {
      let [need, give] = [0, 0];
      for (let i = 0; i < sizes.length; i++) need += (demands[i] as number) * (worth[i] as number);
      for (const j of free) give += (limits[j] as number) * (most[j] as number);
      return need - give;
    });
    for (let stock = 0; stock < capacities.length; stock++) {
      const price = costs[stock] as number;
      const affordable = price > 0 ? Math.floor(cost / price) : Infinity;
      const most = Math.min(demands[largest] as number, limits[stock] as number, affordable);
      for (let times = most; times > 0; times--) {
        // What each board of the way must hold of every worth, for the rest to be affordable.
        const least = worths.map(({ perCost, most: holds }, k) => {
          const given = price === 0 ? times * (holds[stock] as number) : 0;
          return ((left[k] as number) + given - (cost - times * price) * perCost) / times;
        });
        waysOfOne(stock, times, largest, extra, least, found);
      }
    }
    if (found.length > MOST_WAYS) {
      truncated = true;
      found.length = MOST_WAYS;
    }
    return found.sort((a, b) => a.open - b.open || a.waste - b.waste || b.times - a.times);
  };

  const now = new Int32Array(sizes.length);
  const waysOfOne = (
    stock: number,
    times: number,
    largest: number,
    extra: number,
    least: readonly number[],
    found: Way[],
  ): void => {
    const sums = worths.map(() => 0);
    const fill = (item: number, room: number, open: number): void => {
      if (found.length > MOST_WAYS || stopped()) return;
      steps += FILL_STEP;
      for (const [k, { densest }] of worths.entries())
        if ((sums[k] as number) + room * (densest[item] as number) < (least[k] as number) - 1e-6) return;
      if (item === sizes.length) {
        found.push({ pattern: patternOf(stock, now), times, open, waste: room });
        return;
      }
      const size = sizes[item] as number;
      const all = demands[item] as number;
      const most = Math.min(Math.floor(all / times), Math.floor(room / size));
      for (let many = most; many >= (item === largest ? 1 : 0); many--) {
        const stays = many > 0 && many * times < all ? 1 : 0;
        if (open + stays > extra) continue;
        now[item] = many;
        for (const [k, { worth }] of worths.entries())
          sums[k] = (sums[k] as number) + many * (worth[item] as number);
        fill(item + 1, room - many * size, open + stays);
        for (const [k, { worth }] of worths.entries())
          sums[k] = (sums[k] as number) - many * (worth[item] as number);
      }
      now[item] = 0;
    };
    fill(largest, capacities[stock] as number, 0);
  };

  if (yield* search(mostCost, extra))
    return { kind: 'found', packing: chosen.map(({ pattern, times }) => ({ pattern, times })) };
  return stopped() || truncated || cutWhole ? { kind: 'unfinished' } : { kind: 'impossible' };
}

/** What pieces are worth, and the most of it that money buys. */
interface Worth {
  readonly worth: readonly number[];
  /** By stock: the most a board holds. */
  readonly most: readonly number[];
  /** Stocks that cost nothing. */
  readonly free: readonly number[];
  /** Of boards that cost something, the most a unit of cost buys. */
  readonly perCost: number;
  /** By size, and behind the last: the most that a unit of space holds of this size and smaller ones. */
  readonly densest: Float64Array;
}

/** Space itself, and the tightest of the cuts. */
function worthsOf({ sizes, capacities, costs }: Problem, cuts: readonly CountCut[]): Worth[] {
  const chosen = cuts.slice(0, 4).map(({ worths, most }) => ({ worth: worths, most }));
  return [{ worth: sizes, most: capacities }, ...chosen].map(({ worth, most }) => {
    const densest = new Float64Array(sizes.length + 1);
    for (let i = sizes.length - 1; i >= 0; i--)
      densest[i] = Math.max(densest[i + 1] as number, (worth[i] as number) / (sizes[i] as number));
    const stocks = [...costs.keys()];
    return {
      worth,
      most,
      free: stocks.filter((j) => costs[j] === 0),
      perCost: Math.max(
        0,
        ...stocks.map((j) => ((costs[j] as number) > 0 ? (most[j] as number) / (costs[j] as number) : 0)),
      ),
      densest,
    };
  });
}
