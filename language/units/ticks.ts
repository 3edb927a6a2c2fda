/** A length in whole ticks: 203 200 to the inch, 8 000 to the millimeter. Always an integer. */
export type Ticks = number;

// 1 in = 25.4 mm exactly, so 25.4 * 8 000; both 1/64 in (3 175) and 0.1 mm (800) are whole.
export const TICKS_PER_INCH = 203_200;
export const TICKS_PER_FOOT = 2_438_400;
export const TICKS_PER_MM = 8_000;

/** The longest length a text may state: 10 km. Keeps every sum and product of a job in whole numbers. */
export const LONGEST: Ticks = 10_000_000 * TICKS_PER_MM;

/** Inches to ticks, rounded once to a whole tick. */
export function inches(n: number): Ticks {
  return wholeTicks(n * TICKS_PER_INCH);
}

/** Feet to ticks, rounded once to a whole tick. */
export function feet(n: number): Ticks {
  return wholeTicks(n * TICKS_PER_FOOT);
}

/** Millimeters to ticks, rounded once to a whole tick. */
export function mm(n: number): Ticks {
  return wholeTicks(n * TICKS_PER_MM);
}

/** Ticks to millimeters, a float for calculations and drawing only. */
export function toMm(t: Ticks): number {
  return t / TICKS_PER_MM;
}

/** Ticks to inches, a float for calculations and drawing only. */
export function toInches(t: Ticks): number {
  return t / TICKS_PER_INCH;
}

/** The nearest whole tick, halves away from zero so that a length and its negative round alike. */
export function wholeTicks(x: number): Ticks {
  const size = Math.round(Math.abs(x));
  return x < 0 && size > 0 ? -size : size;
}
