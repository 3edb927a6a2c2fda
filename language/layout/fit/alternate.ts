import type { Ticks } from '../../units/index.ts';
import type { FitChoice } from '../layout.ts';
import { type Ask, asksOf, triedInOrder } from './asks.ts';
import { changesFor } from './changes.ts';
import { greatestCount } from './courses.ts';
import type { Draft } from './draft.ts';
import { edited, editsFor, restatedBy } from './edits.ts';
import type { PatternFit } from './fit-pattern.ts';
import { leastOverlap, usualBottom } from './habits.ts';
import type { Laid, Slot } from './lay-out.ts';
import { type FitProblem, hasBand, isSound, usableSpace } from './problem.ts';
import { byRank } from './rank.ts';

/** More ways than this are not offered. */
const MOST_OFFERS = 5;

/** The two layers of slats that stand by turns on both faces. */
export interface Layers {
  /** Begins with a slat and ends with a space. */
  readonly front: Laid;
  /** Begins with a space and ends with a slat. */
  readonly back: Laid;
}

/**
 * Fits one board by turns on both faces: n slats w wide on each, gap g, take up (n + 1/2) w + (n - 1/2) g
 * (common practice; from a face that ends with a slat and one that begins with one, half a pitch apart). What
 * closes it is the ends or the gaps; other remedies change single slats and are passed over. `count` is of one face.
 */
export function fitAlternate(problem: FitProblem): PatternFit {
  if (!isSound(problem)) return { leftover: usableSpace(problem), nominalCount: 0, choices: [] };
  const asks = asksOf(problem.remedies);
  const count = nominal(problem);
  const chosen = choose(problem, asks);
  return {
    ...(chosen ? { chosen: choiceOf(chosen) } : {}),
    leftover: count > 0 ? problem.space - need(problem, count) : problem.space,
    nominalCount: count,
    choices: offers(problem, asks, chosen),
  };
}

/** Both layers as built; at the nominal gap from the first edge when nothing is chosen. */
export function layOutAlternate(problem: FitProblem, chosen?: FitChoice): Layers {
  const count = chosen?.count ?? nominal(problem);
  if (!isSound(problem) || count === 0) {
    const none: Laid = { slots: [], space: usableSpace(problem) };
    return { front: none, back: none };
  }
  const width = widthOf(problem);
  const { ends } = problem;
  const moved =
    ends && chosen?.bottom !== undefined && chosen.height !== undefined
      ? chosen.bottom - ends.bottom.low + ends.height.high - chosen.height
      : 0;
  // Upright, what is left over of a pattern that does not close lies at the end; level, below it.
  const used = chosen || problem.upright ? problem.space - moved : need(problem, count);
  const lead = chosen?.lead ?? problem.edgeGap;
  const reach = chosen
    ? used - lead - chosen.tail - width
    : need(problem, count) - 2 * problem.edgeGap - width;
  const slots = (first: 0 | 1) =>
    Array.from({ length: count }, (_, index): Slot => {
      const start = lead + Math.floor(((2 * index + first) * reach) / (2 * count - 1));
      const stock = problem.repeat[0]?.stock ?? '';
      return { kind: 'slat', stock, start, end: start + width, ripped: false, item: 0 };
    });
  return { front: { slots: slots(0), space: used }, back: { slots: slots(1), space: used } };
}

const widthOf = ({ repeat }: FitProblem): Ticks => repeat[0]?.width ?? 0;

/** Space for `count` slats on each face at the nominal gap; a half tick counts as one. */
function need(problem: FitProblem, count: number): Ticks {
  const { gap, edgeGap } = problem;
  return 2 * edgeGap + Math.ceil(((2 * count + 1) * widthOf(problem) + (2 * count - 1) * gap) / 2);
}

function nominal(problem: FitProblem): number {
  return greatestCount((count) => count === 0 || need(problem, count) <= problem.space);
}

/** The gap with which `count` slats on each face fill the space. */
function gapFor(problem: FitProblem, count: number): number {
  const { space, edgeGap, edgeHalf } = problem;
  const free = 2 * space - (2 * count + 1) * widthOf(problem);
  return edgeHalf ? free / (2 * count + 1) : (free - 4 * edgeGap) / (2 * count - 1);
}

function draftOf(problem: FitProblem, count: number, different: Partial<Draft> & Pick<Draft, 'kind'>): Draft {
  const { gap, edgeGap, ends, upright } = problem;
  const at = ends && !upright ? { bottom: ends.bottom.low, height: ends.height.high } : {};
  return { count, gap, lead: edgeGap, tail: edgeGap, ...at, gapChange: 0, taken: 0, moved: 0, ...different };
}

function choose(problem: FitProblem, asks: readonly Ask[]): Draft | undefined {
  const count = nominal(problem);
  if (count > 0 && need(problem, count) === problem.space)
    return draftOf(problem, count, { kind: 'as-drawn' });
  for (const ask of triedInOrder(problem, asks)) {
    const [best] = draftsFor(problem, ask).sort((a, b) => a.gapChange - b.gapChange || b.count - a.count);
    if (best) return best;
  }
  return undefined;
}

function draftsFor(problem: FitProblem, ask: Ask): Draft[] {
  if (ask.kind === 'gaps') return withGaps(problem, ask.low, ask.high);
  return ask.kind === 'move-ends' ? movedEnds(problem) : [];
}

/** Every count whose gap is from `low` to `high`. */
function withGaps(problem: FitProblem, low: number, high: number): Draft[] {
  const last = greatestCount((count) => count === 0 || gapFor(problem, count) >= Math.max(0, low));
  const drafts: Draft[] = [];
  for (let count = last; count > 0 && gapFor(problem, count) <= high; count--)
    drafts.push(gapsDraft(problem, count));
  return drafts;
}

function gapsDraft(problem: FitProblem, count: number): Draft {
  const gap = gapFor(problem, count);
  const gapChange = Math.ceil(Math.abs(gap - problem.gap));
  const half = problem.edgeHalf ? { lead: Math.floor(gap / 2), tail: Math.ceil(gap / 2) } : {};
  return draftOf(problem, count, { kind: 'gaps', gap, gapChange, ...half });
}

/** At the nominal gap: level, the bottom rises and then the top comes down; upright, both edges share the rest. */
function movedEnds(problem: FitProblem): Draft[] {
  const { ends, upright, edgeGap, space } = problem;
  const count = nominal(problem);
  const spare = space - need(problem, count);
  if (count === 0 || spare === 0) return [];
  if (upright) {
    const lead = edgeGap + Math.floor(spare / 2);
    const tail = edgeGap + Math.ceil(spare / 2);
    return [draftOf(problem, count, { kind: 'move-ends', lead, tail, moved: spare })];
  }
  if (!ends || !hasBand(problem)) return [];
  const rise = ends.bottom.high - ends.bottom.low;
  if (spare > rise + ends.height.high - ends.height.low) return [];
  const bottom = ends.bottom.low + Math.min(spare, rise);
  const height = ends.height.high - Math.max(0, spare - rise);
  return [draftOf(problem, count, { kind: 'move-ends', bottom, height, moved: spare })];
}

/** Where the text holds both ends still: the bottom anywhere it usually is. */
function usualEnds(problem: FitProblem): Draft[] {
  const { ends, upright, measure, space } = problem;
  if (upright || !ends || hasBand(problem)) return [];
  const { low, high } = usualBottom(measure);
  const most = nominal({ ...problem, space: space + Math.max(0, ends.bottom.low - low) });
  return [most, most - 1]
    .filter((count) => count > 0)
    .map((count) => space - need(problem, count))
    .flatMap((spare, index): Draft[] => {
      const bottom = ends.bottom.low + spare;
      if (spare === 0 || bottom < low || bottom > high) return [];
      return [draftOf(problem, most - index, { kind: 'move-ends', bottom, moved: Math.abs(spare) })];
    });
}

/** Counts whose faces still overlap enough, with their gaps, and moved ends; only what an edit brings about. */
function offers(problem: FitProblem, asks: readonly Ask[], chosen: Draft | undefined): FitChoice[] {
  const gaps = withGaps(problem, 1, widthOf(problem) - 2 * leastOverlap(problem.measure))
    .sort(byRank)
    .slice(0, MOST_OFFERS);
  const found: FitChoice[] = [];
  for (const draft of [...movedEnds(problem), ...usualEnds(problem), ...gaps].sort(byRank)) {
    if (chosen && figuresOf(chosen) === figuresOf(draft)) continue;
    const edit = editsFor(problem, asks, draft).find((each) => {
      const built = choose(edited(problem, each), each.asks ?? asks);
      return built && figuresOf(built) === figuresOf(draft);
    });
    if (edit) found.push({ ...choiceOf(draft, changesFor(problem, edit)), restated: restatedBy(edit) });
  }
  return found;
}

/** Where slats are, whatever it is called that put them there. */
function figuresOf({ count, gap, lead, tail, bottom, height }: Draft): string {
  return [count, gap, lead, tail, bottom, height].join('|');
}

function choiceOf({ taken, moved, ...figures }: Draft, changes: FitChoice['changes'] = []): FitChoice {
  return { ...figures, changes };
}
