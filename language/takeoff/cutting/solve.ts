import { allPatterns } from './all-patterns.ts';
import { allRippedPatterns } from './all-ripped-patterns.ts';
import { branchOnPatterns } from './branching.ts';
import { cheapestCounts } from './cheapest-counts.ts';
import { ColumnPool } from './column-pool.ts';
import { type CountCut, cutOf, fulfills, leastByLength } from './count-cuts.ts';
import { dive } from './dive.ts';
import { type PackingSearch, packExactly } from './exact-packing.ts';
import { costOf, type Packing, type Pattern, type Problem } from './problem.ts';
import { seeded } from './random.ts';
import { type Relaxed, relax } from './relaxation.ts';
import { cutOneByOne } from './sequential.ts';

/** How far a search has come. Costs are combined ones (see `Problem.costs`). */
export interface Progress {
  readonly packing: Packing | undefined;
  readonly cost: number;
  /** No plan costs less; whole. */
  readonly bound: number;
  /** Nothing is left to be found out. */
  readonly done: boolean;
}

/** Numbers of boards of which it is not known whether the pieces fit on them. */
interface Undecided {
  readonly counts: readonly number[];
  readonly cost: number;
  readonly relaxed: Relaxed;
  steps: number;
  patterns?: readonly Pattern[] | undefined;
}

/** Shares of its price that a stock is taken to cost, one stock at a time. */
const SHIFTS = [0.995, 1.005];
/** How far all prices stray from what they are, to find more cuts. */
const STRAY_PRICE = 0.006;
/** Of a first search over numbers of boards. */
const COUNT_STEPS = 150_000;
/** With more stocks than this it would take too long. */
const MOST_SHIFTED = 12;

const paidStocks = ({ costs }: Problem): number => costs.filter((cost) => cost > 0).length;

/** Dives tried at one number of boards before all ways are tried. */
const DIVES = 6;
const FIRST_STEPS = 3_000;
/** Where boards are ripped, all ways of cutting one are too many to go on with beyond this. */
const MOST_RIPPED = 100_000;

/**
 * Searches the cheapest plan, yielding what it knows between small steps.
 *
 * 1. A plan by filling board after board; the relaxed program; plans by diving from it.
 * 2. The cheapest numbers of boards of each stock that no cut rules out; the relaxed program for just these. If
 *    pieces stay uncovered its worths make a cut that rules these numbers out; so the least cost left rises.
 * 3. Where all is covered: a plan on just these boards, by diving, then by trying all ways. If there is one it is
 *    the cheapest of all; if there is none these numbers, and all smaller ones, are impossible.
 */
export function* search(problem: Problem): Generator<Progress, Progress> {
  const random = seeded(1);
  const pool = new ColumnPool();
  const free = { demands: problem.demands, limits: problem.available };
  let best: Packing | undefined;
  let cost = Number.MAX_SAFE_INTEGER;
  let bound = 0;
  const offer = (packing: Packing | undefined) => {
    const found = packing && costOf(packing, problem);
    if (!packing || found === undefined || found >= cost) return;
    best = packing;
    cost = found;
  };
  const progress = (done = false): Progress => ({
    packing: best,
    cost,
    bound: done ? cost : Math.min(bound, cost),
    done,
  });
  if (problem.sizes.length === 0) {
    best = [];
    cost = 0;
    return progress(true);
  }

  for (const power of [1, 1.04])
    offer(
      cutOneByOne(
        problem,
        free,
        problem.sizes.map((size) => size ** power),
      ),
    );
  for (const { pattern } of best ?? []) pool.add(pattern);
  yield progress();

  // Length alone bounds the cost before anything is worked out.
  bound = leastByLength(problem);
  yield progress();
  const cuts: CountCut[] = [];
  const near = problem.costs.map(() => 0);
  const root = yield* working(relax(problem, { ...free, aim: 'cost' }, pool));
  for (const { column, times } of root.used)
    near[column.pattern.stock] = (near[column.pattern.stock] as number) + times;
  for (const duals of [problem.sizes, root.duals]) {
    const cut = cutOf(problem, duals);
    if (cut) cuts.push(cut);
  }
  // Worths at prices a little off say which other numbers of boards are ruled out, before these are tried.
  const shifts = paidStocks(problem) > 1 && problem.costs.length <= MOST_SHIFTED ? SHIFTS : [];
  for (let j = 0; j < problem.costs.length; j++)
    for (const shift of shifts) yield* cutAt((at) => (at === j ? shift : 1));
  const known = cheapestCounts(problem, { cuts, excluded: [], below: cost, near, steps: COUNT_STEPS });
  if (known.kind === 'none') return progress(true);
  bound = known.bound;
  yield progress();
  offer(cutOneByOne(problem, free, root.duals));
  yield progress();
  offer(yield* working(dive(problem, { ...free, aim: 'cost' }, pool, { random, stray: 0 }, root)));
  yield progress();

  let unfinished = 0;
  const impossible: (readonly number[])[] = [];
  /** Numbers of boards that could not be decided yet, with the least cost they stand for. */
  let undecided: Undecided[] = [];
  for (;;) {
    const open = [...impossible, ...undecided.map(({ counts }) => counts)];
    const wanted = { cuts, excluded: open, below: cost, near, steps: COUNT_STEPS * (1 + unfinished) };
    const found = cheapestCounts(problem, wanted);
    undecided = undecided.filter((one) => one.cost < cost);
    const least = Math.min(...undecided.map((one) => one.cost));
    if (found.kind === 'unfinished') {
      unfinished++;
      bound = Math.max(bound, Math.min(found.bound, least));
      for (let i = 0; i < 4; i++) yield* cutAt(() => 1 + STRAY_PRICE * (random() - 0.5));
      offer(yield* working(dive(problem, { ...free, aim: 'cost' }, pool, { random, stray: 0.3 })));
      yield progress();
      continue;
    }
    bound = Math.max(bound, Math.min(found.kind === 'found' ? found.bound : cost, least));
    yield progress(found.kind === 'none' && undecided.length === 0);
    if (found.kind === 'none') {
      if (undecided.length === 0) return progress(true);
      if (problem.ripping && undecided.every(({ steps }) => steps > MOST_RIPPED))
        return { ...progress(), done: true };
      yield* decideOne();
      continue;
    }
    const { counts } = found;
    const relaxed = yield* working(
      relax(problem, { demands: problem.demands, limits: counts, aim: 'fit' }, pool),
    );
    const cut = relaxed.uncovered > 1e-7 ? cutOf(problem, relaxed.duals) : undefined;
    if (cut && !fulfills(cut, counts)) {
      cuts.push(cut);
      continue;
    }
    const packing = yield* packOn(counts, relaxed, DIVES);
    if (packing) {
      offer(packing);
      continue;
    }
    undecided.push({ counts, cost: found.bound, steps: FIRST_STEPS, relaxed });
    yield* decideOne();
  }

  /** A cut by the worths at prices that are a little off. */
  function* cutAt(shift: (stock: number) => number): Generator<Progress, void> {
    const costs = problem.costs.map((cost, j) => cost * shift(j));
    const shifted = yield* working(relax({ ...problem, costs }, { ...free, aim: 'cost' }, pool));
    const cut = cutOf(problem, shifted.duals);
    if (cut) cuts.push(cut);
  }

  /** Goes on with something long, telling what is known at each of its steps. */
  function* working<T>(work: Generator<undefined, T>): Generator<Progress, T> {
    for (;;) {
      const { done, value } = work.next();
      if (done) return value as T;
      yield progress();
    }
  }

  /** Whole boards from the relaxed program on just these. */
  function* packOn(
    counts: readonly number[],
    relaxed: Relaxed,
    dives: number,
  ): Generator<Progress, Packing | undefined> {
    for (let i = 0; i < dives; i++) {
      const stray = i === 0 ? 0 : 0.15 * i;
      const cover = { demands: problem.demands, limits: counts, aim: 'fit' } as const;
      const packing = yield* working(
        dive(problem, cover, pool, { random, stray }, i === 0 ? relaxed : undefined),
      );
      if (packing) return packing;
      const noisy = Array.from(
        relaxed.duals,
        (dual, j) => (dual + 0.01 * (problem.sizes[j] as number)) * (1 + 0.1 * (random() - 0.5)),
      );
      const other = cutOneByOne(problem, { demands: problem.demands, limits: counts }, noisy);
      if (other) return other;
      yield progress();
    }
    return undefined;
  }

  /** Branches on all patterns that a plan on just these boards can have, if they are not too many. */
  function* branchOn(one: Undecided): Generator<undefined, PackingSearch> {
    one.patterns ??= yield* problem.ripping
      ? allRippedPatterns({ ...problem, ripping: problem.ripping }, one.counts, cuts, 3 * one.steps)
      : allPatterns(problem, one.counts, cuts, 3 * one.steps);
    if (!one.patterns) return { kind: 'unfinished' };
    return yield* branchOnPatterns(problem, one.counts, one.patterns, one.steps / 10);
  }

  /** Tries all ways on the cheapest numbers of boards not decided yet, for a while. */
  function* decideOne(): Generator<Progress, void> {
    undecided.sort((a, b) => a.cost - b.cost || a.steps - b.steps);
    const one = undecided.find(({ steps }) => !problem.ripping || steps <= MOST_RIPPED);
    if (!one) return;
    const { counts, relaxed } = one;
    let answer: PackingSearch = { kind: 'unfinished' };
    if (!problem.ripping) answer = yield* working(packExactly(problem, counts, cuts, one.steps));
    if (answer.kind === 'unfinished') answer = yield* working(branchOn(one));
    if (answer.kind === 'unfinished') {
      const packing = yield* packOn(counts, relaxed, 2);
      offer(packing);
      if (packing) undecided.shift();
      else one.steps *= 3;
      return;
    }
    undecided.shift();
    if (answer.kind === 'packed') offer(answer.packing);
    else impossible.push(counts);
  }
}
