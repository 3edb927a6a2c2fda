import type { MeasureUnit } from './measure.ts';
import { TICKS_PER_FOOT, TICKS_PER_INCH, TICKS_PER_MM, type Ticks, wholeTicks } from './ticks.ts';

const TICKS_PER_64TH = TICKS_PER_INCH / 64;

// Decimals that always lead back to the same tick: half the last decimal is less than half a tick.
// 0.000 000 5 in = 0.1 tick; 0.000 05 mm = 0.4 tick, and so for cm and m with one and three digits more.
const INCH_DIGITS = 6;
const METRIC_UNITS = {
  mm: { ticks: TICKS_PER_MM, digits: 4 },
  cm: { ticks: 10 * TICKS_PER_MM, digits: 5 },
  m: { ticks: 1000 * TICKS_PER_MM, digits: 7 },
} as const;

/**
 * The one spelling of `t` in a unit that reads back as exactly `t`: fractions of an inch up to 1/64 where one
 * is exact, else as few decimals as lead back to the tick. A negative length bears a leading `-`, for drawings.
 */
export function spellTicks(t: Ticks, unit: MeasureUnit): string {
  const whole = wholeTicks(t);
  if (whole < 0) return `-${spellTicks(-whole, unit)}`;
  if (unit === 'inches') return `${inchNumber(whole, false)}"`;
  if (unit === 'feet') return feetAndInches(whole);
  const { ticks, digits } = METRIC_UNITS[unit];
  return `${decimal(whole, ticks, digits)} ${unit}`;
}

function feetAndInches(t: Ticks): string {
  const rest = t % TICKS_PER_FOOT;
  const feet = (t - rest) / TICKS_PER_FOOT;
  if (feet === 0) return `${inchNumber(rest, false)}"`;
  return rest === 0 ? `${feet}'` : `${feet}' ${inchNumber(rest, true)}"`;
}

/** `6-1/2`, `1/2`, `6`. After feet a lone fraction is written `0-1/2`, so that it is not overlooked. */
function inchNumber(t: Ticks, afterFeet: boolean): string {
  const rest = t % TICKS_PER_INCH;
  const whole = (t - rest) / TICKS_PER_INCH;
  if (rest === 0) return `${whole}`;
  if (rest % TICKS_PER_64TH !== 0) return decimal(t, TICKS_PER_INCH, INCH_DIGITS);
  let top = rest / TICKS_PER_64TH;
  let bottom = 64;
  while (top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  return whole > 0 || afterFeet ? `${whole}-${top}/${bottom}` : `${top}/${bottom}`;
}

function decimal(t: Ticks, ticksPerUnit: number, mostDigits: number): string {
  const rest = t % ticksPerUnit;
  const whole = (t - rest) / ticksPerUnit;
  if (rest === 0) return `${whole}`;
  let digits = 0;
  let count = 0;
  // Products stay below 2^53 (1e7 * 8e6 at most), so each is exact.
  for (let scale = 10; count < mostDigits; scale *= 10) {
    count += 1;
    digits = Math.round((rest * scale) / ticksPerUnit);
    if (Math.round((digits * ticksPerUnit) / scale) === rest) break;
  }
  return `${whole}.${String(digits).padStart(count, '0')}`;
}
