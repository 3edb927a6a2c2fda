// Lengths and angles: whole ticks, their spellings read and written, rounding and even spreading; and the
// units of calculation: loads, pressures, speeds, temperatures, in both systems.
// Pure and self-contained: this folder imports nothing from outside itself, knows no syntax tree and no job.

export { angleOfSides, degrees, formatDegrees } from './angle.ts';
export { fineLength } from './fine-length.ts';
export { formatDay } from './format-day.ts';
export { formatLength, spellLength } from './format-length.ts';
export { LENGTH_PATTERN } from './length-pattern.ts';
export { IMPERIAL, METRIC, type Measure, type MeasureUnit } from './measure.ts';
export { formatMoney, type Money, minorDigits, moneyOf, parseMoney } from './money.ts';
export { AMOUNT_PATTERN, parseAmount, spellingsOf } from './parse-amount.ts';
export { parseLength } from './parse-length.ts';
export type { LengthProblem, ParsedLength, RefusedLength, StatedLength } from './parsed-length.ts';
export { type Amount, convert, type Dimension, dimensionOf, UNITS, type UnitName } from './quantity.ts';
export { ceilToStep, floorToStep, ROUNDING, roundToStep } from './round.ts';
export { formatAmount, formatNumber, inSystem, type System } from './show-amount.ts';
export { spreadEvenly } from './spread.ts';
export {
  feet,
  inches,
  LONGEST,
  mm,
  TICKS_PER_FOOT,
  TICKS_PER_INCH,
  TICKS_PER_MM,
  type Ticks,
  toInches,
  toMm,
} from './ticks.ts';
