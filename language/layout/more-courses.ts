import type { InfillSpec } from '../model/index.ts';
import type { Ticks } from '../units/index.ts';
import type { FitChoice } from './layout.ts';
import type { Line } from './lines.ts';

/**
 * Level lines with more courses below, as the pattern goes on, down to `floor`. Slat by slat: the closing rule
 * holds for the courses that all of the run has, not for those added.
 */
export function goOnBelow(
  infill: InfillSpec,
  lines: readonly Line[],
  chosen: FitChoice | undefined,
  floor: Ticks,
): readonly Line[] {
  const all = [...lines];
  const most = lines.length + MOST_ADDED;
  while (all.length < most) {
    const next = courseBelow(infill, all, lines, chosen);
    if (!next || next.low - infill.pattern.edgeGap.value < floor) break;
    all.push(next);
  }
  return all;
}

/** The course that comes below `all`, which go on from the lines as `fitted`. */
export function courseBelow(
  infill: InfillSpec,
  all: readonly Line[],
  fitted: readonly Line[],
  chosen: FitChoice | undefined,
): Line | undefined {
  const { repeat } = infill.pattern;
  const slats = fitted.filter(({ kind }) => kind === 'slat').length;
  const course = slats + all.length - fitted.length + 1;
  const [above, lowest] = fitted.slice(-2);
  // As laid out: on alternate faces, those of one face are farther apart.
  const gap = above && lowest ? above.low - lowest.high : gapOf(infill, chosen);
  const last = all.at(-1);
  // Turned over, the pattern reads upward: what is below its first slat comes before it.
  const at = infill.flip.over ? slats - course : course - 1;
  const item = repeat[((at % repeat.length) + repeat.length) % repeat.length];
  if (!last || !item || slats === 0) return undefined;
  const stock = item.value;
  const changed = chosen?.kind === 'change-width' && chosen.slat === stock.name ? chosen.width : undefined;
  const width = changed ?? stock.width.value;
  const high = last.low - gap;
  const from = [item.origin, stock.origin, infill.pattern.origin];
  return { kind: 'slat', course, stock, ripped: width < stock.width.value, low: high - width, high, from };
}

/** More are a slip of the pen. */
const MOST_ADDED = 2_000;

const gapOf = ({ pattern }: InfillSpec, chosen: FitChoice | undefined): Ticks =>
  Math.round(chosen?.gap ?? pattern.gap.value);

/**
 * By how much level lines may move up or down and fall on one another: the pitch of a pattern of one width,
 * else its shortest stretch that repeats, mostly the whole repeat.
 */
export function pitchOf(infill: InfillSpec, lines: readonly Line[], chosen: FitChoice | undefined): Ticks {
  const period = periodOf(infill);
  const slats = lines.filter(({ kind }) => kind === 'slat');
  const [first, again] = [slats[0], slats[period]];
  // As laid out, to the tick: spread gaps differ by one.
  if (first && again) return first.high - again.high;
  const widths = infill.pattern.repeat
    .slice(0, period)
    .reduce((sum, { value }) => sum + value.width.value, 0);
  return widths + period * gapOf(infill, chosen);
}

/** Slats of the shortest stretch of the repeat that repeats itself. */
export function periodOf({ pattern }: InfillSpec): number {
  const names = pattern.repeat.map(({ value }) => value.name);
  const shorter = names.findIndex(
    (_, at) =>
      at > 0 && names.length % at === 0 && names.every((name, i) => name === names[(i + at) % names.length]),
  );
  return shorter < 0 ? names.length : shorter;
}
