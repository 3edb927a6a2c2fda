import type { RunLayout } from '../layout/index.ts';
import type { Measure } from '../units/index.ts';
import { elevationOf, runLetter } from './elevation.ts';
import { leafElevation } from './leaf-elevation.ts';
import { planLetter, planOf } from './plan.ts';
import type { View } from './view.ts';

/**
 * All views of a job's runs in the order they are shown: the plan where there is one, each run's elevation, then its gate leaves,
 * all with letters that suit the largest, for they stand on one sheet at one scale.
 * Keys are unique even where two runs bear one name.
 */
export function viewsOf(runs: readonly RunLayout[], measure: Measure): View[] {
  const letter = Math.max(planLetter(runs) ?? 0, ...runs.map((run) => runLetter(run)));
  const plan = planOf(runs, measure, letter);
  const elevations = runs.flatMap((run) => [
    elevationOf(run, measure, letter),
    ...run.leaves.map((leaf) => leafElevation(run, leaf, measure, letter)),
  ]);
  const views = plan ? [plan, ...elevations] : elevations;
  const used = new Map<string, number>();
  return views.map((view) => {
    const count = (used.get(view.key) ?? 0) + 1;
    used.set(view.key, count);
    return count === 1 ? view : { ...view, key: `${view.key}#${count}` };
  });
}

const staleViews = new WeakMap<View, View>();

/** The same picture, marked as the last good one of a run that cannot be worked out now. */
export function asStale(view: View): View {
  if (view.stale) return view;
  let stale = staleViews.get(view);
  if (!stale) {
    stale = { ...view, stale: true };
    staleViews.set(view, stale);
  }
  return stale;
}
