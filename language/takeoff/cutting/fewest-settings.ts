import { segmentsFor } from './board-parts.ts';
import { ColumnPool } from './column-pool.ts';
import { type CountCut, cutOf } from './count-cuts.ts';
import { costOf, type Packing, type Pattern, type Problem, type Segment } from './problem.ts';
import { seeded } from './random.ts';
import { relax } from './relaxation.ts';
import { leastSettings, settingsOf, wayOf, waysOf } from './settings.ts';
import { type CutWhole, planInSettings, type SettingsFound } from './settings-search.ts';

/** How far it has come. */
export interface SettingsProgress {
  readonly packing: Packing;
  /** No plan that costs no more takes fewer. */
  readonly bound: number;
  /** Nothing more is sought. */
  readonly done: boolean;
}

/** Steps of trying all ways at first; three times as many in each later round. */
const FIRST_STEPS = 3_000;
const ROUNDS = 6;
/** Of cutting a few ways anew. */
const FEW_STEPS = 150;
/** So many threes and fours are tried in a round, taken at random. */
const MOST_GROUPS = 250;

/**
 * Lowers the settings of a plan, whose pieces stay on boards that cost no more than they may. A few of its ways to cut a
 * board are taken together and cut anew with fewer settings, two for one and three for two and the like (as Foerster and
 * Waescher combine patterns in "Pattern reduction in one-dimensional cutting stock problems", 2000, from memory). Then
 * all pieces, with as few settings as are not ruled out, and one more each time that this is shown to be impossible. Last
 * as few for less money, where they cost more than at the start.
 *
 * @param start a plan that costs no more than `cost`, a combined one
 */
export function* fewestSettings(
  problem: Problem,
  start: Packing,
  cost: number,
): Generator<SettingsProgress, SettingsProgress> {
  const random = seeded(7);
  const sizes = problem.sizes.length;
  const cutWhole = cutWholeOf(problem);
  let best = waysOf(start);
  let bound = sizes;
  const progress = (done = false): SettingsProgress => ({
    packing: best,
    bound: problem.ripping ? leastSettings(problem) : bound,
    done,
  });
  if (settingsOf(best) <= bound) return progress(true);
  yield progress();
  const cuts = yield* working(tightCuts(problem));
  const all = { demands: problem.demands, limits: problem.available, cost };
  const attempt = (settings: number, steps: number) =>
    working(planInSettings(problem, cuts, { ...all, extra: settings - sizes, steps }, cutWhole));

  for (let round = 0; round < ROUNDS; round++) {
    const effort = 3 ** round;
    while (yield* improveFew(FEW_STEPS * effort)) yield progress();
    while (settingsOf(best) > bound) {
      const found: SettingsFound = yield* attempt(bound, FIRST_STEPS * effort);
      if (found.kind === 'found') best = waysOf(found.packing);
      if (found.kind === 'impossible') bound++;
      if (found.kind === 'unfinished') break;
      yield progress();
    }
    if (settingsOf(best) <= bound) break;
    const found: SettingsFound = yield* attempt(settingsOf(best) - 1, FIRST_STEPS * effort);
    if (found.kind === 'found') best = waysOf(found.packing);
    yield progress();
  }
  yield* cheaper();
  return progress(true);

  /** As few settings for less, as long as that is found. */
  function* cheaper(): Generator<SettingsProgress, void> {
    const money = (packing: Packing) => Math.floor(costOf(packing, problem) / problem.scale);
    while (money(best) > money(start)) {
      const wanted = { ...all, cost: money(best) * problem.scale - 1, extra: settingsOf(best) - sizes };
      const steps = 9 * FIRST_STEPS;
      const found: SettingsFound = yield* working(
        planInSettings(problem, cuts, { ...wanted, steps }, cutWhole),
      );
      if (found.kind !== 'found') return;
      best = waysOf(found.packing);
    }
  }

  /** Cuts the pieces of a few ways anew, until that saves a setting. */
  function* improveFew(steps: number): Generator<SettingsProgress, boolean> {
    for (const group of groupsOf(best.length, random)) {
      const few = group.map((at) => best[at] as Packing[number]);
      const demands = problem.sizes.map(() => 0);
      for (const { pattern, times } of few)
        for (const [k, item] of pattern.items.entries())
          demands[item] = (demands[item] as number) + times * (pattern.counts[k] as number);
      const extra = settingsOf(few) - demands.filter((demand) => demand > 0).length - 1;
      if (extra < 0) continue;
      const others = best.filter((_, at) => !group.includes(at));
      const limits = [...problem.available];
      for (const { pattern, times } of others)
        limits[pattern.stock] = (limits[pattern.stock] as number) - times;
      const wanted = { demands, limits, cost: cost - costOf(others, problem), extra, steps };
      const found: SettingsFound = yield* working(planInSettings(problem, cuts, wanted, cutWhole));
      if (found.kind !== 'found') continue;
      best = waysOf([...others, ...found.packing]);
      return true;
    }
    return false;
  }

  function* working<T>(work: Generator<undefined, T>): Generator<SettingsProgress, T> {
    for (;;) {
      const { done, value } = work.next();
      if (done) return value as T;
      yield progress();
    }
  }
}

/** Places of two ways, each pair; then of threes and fours. */
function* groupsOf(ways: number, random: () => number): Generator<readonly number[]> {
  for (let a = 0; a < ways; a++) for (let b = a + 1; b < ways; b++) yield [a, b];
  for (const size of [3, 4])
    for (let i = 0; ways >= size && i < MOST_GROUPS; i++) {
      const group = new Set<number>();
      while (group.size < size) group.add(Math.floor(random() * ways));
      yield [...group];
    }
}

/** By the worths that the relaxed program of least cost ends with. */
function* tightCuts(problem: Problem): Generator<undefined, readonly CountCut[]> {
  const cover = { demands: problem.demands, limits: problem.available, aim: 'cost' } as const;
  const { duals } = yield* relax(problem, cover, new ColumnPool());
  const cut = cutOf(problem, duals);
  return cut ? [cut] : [];
}

/** Of boards that are ripped: whether a way to cut just these pieces is found, sought once for each. */
function cutWholeOf(problem: Problem): CutWhole | undefined {
  const { ripping } = problem;
  if (!ripping) return undefined;
  const known = new Map<string, readonly Segment[] | undefined>();
  return (pattern: Pattern) => {
    const key = wayOf(pattern);
    if (!known.has(key)) known.set(key, segmentsFor(pattern, { ...problem, ripping }, false));
    return known.get(key);
  };
}
