import { isInBay, type Piece, type RunLayout } from '../layout/index.ts';
import { type Allotment, allotPieces, type CutPiece, type PlaceToFill } from './allot-pieces.ts';

/** What becomes of slats that are cut, and which are still to cut. */
export interface Recut extends Allotment {
  readonly run: RunLayout;
  /** By key, what is written on them. */
  readonly labels: ReadonlyMap<string, string>;
}

/**
 * Slats of a run that are cut already, given to places of its bays as they stand: see allotPieces. Undefined where
 * none is cut. A slat that two statements say is cut is there once, as the first says.
 */
export function recutOf(run: RunLayout): Recut | undefined {
  const cut = cutSlats(run);
  if (cut.length === 0) return undefined;
  const places = slatsOf(run).map(
    (slat): PlaceToFill => ({ key: slat.key, section: sectionOf(slat), length: slat.cut.longPoint }),
  );
  const all = [...slatsOf(run), ...(run.planned ? slatsOf(run.planned) : [])];
  return {
    ...allotPieces(cut, places),
    run,
    labels: new Map(all.map(({ key, label }) => [key, label])),
  };
}

/** Slats that are said to be cut: to the plan, or to the length stated. */
export function cutSlats({ spec, planned }: RunLayout): readonly CutPiece[] {
  const found = new Map<string, CutPiece>();
  for (const { bay, courses, length } of spec.measured?.cuts ?? []) {
    for (const slat of planned ? slatsOf(planned) : []) {
      const { key, course = 0 } = slat;
      if (!isInBay(slat, bay) || found.has(key)) continue;
      if (courses && (course < courses.first || course > courses.last)) continue;
      const own = length?.value ?? slat.cut.longPoint;
      found.set(key, { key, section: sectionOf(slat), length: own, meantFor: key });
    }
  }
  return [...found.values()];
}

const slatsOf = ({ pieces }: RunLayout): readonly Piece[] =>
  pieces.filter(({ role, gate }) => role === 'slat' && gate === undefined);

/** A board is as wide as it came, whatever it was planned to be; a rip is as wide as it was sawn. */
const sectionOf = ({ cut }: Piece): string =>
  cut.ripped ? `${cut.stock} ${cut.taper ?? cut.width}` : cut.stock;
