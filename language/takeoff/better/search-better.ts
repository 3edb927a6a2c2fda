import { createLayoutMemo, type FitChoice, layOutJob, type RunLayout, refitted } from '../../layout/index.ts';
import type { Job, RunSpec } from '../../model/index.ts';
import type { Better, BetterSearch, BetterTask } from './better-task.ts';
import { keepChoices, type Laid } from './kept-choices.ts';
import { keepsEnds, keepsGaps } from './restate.ts';
import { type Variant, variantsOf } from './variants.ts';

const MOST_TRIED = 600;
/** Ways of fitting tried for each variant, and of one kind. */
const MOST_FITS = 8;
const MOST_ALIKE = 3;

/**
 * Seeks better choices for a run within the limits of its job: patterns of the file, gaps by marks of the tape within
 * their band, counts of bays, and whatever makes the pattern fit. Each is laid out with the whole job; kept are those
 * that close, that are told nothing the run is not told as it stands, and that no other beats in cost, waste, sight
 * and evenness. Pure; the same task is searched in the same order.
 */
export function searchBetter(task: BetterTask): BetterSearch {
  const state: { summary?: () => Better } = {};
  const steps = search(task, state);
  let step = steps.next();
  return {
    found: () => state.summary?.(),
    done: () => step.done === true,
    run: (enough) => {
      while (!step.done && !enough()) step = steps.next();
    },
  };
}

/** Stops after each layout. */
function* search(task: BetterTask, state: { summary?: () => Better }): Generator<void, void> {
  const { job, fills } = task;
  const stated = job.runs.find((run): run is RunSpec => run.name === task.run && !('broken' in run));
  if (!stated) return;
  const memo = createLayoutMemo();
  const layOut = (spec: RunSpec) => layOutAnew(job, stated, spec, memo);
  const base = layOut(stated);
  if (!base?.run.sound) return;
  const kept = keepChoices(base, task);
  if (!kept) return;
  state.summary = kept.summary;
  yield;
  const most = task.most ?? MOST_TRIED;
  // What takes fewer edits first; so what is built alike is kept by its plainest name.
  const variants = variantsOf(base.run, stated, fills, job);
  const edits = Math.max(...variants.map(({ changes }) => changes.length));
  let open: { variant: Variant; choices: readonly FitChoice[] }[] = [];
  for (let level = 0; level <= edits + 1; level++) {
    const before = open;
    open = [];
    for (const variant of variants) {
      if (variant.changes.length !== level) continue;
      if (kept.tried() >= most) return;
      const laid: Laid | undefined = variant.spec === stated ? base : layOut(variant.spec);
      if (!laid?.run.sound) continue;
      if (laid !== base) kept.weigh(laid, variant.changes, saidOf(variant, laid.run, task));
      open.push({ variant, choices: fitsToTry(laid.run, variant) });
      yield;
    }
    for (const { variant, choices } of before) {
      for (const choice of choices) {
        if (kept.tried() >= most) return;
        const again = layOut(refitted(variant.spec, choice.restated));
        const says = [...variant.says, task.describe(choice, stated.measure)];
        if (again?.run.sound) kept.weigh(again, [...variant.changes, ...choice.changes], says);
        yield;
      }
    }
  }
}

function layOutAnew(
  job: Job,
  stated: RunSpec,
  spec: RunSpec,
  memo: ReturnType<typeof createLayoutMemo>,
): Laid | undefined {
  const layout = layOutJob({ ...job, runs: job.runs.map((run) => (run === stated ? spec : run)) }, memo);
  // As measured, a run's layout has a spec of its own; so it is found by its name.
  const run = layout.runs.find((one) => one.spec.name === spec.name);
  return run && { run, layout };
}

/** The other ways to fit a run's own bays: where all of them are fitted at once, and within the stated limits. */
function fitsToTry({ fits }: RunLayout, { spec }: Variant): readonly FitChoice[] {
  const own = fits.filter(({ gate }) => gate === undefined);
  const [fit] = own;
  if (!fit || own.length > 1) return [];
  const taken = new Map<string, number>();
  return fit.choices
    .filter((choice) => keepsEnds(spec, choice) && keepsGaps(spec, choice))
    .filter(({ kind }) => {
      const number = (taken.get(kind) ?? 0) + 1;
      taken.set(kind, number);
      return number <= MOST_ALIKE;
    })
    .slice(0, MOST_FITS);
}

/** What is changed, and how the pattern fits then. */
function saidOf({ says }: Variant, { fits }: RunLayout, { describe, job }: BetterTask): readonly string[] {
  const chosen = fits.find(({ gate }) => gate === undefined)?.chosen;
  return chosen ? [...says, describe(chosen, job.measure.value)] : says;
}
