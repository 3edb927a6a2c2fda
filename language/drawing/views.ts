import type { RunLayout } from '../layout/index.ts';
import type { Measure } from '../units/index.ts';
import { elevationOf, runLetter } from './elevation.ts';
import { eyeViews, type Looks } from './eye-view.ts';
import { leafElevation } from './leaf-elevation.ts';
import { planLetter, plansOf } from './plan.ts';
import { sectionLetter, sectionOf } from './section.ts';
import type { View, ViewKind } from './view.ts';

/** All kinds of views in the order they are shown. */
export const VIEW_KINDS: readonly ViewKind[] = ['plan', 'front', 'back', 'section', 'eye'];

const NO_LOOKS: Looks = { viewers: [], places: [] };

/**
 * The views of these kinds of a job's runs in the order they are shown: plans, each run's elevation from its
 * front with its gate leaves, the same from behind, then sections; all with letters that suit the largest,
 * for they stand on one sheet at one scale, sections with smaller ones, for they are looked at from nearer; at last what viewers see of places. Keys are unique even where two runs bear one name.
 */
export function viewsOf(
  runs: readonly RunLayout[],
  measure: Measure,
  kinds: readonly ViewKind[] = VIEW_KINDS,
  looks: Looks = NO_LOOKS,
): View[] {
  const shown = VIEW_KINDS.filter((kind) => kinds.includes(kind));
  const small = Math.max(0, ...runs.map((run) => sectionLetter(run)));
  const letter = Math.max(planLetter(runs) ?? 0, ...runs.map((run) => runLetter(run)));
  const views = shown.flatMap((kind): View[] => {
    if (kind === 'plan') return plansOf(runs, measure, letter);
    if (kind === 'eye') return eyeViews(runs, looks, measure);
    if (kind === 'section') return runs.flatMap((run) => sectionOf(run, measure, small) ?? []);
    return runs.flatMap((run) => [
      elevationOf(run, measure, letter, kind),
      ...run.leaves.map((leaf) => leafElevation(run, leaf, measure, letter, kind)),
    ]);
  });
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
