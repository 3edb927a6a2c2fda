import { inches, mm, type Ticks } from '../../../units/index.ts';
import type { ChoiceKind } from '../../layout.ts';
import type { FitProblem } from '../index.ts';

// The fit found by trying everything: counts one by one, slats laid one by one, gaps and widths tick by
// tick and step by step. Slow, and with nothing in common with what it checks.

/** A way to close the pattern, by what one could measure on the wall. */
export interface Found {
  readonly kind: ChoiceKind;
  readonly count: number;
  readonly gapChange: Ticks;
  readonly bottom?: Ticks;
  readonly height?: Ticks;
  readonly width?: Ticks;
  readonly slat?: string;
  readonly edge?: 'top' | 'bottom';
  /** Width taken off or put on, and how far ends move: what ranks two that are otherwise alike. */
  readonly taken: Ticks;
  readonly moved: Ticks;
}

export const MOST = 64;

export const metric = ({ measure }: FitProblem) => measure.unit === 'mm';
export const tolerance = (p: FitProblem): Ticks => {
  if (p.besideNominal) return metric(p) ? mm(1.5) : inches(0.0625);
  return metric(p) ? mm(3) : inches(0.125);
};
export const thinnest = (p: FitProblem): Ticks => (metric(p) ? mm(40) : inches(1.5));

export function slatsOf(p: FitProblem, count: number) {
  const slats = [];
  for (let i = 0; i < count; i++)
    slats.push(p.repeat[i % p.repeat.length] ?? { stock: '', width: 0, from: 0 });
  return slats;
}

export function mayBeLast(p: FitProblem, count: number): boolean {
  if (p.end.kind === 'anywhere') return true;
  if (p.end.kind === 'whole') return count % p.repeat.length === 0;
  return slatsOf(p, count).at(-1)?.stock === p.end.slat;
}

/** Edge, slat, gap, slat ... edge, added up. */
export function nominal(p: FitProblem, count: number): Ticks {
  let sum = p.edgeGap + p.edgeGap;
  slatsOf(p, count).forEach((slat, i) => {
    sum += slat.width + (i > 0 ? p.gap : 0);
  });
  return sum;
}

/** The change of the gaps when `rest` is dealt to them, or nothing when one would leave `low` to `high`. */
export function dealt(p: FitProblem, count: number, rest: Ticks, low: Ticks, high: Ticks): Ticks | undefined {
  const gaps = p.edgeHalf ? count : count - 1;
  if (gaps === 0) return rest === 0 ? 0 : undefined;
  if (rest < low * gaps || rest > high * gaps) return undefined;
  let gap = Math.max(0, low);
  while ((gap + 1) * gaps <= rest) gap++;
  const wider = rest > gap * gaps ? gap + 1 : gap;
  return wider > high ? undefined : Math.max(Math.abs(gap - p.gap), Math.abs(wider - p.gap));
}

export const restOf = (p: FitProblem, slats: readonly { width: Ticks }[]): Ticks =>
  slats.reduce((rest, { width }) => rest - width, p.edgeHalf ? p.space : p.space - p.edgeGap - p.edgeGap);

export const plainEnds = (p: FitProblem) =>
  p.ends && !p.upright ? { bottom: p.ends.bottom.low, height: p.ends.height.high } : {};

export function* counts(p: FitProblem, mayEnd = true): Generator<number> {
  for (let n = 1; n <= MOST; n++) if (mayBeLast(p, n) === mayEnd) yield n;
}
