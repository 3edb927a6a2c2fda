import type { Measure } from './measure.ts';
import { roundToStep } from './round.ts';
import { spellTicks } from './spell-ticks.ts';
import type { Ticks } from './ticks.ts';

/**
 * A length as the job shows it: in the measure's unit, rounded to its step. `7' 6-1/2"` (feet), `90-1/2"`
 * (inches), `2400 mm`, `240 cm`, `2.4 m`. Read as a length it gives back the rounded value. Negative values,
 * which no text can state, bear a leading `-`.
 */
export function formatLength(t: Ticks, measure: Measure): string {
  return spellTicks(roundToStep(t, measure.step), measure.unit);
}

/**
 * A length as a text edit writes it: in the measure's unit and exact to the tick, however fine. The same as
 * `formatLength` where `t` lies on a step.
 */
export function spellLength(t: Ticks, measure: Measure): string {
  return spellTicks(t, measure.unit);
}
