import {
  createLayoutMemo,
  type FitChoice,
  hashOf,
  type Layout,
  layOutJob,
  type RunLayout,
  type TextChange,
} from '../../layout/index.ts';
import type { FillWays, Job, RunSpec } from '../../model/index.ts';
import type { Measure, Ticks } from '../../units/index.ts';
import { type ChoiceFigures, figuresOf, unevennessOf } from './choice-figures.ts';
import { type Scores, spreadOver, unbeaten } from './front.ts';
import { keepsEnds, keepsGaps, refitted } from './restate.ts';
import { type Variant, variantsOf } from './variants.ts';

/** For which run better is sought, and what judges it. */
export interface BetterTask {
  readonly job: Job;
  /** Name of the run. */
  readonly run: string;
  readonly fills: FillWays;
  /** Codes of what is told of a run that no choice may add to. */
  readonly told: (run: RunLayout, job: Job) => readonly string[];
  /** A choice of fit in words. */
  readonly describe: (choice: FitChoice, measure: Measure) => string;
  /** So many are laid out at most; 600 unless stated. */
  readonly most?: number;
}

/** One choice, with the edits that build exactly it. */
export interface BetterChoice {
  readonly title: string;
  readonly changes: readonly TextChange[];
  readonly figures: ChoiceFigures;
  /** The same for what is built alike, piece for piece. */
  readonly built: string;
}

export interface Better {
  /** The run as it stands. */
  readonly now: ChoiceFigures;
  /** Whether one of the choices is nowhere worse than the run as it stands, and somewhere better. */
  readonly beaten: boolean;
  /** What no other beats, spread over what there is to choose; the run as it stands left out. */
  readonly choices: readonly BetterChoice[];
  /** How many were laid out, and how many of them kept the limits. */
  readonly tried: number;
  readonly kept: number;
}

/** A search that can be gone on with at any time, and left at any time. */
export interface BetterSearch {
  /** What is found so far; undefined where the run cannot be laid out, or has no fill to change. */
  found(): Better | undefined;
  done(): boolean;
  /** Goes on until `enough` says so, which is asked after each layout, or until all is tried. */
  run(enough: () => boolean): void;
}

const MOST_TRIED = 600;
/** More choices are no help. */
const MOST_SHOWN = 8;
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

interface Tried extends BetterChoice {
  readonly scores: Scores;
  readonly now: boolean;
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
  const now = figuresOf(base.run, base.layout, job);
  if (!now) return;
  const told = count(task.told(base.run, job));
  const faults = faultsOf(base.layout);
  const { step } = job.measure.value;
  const standing = builtBy(base.run);
  const found: Tried[] = [
    {
      title: 'as it stands',
      changes: [],
      figures: now,
      built: standing,
      scores: scoresOf(now, now, step),
      now: true,
    },
  ];
  const seen = new Map<string, number | undefined>([[standing, undefined]]);
  let [tried, kept] = [1, 1];
  const most = task.most ?? MOST_TRIED;
  const weigh = (laid: Laid, changes: readonly TextChange[], says: readonly string[]): void => {
    tried++;
    const built = builtBy(laid.run);
    if (seen.has(built)) {
      // The same pieces by another way: kept by the name under which they are least out of the ordinary.
      const at = seen.get(built);
      const held = at === undefined ? undefined : found[at];
      const uneven = unevennessOf(laid.run);
      if (at === undefined || !held || uneven >= held.figures.uneven) return;
      const figures = { ...held.figures, uneven };
      const scores = scoresOf(figures, now, step);
      found[at] = { title: says.join('; '), changes, figures, built, scores, now: false };
      return;
    }
    seen.set(built, undefined);
    if (!closes(laid.run) || faultsOf(laid.layout) > faults) return;
    if (!addsNothing(task.told(laid.run, job), told)) return;
    const figures = figuresOf(laid.run, laid.layout, job);
    if (!figures || !keepsHidden(figures, now)) return;
    kept++;
    seen.set(built, found.length);
    found.push({
      title: says.join('; '),
      changes,
      figures,
      built,
      scores: scoresOf(figures, now, step),
      now: false,
    });
  };
  state.summary = (): Better => {
    const best = unbeaten(found, ({ scores }) => scores);
    const choices = spreadOver(
      best.filter((one) => !one.now),
      MOST_SHOWN,
      ({ scores }) => scores,
    );
    return {
      now,
      beaten: !best.some((one) => one.now),
      choices: choices.map(({ title, changes, figures, built }) => ({ title, changes, figures, built })),
      tried,
      kept,
    };
  };
  yield;
  // What takes fewer edits first; so what is built alike is kept by its plainest name.
  const variants = variantsOf(base.run, stated, fills, job);
  const edits = Math.max(...variants.map(({ changes }) => changes.length));
  let open: { variant: Variant; choices: readonly FitChoice[] }[] = [];
  for (let level = 0; level <= edits + 1; level++) {
    const before = open;
    open = [];
    for (const variant of variants) {
      if (variant.changes.length !== level) continue;
      if (tried >= most) return;
      const laid: Laid | undefined = variant.spec === stated ? base : layOut(variant.spec);
      if (!laid?.run.sound) continue;
      if (laid !== base) weigh(laid, variant.changes, saidOf(variant, laid.run, task));
      open.push({ variant, choices: fitsToTry(laid.run, variant) });
      yield;
    }
    for (const { variant, choices } of before) {
      for (const choice of choices) {
        if (tried >= most) return;
        const again = layOut(refitted(variant.spec, choice));
        const says = [...variant.says, task.describe(choice, stated.measure)];
        if (again?.run.sound) weigh(again, [...variant.changes, ...choice.changes], says);
        yield;
      }
    }
  }
}

interface Laid {
  readonly run: RunLayout;
  readonly layout: Layout;
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

const closes = ({ fits, problems }: RunLayout): boolean =>
  problems.length === 0 && fits.every(({ chosen }) => chosen !== undefined);

/** Problems of all runs together, and runs that cannot be built at all. */
const faultsOf = ({ runs }: Layout): number =>
  runs.reduce((sum, { problems, sound }) => sum + problems.length + (sound ? 0 : 1), 0);

function count(codes: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const code of codes) counts.set(code, (counts.get(code) ?? 0) + 1);
  return counts;
}

function addsNothing(codes: readonly string[], before: ReadonlyMap<string, number>): boolean {
  return [...count(codes)].every(([code, number]) => number <= (before.get(code) ?? 0));
}

/** A place that is hidden enough stays so; one that is not is seen no more than it is. */
function keepsHidden({ seen }: ChoiceFigures, now: ChoiceFigures): boolean {
  return seen.every(({ share, allowed }, at) => share <= Math.max(allowed, now.seen[at]?.share ?? 0) + 1e-4);
}

/** Money where the run as it stands has a price, else length; unevenness as a tape shows it. */
function scoresOf(
  { cost, bought, waste, seeThrough, seen, uneven }: ChoiceFigures,
  now: ChoiceFigures,
  step: Ticks,
): Scores {
  return [
    now.cost ? (cost?.minor ?? Infinity) : bought,
    rounded(waste),
    rounded(seeThrough),
    ...seen.map(({ share }) => rounded(share)),
    Math.round(uneven / step),
  ];
}

/** A tenth of a percent is no one's choice. */
const rounded = (share: number): number => Math.round(share * 1000) / 1000;

/** What is built, whatever put it there: the same for the same pieces in the same places. */
export function builtBy({ pieces }: RunLayout): string {
  return hashOf(pieces.map(({ key, cut, solid }) => [key, cut, solid.vertices]));
}
