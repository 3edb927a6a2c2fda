import type { Remedy } from '../../../model/index.ts';
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

const MOST = 64;

const metric = ({ measure }: FitProblem) => measure.unit === 'mm';
const tolerance = (p: FitProblem): Ticks => {
  if (p.besideNominal) return metric(p) ? mm(1.5) : inches(0.0625);
  return metric(p) ? mm(3) : inches(0.125);
};
const thinnest = (p: FitProblem): Ticks => (metric(p) ? mm(40) : inches(1.5));

function slatsOf(p: FitProblem, count: number) {
  const slats = [];
  for (let i = 0; i < count; i++)
    slats.push(p.repeat[i % p.repeat.length] ?? { stock: '', width: 0, from: 0 });
  return slats;
}

function mayBeLast(p: FitProblem, count: number): boolean {
  if (p.end.kind === 'anywhere') return true;
  if (p.end.kind === 'whole') return count % p.repeat.length === 0;
  return slatsOf(p, count).at(-1)?.stock === p.end.slat;
}

/** Edge, slat, gap, slat ... edge, added up. */
function nominal(p: FitProblem, count: number): Ticks {
  let sum = p.edgeGap + p.edgeGap;
  slatsOf(p, count).forEach((slat, i) => {
    sum += slat.width + (i > 0 ? p.gap : 0);
  });
  return sum;
}

/** The change of the gaps when `rest` is dealt to them, or nothing when one would leave `low` to `high`. */
function dealt(p: FitProblem, count: number, rest: Ticks, low: Ticks, high: Ticks): Ticks | undefined {
  const gaps = p.edgeHalf ? count : count - 1;
  if (gaps === 0) return rest === 0 ? 0 : undefined;
  if (rest < low * gaps || rest > high * gaps) return undefined;
  let gap = Math.max(0, low);
  while ((gap + 1) * gaps <= rest) gap++;
  const wider = rest > gap * gaps ? gap + 1 : gap;
  return wider > high ? undefined : Math.max(Math.abs(gap - p.gap), Math.abs(wider - p.gap));
}

const restOf = (p: FitProblem, slats: readonly { width: Ticks }[]): Ticks =>
  slats.reduce((rest, { width }) => rest - width, p.edgeHalf ? p.space : p.space - p.edgeGap - p.edgeGap);

const plainEnds = (p: FitProblem) =>
  p.ends && !p.upright ? { bottom: p.ends.bottom.low, height: p.ends.height.high } : {};

function* counts(p: FitProblem, mayEnd = true): Generator<number> {
  for (let n = 1; n <= MOST; n++) if (mayBeLast(p, n) === mayEnd) yield n;
}

export function asDrawn(p: FitProblem): Found[] {
  return [...counts(p)]
    .filter((count) => nominal(p, count) === p.space)
    .map((count) => ({ kind: 'as-drawn', count, gapChange: 0, taken: 0, moved: 0, ...plainEnds(p) }));
}

export const isBanded = (p: FitProblem): boolean =>
  !p.upright &&
  p.ends !== undefined &&
  (p.ends.bottom.low !== p.ends.bottom.high || p.ends.height.low !== p.ends.height.high);

export function moveEnds(p: FitProblem): Found[] {
  const found: Found[] = [];
  for (const count of counts(p)) {
    const over = p.space - nominal(p, count);
    const plain = { kind: 'move-ends', count, gapChange: 0, taken: 0, moved: over } as const;
    if (over <= 0) continue;
    if (p.upright) found.splice(0, 1, plain);
    if (!p.ends || p.upright || !isBanded(p)) continue;
    const { bottom, height } = p.ends;
    if (bottom.low + over <= bottom.high) {
      found.push({ ...plain, bottom: bottom.low + over, height: height.high });
    } else if (bottom.high + nominal(p, count) >= height.low) {
      found.push({ ...plain, bottom: bottom.high, height: bottom.high + nominal(p, count) });
    }
  }
  return found;
}

export function usualBottoms(p: FitProblem): Found[] {
  if (!p.ends || p.upright || isBanded(p)) return [];
  const found: Found[] = [];
  for (const count of counts(p)) {
    const bottom = p.ends.height.high - nominal(p, count);
    const usual = metric(p)
      ? bottom >= mm(50) && bottom <= mm(100)
      : bottom >= inches(2) && bottom <= inches(4);
    const moved = Math.abs(bottom - p.ends.bottom.low);
    if (!usual || moved === 0) continue;
    found.push({
      kind: 'move-ends',
      count,
      gapChange: 0,
      taken: 0,
      moved,
      bottom,
      height: p.ends.height.high,
    });
  }
  return found;
}

export function evenGaps(p: FitProblem, kind: 'gaps' | 'short-repeat', low: Ticks, high: Ticks): Found[] {
  const found: Found[] = [];
  for (const count of counts(p, kind === 'gaps')) {
    const gapChange = dealt(p, count, restOf(p, slatsOf(p, count)), low, high);
    if (gapChange !== undefined) found.push({ kind, count, gapChange, taken: 0, moved: 0, ...plainEnds(p) });
  }
  return found;
}

export const usualGaps = (p: FitProblem): [Ticks, Ticks] => [
  Math.max(0, p.gap - tolerance(p)),
  p.gap + tolerance(p),
];

export function ripLast(p: FitProblem, least?: Ticks): Found[] {
  const found: Found[] = [];
  for (const count of counts(p)) {
    const last = slatsOf(p, count).at(-1);
    if (!last) continue;
    const width = p.space - (nominal(p, count) - last.width);
    const enough = least === undefined ? width >= thinnest(p) && 2 * width >= last.width : width >= least;
    if (!enough || width <= 0 || width >= last.width) continue;
    const taken = last.width - width;
    found.push({
      kind: 'rip-last',
      count,
      gapChange: 0,
      width,
      slat: last.stock,
      taken,
      moved: 0,
      ...plainEnds(p),
    });
  }
  return found;
}

export function changeTo(p: FitProblem, stock: string, width: Ticks): Found[] {
  const slat = p.repeat.find((each) => each.stock === stock);
  if (!slat || width > slat.from || width === slat.width || width < 1) return [];
  const found: Found[] = [];
  for (const count of counts(p)) {
    const slats = slatsOf(p, count);
    if (!slats.some((each) => each.stock === stock)) continue;
    const rest = restOf(
      p,
      slats.map((each) => (each.stock === stock ? { width } : each)),
    );
    if (rest < 0) break;
    const gapChange = dealt(p, count, rest, Math.max(0, p.gap - tolerance(p) + 1), p.gap + tolerance(p) - 1);
    if (gapChange === undefined) continue;
    const taken = Math.abs(width - slat.width);
    found.push({
      kind: 'change-width',
      count,
      gapChange,
      width,
      slat: stock,
      taken,
      moved: 0,
      ...plainEnds(p),
    });
  }
  return found;
}

/** Every width tried; of each count the one that hides best; of those the least change either way. */
export function changeWidths(p: FitProblem): Found[] {
  const offered: Found[] = [];
  for (const stock of new Set(p.repeat.map((slat) => slat.stock))) {
    const slat = p.repeat.find((each) => each.stock === stock);
    if (!slat) continue;
    const best = new Map<number, { found: Found; residue: Ticks }>();
    for (let width = 0; width <= slat.from; width += p.measure.step) {
      if (width < thinnest(p)) continue;
      for (const found of changeTo(p, stock, width)) {
        const slats = slatsOf(p, found.count).map((each) => (each.stock === stock ? { width } : each));
        const gaps = p.edgeHalf ? found.count : found.count - 1;
        const residue = Math.abs(restOf(p, slats) - gaps * p.gap);
        const other = best.get(found.count);
        const better =
          !other || residue < other.residue || (residue === other.residue && found.taken < other.found.taken);
        if (better) best.set(found.count, { found, residue });
      }
    }
    const ways = [...best.values()].map(({ found }) => found);
    for (const wider of [true, false]) {
      const way = ways.filter(({ width = 0 }) => width > slat.width === wider);
      way.sort((a, b) => a.taken - b.taken || a.gapChange - b.gapChange || b.count - a.count);
      offered.push(...way.slice(0, 1));
    }
  }
  return offered;
}

export function trim(
  p: FitProblem,
  edge: 'top' | 'bottom',
  named?: { stock: string; width: Ticks },
): Found[] {
  const widest = [...p.repeat].sort((a, b) => b.width - a.width)[0];
  const own = p.trimBoards.length > 0 ? p.trimBoards : widest ? [widest] : [];
  const boards = named ? [named] : own;
  for (const count of [...counts(p)].reverse()) {
    const width = p.space - nominal(p, count) - p.gap;
    const wide = boards.filter((board) => board.width >= width).sort((a, b) => a.width - b.width);
    if (width < thinnest(p) || !wide[0]) continue;
    const { stock } = wide[0];
    const taken = wide[0].width - width;
    return [
      { kind: 'trim', count, gapChange: 0, width, slat: stock, edge, taken, moved: 0, ...plainEnds(p) },
    ];
  }
  return [];
}

export function byRemedy(p: FitProblem, remedy: Remedy): Found[] {
  switch (remedy.kind) {
    case 'move-ends':
      return moveEnds(p);
    case 'gaps':
      return evenGaps(p, 'gaps', remedy.low, remedy.high);
    case 'short-repeat': {
      const stated = p.remedies.flatMap((each) => (each.kind === 'gaps' ? [each] : []))[0];
      return evenGaps(p, 'short-repeat', ...(stated ? ([stated.low, stated.high] as const) : usualGaps(p)));
    }
    case 'rip-last':
      return ripLast(p, remedy.least);
    case 'change-width':
      return changeTo(p, remedy.slat, remedy.width);
    case 'trim': {
      const board = remedy.board && { stock: remedy.board.name, width: remedy.board.width.value };
      return trim(p, remedy.edge, board);
    }
  }
}

/** What is built, by the rules read one after the other. */
export function chosenOf(p: FitProblem): Found | undefined {
  const drawn = asDrawn(p)[0];
  if (drawn) return drawn;
  const order = [...p.remedies];
  if (p.upright && order.length === 0) order.push({ kind: 'move-ends' });
  if (isBanded(p) && !order.some(({ kind }) => kind === 'move-ends')) order.unshift({ kind: 'move-ends' });
  for (const remedy of order) {
    const [best] = byRemedy(p, remedy).sort((a, b) => a.gapChange - b.gapChange || b.count - a.count);
    if (best) return best;
  }
  return undefined;
}

/** Every way at all: with the usual limits, and with those the text states. */
export function everyWay(p: FitProblem): Found[] {
  return [
    ...moveEnds(p),
    ...usualBottoms(p),
    ...evenGaps(p, 'gaps', ...usualGaps(p)),
    ...evenGaps(p, 'short-repeat', ...usualGaps(p)),
    ...ripLast(p),
    ...changeWidths(p),
    ...trim(p, 'bottom'),
    ...trim(p, 'top'),
    ...p.remedies.flatMap((remedy) => byRemedy(p, remedy)),
  ];
}
