import { inches, mm, type Ticks } from '../../../units/index.ts';
import type { FitProblem } from '../index.ts';
import {
  counts,
  dealt,
  type Found,
  metric,
  nominal,
  plainEnds,
  restOf,
  slatsOf,
  thinnest,
  tolerance,
} from './one-by-one.ts';

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
