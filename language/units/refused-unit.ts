import type { Explain } from './explain.ts';
import type { MeasureUnit } from './measure.ts';
import { refuse } from './parsed-length.ts';
import { type Rational, ratio, ticksOf, times } from './rational.ts';
import { MIXED, mixedNumber } from './read-length.ts';
import { spellTicks } from './spell-ticks.ts';
import { TICKS_PER_INCH, TICKS_PER_MM } from './ticks.ts';

const after = (words: string) => new RegExp(`(?<=\\d) ?(?:${words})(?![a-z])\\.?`, 'gi');
const SPELLED_OUT: readonly [RegExp, string][] = [
  [after('feet|foot|ft'), "'"],
  [after('inches|inch|ins|in'), '"'],
  [after('millimet(?:er|re)s?|mms?'), ' mm'],
  [after('centimet(?:er|re)s?|cms?'), ' cm'],
  [after('met(?:er|re)s?|m'), ' m'],
];

/** A unit spelled out: `6 inches`, `7 ft 6 in`, `3 metres`, `4 MM`. */
export const explainUnitWord: Explain = (t, through) => {
  let respelled = t;
  for (const [word, mark] of SPELLED_OUT) respelled = respelled.replace(word, mark);
  return respelled === t ? undefined : through('unknown-unit', respelled);
};

interface OtherUnit {
  words: RegExp;
  /** How many millimeters or inches one of it is, and the units to offer it in. */
  scale: Rational;
  per: number;
  shown: MeasureUnit;
}

const OTHER_UNITS: readonly OtherUnit[] = [
  { words: /^(?:yards?|yds?)$/i, scale: ratio(36n), per: TICKS_PER_INCH, shown: 'feet' },
  { words: /^(?:dm|decimet(?:er|re)s?)$/i, scale: ratio(100n), per: TICKS_PER_MM, shown: 'mm' },
  { words: /^(?:km|kilomet(?:er|re)s?)$/i, scale: ratio(1_000_000n), per: TICKS_PER_MM, shown: 'm' },
  // "Mil" is a millimeter in one yard and a thousandth of an inch in the next; slats are cut by the first.
  { words: /^mils?$/i, scale: ratio(1n), per: TICKS_PER_MM, shown: 'mm' },
  { words: /^(?:thous?|mils?)$/i, scale: ratio(1n, 1000n), per: TICKS_PER_INCH, shown: 'inches' },
];
const NUMBER_AND_WORD = new RegExp(`^${MIXED} ?([a-z]+)\\.?$`, 'i');

/** A known unit that the language does not use: yards, decimeters, kilometers, thousandths of an inch. */
export const explainOtherUnit: Explain = (t) => {
  const found = NUMBER_AND_WORD.exec(t);
  const word = found?.[5] ?? '';
  const units = OTHER_UNITS.filter((unit) => unit.words.test(word));
  if (!found || units.length === 0) return undefined;
  const amount = mixedNumber(found.slice(1, 5));
  if (amount === undefined) return refuse('zero-denominator');
  const lengths = units.map((unit) => ({ ...unit, length: ticksOf(times(amount, unit.scale), unit.per) }));
  if (lengths.every(({ length }) => length === undefined)) return refuse('too-large');
  return refuse(
    'unknown-unit',
    lengths.flatMap(({ length, shown }) => (length ? [spellTicks(length.ticks, shown)] : [])),
  );
};

const FRACTION_OF_METRIC = new RegExp(`^${MIXED} ?(mm|cm|m)$`);

/** A fraction with a metric unit: `1/2 m`, which is 0.5 m. */
export const explainMetricFraction: Explain = (t) => {
  const found = FRACTION_OF_METRIC.exec(t);
  if (found?.[2] === undefined) return undefined;
  const amount = mixedNumber(found.slice(1, 5));
  if (amount === undefined) return refuse('zero-denominator');
  const unit = found[5] === 'm' || found[5] === 'cm' ? found[5] : 'mm';
  const perUnit = { mm: 1, cm: 10, m: 1000 }[unit] * TICKS_PER_MM;
  const length = ticksOf(amount, perUnit);
  return length ? refuse('not-a-length', [spellTicks(length.ticks, unit)]) : refuse('too-large');
};
