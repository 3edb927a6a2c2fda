import { type ParsedLength, refuse } from './parsed-length.ts';
import { fromDecimal, plus, type Rational, ratio, reduced, ticksOf, times } from './rational.ts';
import { spellTicks } from './spell-ticks.ts';
import { TICKS_PER_INCH, TICKS_PER_MM } from './ticks.ts';

/** `6-1/2`, `6 1/2`, `1/2`, `6`, `6.5` in four groups: whole, top, bottom, decimal. */
export const MIXED = String.raw`(?:(?:(\d+)[ -])?(\d+)/(\d+)|(\d+(?:\.\d+)?))`;

const INCHES = new RegExp(`^${MIXED}"$`);
const FEET = /^(\d+(?:\.\d+)?)'$/;
const FEET_AND_INCHES = new RegExp(`^(\\d+)'[ -]?${MIXED}"$`);
const METRIC = /^(\d+(?:\.\d+)?) ?(mm|cm|m)$/;
const TICKS_PER_METRIC: Record<string, number> = {
  mm: TICKS_PER_MM,
  cm: 10 * TICKS_PER_MM,
  m: 1000 * TICKS_PER_MM,
};

/** Plain marks `'` and `"` and single plain spaces for every kind of them that a keyboard or a phone makes. */
export function plainSpelling(text: string): string {
  return text
    .replace(/[\u2018\u2019\u2032]/g, "'")
    .replace(/''/g, '"')
    .replace(/[\u201C\u201D\u2033]/g, '"')
    .replace(/[ \t\u00A0\u2009\u202F]+/g, ' ')
    .replace(/^ | $/g, '');
}

/**
 * Reads a plain spelling that has the form of a length. Undefined for any other form; refused where the form
 * is right and the numbers are not.
 */
export function readLength(plain: string): ParsedLength | undefined {
  const metric = METRIC.exec(plain);
  if (metric) return stated(fromDecimal(metric[1] ?? ''), TICKS_PER_METRIC[metric[2] ?? ''] ?? 0, 'metric');
  const feet = FEET.exec(plain);
  if (feet) return stated(times(fromDecimal(feet[1] ?? ''), ratio(12n)), TICKS_PER_INCH, 'imperial');
  const inches = INCHES.exec(plain);
  if (inches) return readInches(inches.slice(1), 0n, false);
  const both = FEET_AND_INCHES.exec(plain);
  if (both) return readInches(both.slice(2), BigInt(both[1] ?? ''), true);
  return undefined;
}

function readInches(groups: readonly (string | undefined)[], feet: bigint, compound: boolean): ParsedLength {
  const amount = mixedNumber(groups);
  if (amount === undefined) return refuse('zero-denominator');
  const total = plus(amount, ratio(12n * feet));
  const length = stated(total, TICKS_PER_INCH, 'imperial');
  if (!length.ok) return length;
  const [, top, bottom] = groups;
  if (top !== undefined && BigInt(top) >= BigInt(bottom ?? '')) {
    return refuse('improper-fraction', [spellInches(total, compound)]);
  }
  if (compound && amount.n >= 12n * amount.d) return refuse('inches-over-foot', [spellInches(total, true)]);
  return length;
}

/** The value of the four groups of `MIXED`; undefined for a denominator of zero. */
export function mixedNumber(groups: readonly (string | undefined)[]): Rational | undefined {
  const [whole = '0', top, bottom, decimal] = groups;
  if (decimal !== undefined) return fromDecimal(decimal);
  if (top === undefined || bottom === undefined) return undefined;
  const d = BigInt(bottom);
  return d === 0n ? undefined : plus(ratio(BigInt(whole)), ratio(BigInt(top), d));
}

function stated(amount: Rational, ticksPerUnit: number, system: 'imperial' | 'metric'): ParsedLength {
  const length = ticksOf(amount, ticksPerUnit);
  return length ? { ok: true, ...length, system } : refuse('too-large');
}

/**
 * An amount of inches as a fix writes it, with feet or without. A fraction that no tape bears (1-2/3") is kept
 * rather than made a long decimal. The amount must not be longer than the longest length.
 */
export function spellInches(amount: Rational, withFeet: boolean): string {
  const { n, d } = reduced(amount);
  const exact = ticksOf(amount, TICKS_PER_INCH);
  if (d <= 64n && exact?.exact === false) {
    const perUnit = withFeet ? 12n * d : d;
    const feet = withFeet ? n / perUnit : 0n;
    const rest = n - feet * perUnit;
    const inches = rest / d > 0n || feet > 0n ? `${rest / d}-${rest % d}/${d}"` : `${rest}/${d}"`;
    return feet > 0n ? `${feet}' ${inches}` : inches;
  }
  return spellTicks(exact?.ticks ?? 0, withFeet ? 'feet' : 'inches');
}
