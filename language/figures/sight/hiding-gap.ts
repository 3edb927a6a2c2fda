import { layOutRun, type RunLayout } from '../../layout/index.ts';
import type { RunSpec } from '../../model/index.ts';
import type { Ticks } from '../../units/index.ts';
import { type PlacedRun, placedRun, type Scene } from './scene.ts';

/** A gap that would hide what is asked, and the run laid out with it. */
export interface HidingGap {
  readonly gap: Ticks;
  readonly run: RunLayout;
  /** The `gaps` of the fit that had to begin lower than stated for it, by their place among the remedies. */
  readonly widened?: number;
}

/**
 * The widest gap, in marks of the tape and narrower than now, with which a run would hide what is asked; found by
 * laying the run out with it, fit and all: first within the gaps that the fit may take, then below them. Undefined
 * when none does.
 *
 * @param enough whether a scene hides as much as is asked
 */
export function hidingGap(
  scene: Scene,
  run: RunLayout,
  enough: (scene: Scene) => boolean,
): HidingGap | undefined {
  const within = widestThatHides(scene, run, enough, withGap);
  if (within) return within;
  const widened = run.spec.infill.fit.remedies.findIndex(({ value }) => value.kind === 'gaps');
  if (widened < 0) return undefined;
  const below = widestThatHides(scene, run, enough, (spec, gap) => lowered(withGap(spec, gap), gap));
  return below && { ...below, widened };
}

function widestThatHides(
  scene: Scene,
  run: RunLayout,
  enough: (scene: Scene) => boolean,
  changed: (spec: RunSpec, gap: Ticks) => RunSpec,
): HidingGap | undefined {
  const { step } = run.spec.measure;
  let best: HidingGap | undefined;
  // Narrower hides more, so the widest that hides enough is found by halving; the fit may shift it by a mark. A gap that
  // no fit can take is narrower than the fit may go.
  let [least, most] = [1, Math.ceil(run.spec.infill.pattern.gap.value / step) - 1];
  while (least <= most) {
    const middle = Math.floor((least + most) / 2);
    const gap = middle * step;
    const laid = layOutRun(changed(run.spec, gap), undefined, run.joints);
    const fits = laid.sound && laid.fits.every((fit) => fit.chosen);
    if (fits && enough(swapped(scene, run, laid))) best = { gap, run: laid };
    if (fits && best?.run !== laid) most = middle - 1;
    else least = middle + 1;
  }
  return best;
}

function withGap(spec: RunSpec, gap: Ticks): RunSpec {
  const { infill } = spec;
  const pattern = { ...infill.pattern, gap: { ...infill.pattern.gap, value: gap } };
  return { ...spec, infill: { ...infill, pattern } };
}

/** The same, where the fit may take gaps from this one on. */
function lowered(spec: RunSpec, gap: Ticks): RunSpec {
  const { infill } = spec;
  const remedies = infill.fit.remedies.map((remedy) =>
    remedy.value.kind === 'gaps'
      ? { ...remedy, value: { ...remedy.value, low: Math.min(remedy.value.low, gap) } }
      : remedy,
  );
  return { ...spec, infill: { ...infill, fit: { ...infill.fit, remedies } } };
}

function swapped(scene: Scene, old: RunLayout, laid: RunLayout): Scene {
  const swap = (placed: PlacedRun) => (placed.run === old ? placedRun(laid, placed.frame) : placed);
  return { runs: scene.runs.map(swap) };
}
