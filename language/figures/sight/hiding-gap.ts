import { layOutRun, type RunLayout } from '../../layout/index.ts';
import type { RunSpec } from '../../model/index.ts';
import type { Ticks } from '../../units/index.ts';
import { type PlacedRun, placedRun, type Scene } from './scene.ts';

/**
 * The widest gap, in marks of the tape and narrower than now, with which a run would hide what is asked; found by
 * laying the run out with it, fit and all. Undefined when none does.
 *
 * @param enough whether a scene hides as much as is asked
 */
export function hidingGap(
  scene: Scene,
  run: RunLayout,
  enough: (scene: Scene) => boolean,
): { readonly gap: Ticks; readonly run: RunLayout } | undefined {
  const { pattern } = run.spec.infill;
  const { step } = run.spec.measure;
  const tried = new Map<number, RunLayout | undefined>();
  const attempt = (marks: number): boolean => {
    const laid = layOutRun(withGap(run.spec, marks * step), undefined, run.joints);
    const good = laid.sound && laid.fits.every((fit) => fit.chosen) && enough(swapped(scene, run, laid));
    tried.set(marks, good ? laid : undefined);
    return good;
  };
  // Narrower hides more, so the widest that hides enough is found by halving; the fit may shift it by a mark.
  let [least, most] = [1, Math.ceil(pattern.gap.value / step) - 1];
  let best: number | undefined;
  while (least <= most) {
    const middle = Math.floor((least + most) / 2);
    if (attempt(middle)) {
      best = middle;
      least = middle + 1;
    } else most = middle - 1;
  }
  const laid = best === undefined ? undefined : tried.get(best);
  return best !== undefined && laid ? { gap: best * step, run: laid } : undefined;
}

function withGap(spec: RunSpec, gap: Ticks): RunSpec {
  const { infill } = spec;
  const pattern = { ...infill.pattern, gap: { ...infill.pattern.gap, value: gap } };
  return { ...spec, infill: { ...infill, pattern } };
}

function swapped(scene: Scene, old: RunLayout, laid: RunLayout): Scene {
  const swap = (placed: PlacedRun) => (placed.run === old ? placedRun(laid, placed.frame) : placed);
  return { runs: scene.runs.map(swap) };
}
