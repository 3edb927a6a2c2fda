import type { FlatStock, InfillSpec, Origin } from '../model/index.ts';
import type { Ticks } from '../units/index.ts';
import type { Laid, Slot } from './fit/index.ts';
import type { Incline } from './incline.ts';
import type { Course } from './layout.ts';

/** One slat or trim board of an infill where it stands, the same in every bay that shares it. */
export interface Line {
  readonly kind: 'slat' | 'trim';
  /** Of slats, from the top or the left. */
  readonly course?: number;
  readonly stock: FlatStock;
  readonly ripped: boolean;
  /** Heights from the datum when level, stations when upright. */
  readonly low: Ticks;
  readonly high: Ticks;
  /** Of a course that follows the ground: its bottom edge, of which `low` is the lowest. */
  readonly taper?: Incline;
  readonly from: readonly Origin[];
}

/**
 * Lines from the top, or from the left, whichever way the pattern reads. `edge` is the top of the place, or
 * its left. A level pattern that does not close keeps to the top, so that what is left over lies at the
 * bottom.
 */
export function linesOf(infill: InfillSpec, laid: Laid, edge: Ticks, closed: boolean): readonly Line[] {
  const { upright } = infill.flip;
  const last = laid.slots.at(-1);
  const used = last ? last.end + infill.pattern.edgeGap.value : 0;
  const extent = closed || upright ? laid.space : used;
  const backward = readsBackward(infill);
  const slots = backward ? laid.slots.toReversed() : laid.slots;
  const origins = new Map<number, readonly Origin[]>();
  let course = 0;
  return slots.map((slot): Line => {
    const near = backward ? extent - slot.end : slot.start;
    const far = backward ? extent - slot.start : slot.end;
    let from = origins.get(slot.item);
    if (!from) {
      from = originsOf(infill, slot);
      origins.set(slot.item, from);
    }
    return {
      kind: slot.kind,
      course: slot.kind === 'slat' ? ++course : undefined,
      stock: stockOf(infill, slot),
      ripped: slot.ripped,
      low: upright ? edge + near : edge - far,
      high: upright ? edge + far : edge - near,
      from,
    };
  });
}

/** Whether the pattern's first slat is at the bottom, or at the right. */
function readsBackward({ flip }: InfillSpec): boolean {
  return flip.upright ? (flip.topEdge === 'right') !== flip.over : flip.over;
}

function originsOf({ pattern, fit }: InfillSpec, { item }: Slot): readonly Origin[] {
  const slat = pattern.repeat[item];
  if (!slat) return [fit.origin, pattern.origin];
  return [slat.origin, slat.value.origin, pattern.origin];
}

/** A trim board is found by its name among all that a fit may take. */
function stockOf({ pattern, fit }: InfillSpec, { item, stock }: Slot): FlatStock {
  const slat = pattern.repeat[item]?.value;
  if (slat) return slat;
  const asked = fit.remedies.flatMap(({ value }) =>
    value.kind === 'trim' && value.board ? [value.board] : [],
  );
  const own = pattern.repeat.flatMap(({ value }) => (value.parent ? [value, value.parent] : [value]));
  const found = [...asked, ...own].find(({ name }) => name === stock);
  if (!found) throw new Error(`trim of unknown stock ${stock}`);
  return found;
}

/** The slats among the lines, as courses. */
export function coursesOf(lines: readonly Line[], upright: boolean): readonly Course[] {
  return lines.flatMap(({ course, low, high, stock, ripped }): Course[] =>
    course === undefined
      ? []
      : [
          {
            number: course,
            start: upright ? low : high,
            end: upright ? high : low,
            stock: stock.name,
            ripped,
          },
        ],
  );
}

/** The thickest of them, which says how far apart cleats are. */
export function thickestOf(lines: readonly Line[]): Ticks {
  return lines.reduce((most, { stock }) => Math.max(most, stock.thickness.value), 0);
}

/** The same of a pattern, whether all of it is laid out or not. */
export function thickestSlat({ pattern }: Pick<InfillSpec, 'pattern'>): Ticks {
  return pattern.repeat.reduce((most, { value }) => Math.max(most, value.thickness.value), 0);
}

/** From the lowest edge of them to the highest. */
export function lineSpan(lines: readonly Line[]): readonly [low: Ticks, high: Ticks] {
  return [Math.min(...lines.map(({ low }) => low)), Math.max(...lines.map(({ high }) => high))];
}
