import { ceilToStep, floorToStep, type Ticks } from '../../units/index.ts';
import { type Courses, countsWithin, coursesOf, firstCount, lastCount } from './courses.ts';
import { type Draft, sharedDraft } from './draft.ts';
import type { GapBand } from './even-gaps.ts';
import { gapTolerance, narrowest } from './habits.ts';
import type { RepeatSlat } from './problem.ts';

/** Every slat of one stock made `width` wide; the little that is still left goes over the gaps. */
export function changedWidth(courses: Courses, stock: string, width: Ticks): Draft[] {
  const slat = courses.problem.repeat.find((each) => each.stock === stock);
  if (!slat || width <= 0 || width > slat.from || width === slat.width) return [];
  const { low, high } = residueGaps(courses);
  const changed = withWidth(courses, stock, width);
  return countsWithin(changed, low, high)
    .filter((count) => courses.mayEnd(count) && courses.countOf(stock, count) > 0)
    .map((count) => changedDraft(courses, slat, count, width));
}

/**
 * For each stock of the repeat, the least change of its width either way. Widths are whole steps of
 * the measure, no wider than can be ripped and no narrower than a strip should be; for each count
 * the one whose gaps come nearest to the nominal gap.
 */
export function leastChanges(courses: Courses): Draft[] {
  const stocks = new Map(courses.problem.repeat.map((slat) => [slat.stock, slat]));
  return [...stocks.values()].flatMap((slat) => {
    const drafts = nearestWidths(courses, slat);
    const wider = drafts.filter(({ width }) => width !== undefined && width > slat.width);
    const narrower = drafts.filter(({ width }) => width !== undefined && width < slat.width);
    return [...leastTaken(wider), ...leastTaken(narrower)];
  });
}

/** The best width for each count that has one. */
function nearestWidths(courses: Courses, slat: RepeatSlat): Draft[] {
  const { gap, measure } = courses.problem;
  const { step } = measure;
  const least = ceilToStep(narrowest(measure), step);
  const most = floorToStep(slat.from, step);
  if (!(step > 0) || least > most) return [];
  const gaps = residueGaps(courses);
  const first = firstCount(withWidth(courses, slat.stock, most), gaps.high);
  const last = lastCount(withWidth(courses, slat.stock, least), gaps.low);
  const drafts: Draft[] = [];
  for (let count = first; count <= last; count++) {
    const changing = courses.countOf(slat.stock, count);
    if (changing === 0 || !courses.mayEnd(count)) continue;
    const shares = courses.shares(count);
    const over = courses.left(count) - shares * gap;
    const ideal = slat.width + over / changing;
    const below = floorToStep(Math.min(ideal, most), step);
    const above = ceilToStep(Math.max(ideal, least), step);
    const widths = [below === slat.width ? below - step : below, above === slat.width ? above + step : above]
      .filter((width) => width >= least && width <= most)
      .map((width) => ({ width, residue: over - changing * (width - slat.width) }))
      .filter(({ residue }) => fits(residue + shares * gap, shares, gaps))
      .sort((a, b) => Math.abs(a.residue) - Math.abs(b.residue) || taken(a, slat) - taken(b, slat));
    if (widths[0]) drafts.push(changedDraft(courses, slat, count, widths[0].width));
  }
  return drafts;
}

const fits = (left: Ticks, shares: number, { low, high }: GapBand): boolean =>
  left >= shares * low && left <= shares * high;

const taken = ({ width }: { width: Ticks }, slat: RepeatSlat): Ticks => Math.abs(width - slat.width);

/** Gaps that hide what a changed width leaves: nearer the nominal one than the tolerance. */
function residueGaps({ problem }: Courses): GapBand {
  const tolerance = gapTolerance(problem);
  return { low: Math.max(0, problem.gap - tolerance + 1), high: problem.gap + tolerance - 1 };
}

function withWidth({ problem }: Courses, stock: string, width: Ticks): Courses {
  const repeat = problem.repeat.map((slat) => (slat.stock === stock ? { ...slat, width } : slat));
  return coursesOf({ ...problem, repeat });
}

function changedDraft(courses: Courses, slat: RepeatSlat, count: number, width: Ticks): Draft {
  const left = courses.left(count) - courses.countOf(slat.stock, count) * (width - slat.width);
  return sharedDraft(courses, count, left, {
    kind: 'change-width',
    slat: slat.stock,
    width,
    taken: taken({ width }, slat),
  });
}

function leastTaken(drafts: readonly Draft[]): Draft[] {
  const [first, ...rest] = drafts;
  if (!first) return [];
  const better = (a: Draft, b: Draft) => a.taken - b.taken || a.gapChange - b.gapChange || b.count - a.count;
  return [rest.reduce((best, draft) => (better(draft, best) < 0 ? draft : best), first)];
}
