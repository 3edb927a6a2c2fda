import type { Ticks } from '../../units/index.ts';
import { type FitProblem, MOST_SLATS, type RepeatSlat } from './problem.ts';

/** A fit problem with the sums that every remedy asks for. */
export interface Courses {
  readonly problem: FitProblem;
  /** Slat `n` of the laid pattern, from 1. */
  slat(n: number): RepeatSlat;
  /** Widths of the first `n` slats together. */
  widths(n: number): Ticks;
  /** How many of the first `n` slats are of this stock. */
  countOf(stock: string, n: number): number;
  /** Gaps that share what `n` slats leave: those between, and two halves when the edge gaps follow. */
  shares(n: number): number;
  /** What `n` slats leave for those gaps; negative when they do not go in. */
  left(n: number): Ticks;
  /** Space that `n` slats need at the nominal gap. */
  need(n: number): Ticks;
  /** Whether the closing rule lets slat `n` be the last. */
  mayEnd(n: number): boolean;
}

/** Sets up the sums. The problem must be sound (see `isSound`). */
export function coursesOf(problem: FitProblem): Courses {
  const { repeat, gap, edgeGap, end, space } = problem;
  const size = repeat.length;
  const sums = [0];
  for (const { width } of repeat) sums.push((sums.at(-1) ?? 0) + width);
  const whole = sums[size] ?? 0;
  const countsOf = new Map<string, number[]>();
  const fixedEdges = problem.edgeHalf ? 0 : 2 * edgeGap;

  const slat = (n: number) => repeat[(n - 1) % size] as RepeatSlat;
  const widths = (n: number) => Math.floor(n / size) * whole + (sums[n % size] ?? 0);
  return {
    problem,
    slat,
    widths,
    countOf(stock, n) {
      let counts = countsOf.get(stock);
      if (!counts) {
        let count = 0;
        counts = [0, ...repeat.map((each) => (each.stock === stock ? ++count : count))];
        countsOf.set(stock, counts);
      }
      return Math.floor(n / size) * (counts[size] ?? 0) + (counts[n % size] ?? 0);
    },
    shares: (n) => (problem.edgeHalf ? n : n - 1),
    left: (n) => space - fixedEdges - widths(n),
    need: (n) => 2 * edgeGap + widths(n) + (n - 1) * gap,
    mayEnd(n) {
      if (end.kind === 'whole') return n % size === 0;
      return end.kind === 'anywhere' || slat(n).stock === end.slat;
    },
  };
}

/**
 * The greatest count for which `holds`, which must hold for all lesser counts, 0 included.
 * Never more than `MOST_SLATS`.
 */
export function greatestCount(holds: (n: number) => boolean): number {
  let low = 0;
  let high = MOST_SLATS + 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** The greatest count that goes in at the nominal gap and that the closing rule allows; 0 when none does. */
export function nominalCount(courses: Courses): number {
  const { problem } = courses;
  let n = greatestCount((count) => courses.need(count) <= problem.space);
  for (let tries = problem.repeat.length; n > 0 && tries > 0; tries--, n--) {
    if (courses.mayEnd(n)) return n;
  }
  return 0;
}

/** The greatest count whose gaps need be no less than `low`. */
export function lastCount(courses: Courses, low: Ticks): number {
  return greatestCount((n) => n === 0 || courses.left(n) >= courses.shares(n) * low);
}

/** The least count whose gaps need be no more than `high`. */
export function firstCount(courses: Courses, high: Ticks): number {
  return 1 + greatestCount((n) => n === 0 || courses.left(n) > courses.shares(n) * high);
}

/** Counts, rising, for which every gap can be from `low` to `high`. */
export function countsWithin(courses: Courses, low: Ticks, high: Ticks): number[] {
  if (low > high || high < 0) return [];
  const first = firstCount(courses, high);
  const last = lastCount(courses, Math.max(low, 0));
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => first + index);
}
