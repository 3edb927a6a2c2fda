import { spreadEvenly, type Ticks } from '../../units/index.ts';
import type { FitChoice } from '../layout.ts';
import { type Courses, coursesOf, nominalCount } from './courses.ts';
import { type FitProblem, isSound, usableSpace } from './problem.ts';

/** One piece in its place: offsets from the first edge of the space, in reading order. */
export interface Slot {
  readonly kind: 'slat' | 'trim';
  readonly stock: string;
  readonly start: Ticks;
  readonly end: Ticks;
  /** Narrower than the stock it comes from. */
  readonly ripped: boolean;
  /** Place in the repeat, from 0; -1 for trim. */
  readonly item: number;
}

/** An infill as built. */
export interface Laid {
  readonly slots: readonly Slot[];
  /** From the first edge to the last, with the ends where the choice puts them. */
  readonly space: Ticks;
}

/** Slats and trim as built; the nominal pattern from the first edge when nothing is chosen. */
export function layOut(problem: FitProblem, chosen?: FitChoice): Laid {
  if (!isSound(problem)) return { slots: [], space: usableSpace(problem) };
  const courses = coursesOf(problem);
  if (!chosen) {
    const pieces = slatsOf(courses, nominalCount(courses));
    return { slots: placed(pieces, problem.edgeGap, () => problem.gap), space: problem.space };
  }
  const space = builtSpace(problem, chosen);
  const slats = slatsOf(courses, chosen.count, chosen);
  const pieces = chosen.kind === 'trim' ? withTrim(courses, slats, chosen) : slats;
  const widths = pieces.reduce((sum, { width }) => sum + width, 0);
  const gaps =
    pieces.length > 1 ? spreadEvenly(space - chosen.lead - chosen.tail - widths, pieces.length - 1) : [];
  return { slots: placed(pieces, chosen.lead, (index) => gaps[index] ?? 0), space };
}

type Unplaced = Omit<Slot, 'start' | 'end'> & { readonly width: Ticks };

function slatsOf({ slat, problem }: Courses, count: number, chosen?: FitChoice): Unplaced[] {
  return Array.from({ length: count }, (_, index) => {
    const { stock, width, from } = slat(index + 1);
    const item = index % problem.repeat.length;
    const plain: Unplaced = { kind: 'slat', stock, width, ripped: false, item };
    if (chosen?.width === undefined) return plain;
    if (chosen.kind === 'rip-last' && index === count - 1)
      return { ...plain, width: chosen.width, ripped: true };
    if (chosen.kind !== 'change-width' || stock !== chosen.slat) return plain;
    return { ...plain, width: chosen.width, ripped: chosen.width < from };
  });
}

function withTrim({ problem }: Courses, slats: Unplaced[], { slat, width, edge }: FitChoice): Unplaced[] {
  const stock = slat ?? '';
  const boards = [
    ...problem.trimBoards,
    ...problem.remedies.flatMap((remedy) =>
      remedy.kind === 'trim' && remedy.board
        ? [{ stock: remedy.board.name, width: remedy.board.width.value }]
        : [],
    ),
    ...problem.repeat,
  ];
  const whole = boards.find((board) => board.stock === stock)?.width ?? 0;
  const trim: Unplaced = { kind: 'trim', stock, width: width ?? 0, ripped: (width ?? 0) < whole, item: -1 };
  return edge === 'top' ? [trim, ...slats] : [...slats, trim];
}

function placed(pieces: readonly Unplaced[], lead: Ticks, gapAfter: (index: number) => Ticks): Slot[] {
  let start = lead;
  return pieces.map(({ width, ...piece }, index) => {
    const slot = { ...piece, start, end: start + width };
    start = slot.end + gapAfter(index);
    return slot;
  });
}

function builtSpace({ space, ends }: FitProblem, { bottom, height }: FitChoice): Ticks {
  if (!ends || bottom === undefined || height === undefined) return space;
  return space - (bottom - ends.bottom.low) - (ends.height.high - height);
}
