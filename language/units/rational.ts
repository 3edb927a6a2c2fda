import { LONGEST, type Ticks } from './ticks.ts';

/** An exact fraction n / d with d > 0, so that digits of a text never pass through a float. */
export interface Rational {
  n: bigint;
  d: bigint;
}

export function ratio(n: bigint, d: bigint = 1n): Rational {
  return { n, d };
}

/** Reads `24` or `2.4`: digits with at most one point between them, nothing else. */
export function fromDecimal(digits: string): Rational {
  const [whole = '0', part = ''] = digits.split('.');
  return { n: BigInt(whole + part), d: 10n ** BigInt(part.length) };
}

export function plus(a: Rational, b: Rational): Rational {
  return { n: a.n * b.d + b.n * a.d, d: a.d * b.d };
}

export function times(a: Rational, b: Rational): Rational {
  return { n: a.n * b.n, d: a.d * b.d };
}

export function reduced(r: Rational): Rational {
  let [a, b] = [r.n, r.d];
  while (b !== 0n) [a, b] = [b, a % b];
  return { n: r.n / a, d: r.d / a };
}

/**
 * A non-negative amount of a unit in ticks, rounded once (halves up). `exact` says whether rounding changed
 * nothing. Undefined when the length is longer than the longest that may be stated.
 */
export function ticksOf(
  amount: Rational,
  ticksPerUnit: number,
): { ticks: Ticks; exact: boolean } | undefined {
  const n = amount.n * BigInt(ticksPerUnit);
  const ticks = (2n * n + amount.d) / (2n * amount.d);
  if (ticks > BigInt(LONGEST)) return undefined;
  return { ticks: Number(ticks), exact: n % amount.d === 0n };
}
