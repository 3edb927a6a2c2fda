import { asStale, type View, type ViewKind, viewsOf } from '../../language/drawing/index.ts';
import type { RunLayout } from '../../language/layout/index.ts';
import type { Job } from '../../language/model/index.ts';
import type { Work } from './work-out.ts';

/** Last good picture of each run by name, as laid out. */
export type LastGood = ReadonlyMap<string, RunLayout>;

export interface ShownRuns {
  readonly runs: readonly RunLayout[];
  /** Those of them that stand for what cannot be worked out now. */
  readonly stale: ReadonlySet<RunLayout>;
}

/**
 * The runs to show, in the order of the text. A run that cannot be worked out shows what it last was.
 * `halfTyped`: where the text cannot be read everywhere, a run that is missing from it may be one
 * that is just being typed in, so it keeps its picture too.
 */
export function shownRuns({ job, layout }: Work, last: LastGood, halfTyped: boolean): ShownRuns {
  const fresh = new Map(layout.runs.map((run) => [run.spec.name, run]));
  const stale = new Set<RunLayout>();
  const shown = new Map<string, RunLayout>();
  const show = (name: string) => {
    const run = fresh.get(name);
    const good = last.get(name);
    if (good && !run?.sound) stale.add(good);
    const chosen = run?.sound ? run : (good ?? run);
    if (chosen) shown.set(name, chosen);
  };
  for (const { name } of job.runs) show(name);
  if (halfTyped) for (const name of last.keys()) show(name);
  return { runs: [...shown.values()], stale };
}

/** Views of these kinds of runs, those that are stale marked so. */
export function viewsOfShown(
  runs: readonly RunLayout[],
  stale: ReadonlySet<RunLayout>,
  job: Job,
  kinds: readonly ViewKind[],
): readonly View[] {
  const keys = new Set([...stale].map((run) => run.key));
  const views = viewsOf(runs, job.measure.value, kinds, job);
  return keys.size === 0
    ? views
    : views.map((view) =>
        keys.has(view.run) || (view.part === 'plan' && view.run === '') ? asStale(view) : view,
      );
}

/** What is to be remembered for the next time. */
export function goodRuns(runs: readonly RunLayout[]): LastGood {
  return new Map(runs.filter((run) => run.sound).map((run) => [run.spec.name, run]));
}
