import type { Explain } from './explain.ts';
import { refuse } from './parsed-length.ts';
import { plus, ratio, ticksOf, times } from './rational.ts';
import { MIXED, mixedNumber, spellInches } from './read-length.ts';
import { TICKS_PER_INCH } from './ticks.ts';

/** Inches after feet without their mark: `12' 3`. */
export const explainMissingInchMark: Explain = (t, through) =>
  /^[^'"]+'[ -]?\d[\d./ -]*$/.test(t) ? through('missing-inch-mark', `${t}"`) : undefined;

const ANY_FEET = new RegExp(`^${MIXED}'(?:[ -]?${MIXED}")?$`);

/** A fraction of a foot, or decimal feet with inches after them: `1/2'`, `7.5' 3"`. */
export const explainFractionOfFoot: Explain = (t) => {
  const found = ANY_FEET.exec(t);
  if (!found) return undefined;
  const feet = mixedNumber(found.slice(1, 5));
  const hasInches = found[7] !== undefined || found[8] !== undefined;
  const inches = hasInches ? mixedNumber(found.slice(5, 9)) : ratio(0n);
  if (feet === undefined || inches === undefined) return refuse('zero-denominator');
  const total = plus(times(feet, ratio(12n)), inches);
  if (ticksOf(total, TICKS_PER_INCH) === undefined) return refuse('too-large');
  return refuse('fraction-of-foot', [spellInches(total, true)]);
};
