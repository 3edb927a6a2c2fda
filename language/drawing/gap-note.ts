import type { RunLayout } from '../layout/index.ts';
import { type Measure, roundToStep, type Ticks } from '../units/index.ts';
import { dimensionText } from './dimension-text.ts';

/**
 * The gaps between slats in words, as printed along their chain: each the difference of rounded marks.
 * Gaps are too small to be dimensioned one by one on most sheets, yet they are what is asked for first.
 * `gate` picks a leaf's; without it, those of the bays. Empty when there are none.
 */
export function gapNote(run: RunLayout, gate: string | undefined, measure: Measure): string {
  const leaf = run.leaves.find((one) => one.gate === gate);
  const upright = (leaf ? leaf.spec.infill : run.spec.infill).flip.upright;
  const origin: Ticks = upright ? (leaf?.x0 ?? 0) : (leaf?.z0 ?? run.ground);
  const mark = (t: Ticks) => roundToStep(t - origin, measure.step);
  let [least, most] = [Infinity, -Infinity];
  for (const opening of run.openings) {
    if (!opening.between || opening.gate !== gate) continue;
    const gap = upright ? mark(opening.x1) - mark(opening.x0) : mark(opening.z1) - mark(opening.z0);
    least = Math.min(least, gap);
    most = Math.max(most, gap);
  }
  if (least > most) return '';
  const from = dimensionText(least, measure);
  return least === most ? `gaps ${from}` : `gaps ${from} to ${dimensionText(most, measure)}`;
}
