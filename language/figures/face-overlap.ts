import { baysOf, type Piece } from '../layout/index.ts';
import { degrees } from '../units/index.ts';
import { type Box, boxOf } from './box.ts';

/** How slats by turns on both faces cover one another. */
export interface FaceOverlap {
  /** The least by which a slat reaches past its neighbor on the other face; negative where a slit is open. */
  readonly overlap: number;
  /** Between the two faces. */
  readonly cavity: number;
  /** Keys of the two slats where it is least. */
  readonly slats: readonly [string, string];
}

/** Measured on the slats of one panel or of panels alike; undefined where no two of them are neighbors through the screen. */
export function faceOverlap(pieces: readonly Piece[]): FaceOverlap | undefined {
  let least: FaceOverlap | undefined;
  for (const slats of panelsOf(pieces)) {
    const axis = readsAlong(slats.map(({ box }) => box));
    slats.sort((a, b) => a.box.low[axis] - b.box.low[axis]);
    for (const [index, one] of slats.entries()) {
      const next = slats[index + 1];
      if (!next || next.piece.side === one.piece.side) continue;
      const overlap = one.box.high[axis] - next.box.low[axis];
      if (least && overlap >= least.overlap) continue;
      const [front, back] = one.piece.side === 'front' ? [one, next] : [next, one];
      const cavity = back.box.low[1] - front.box.high[1];
      least = { overlap, cavity, slats: [one.piece.key, next.piece.key] };
    }
  }
  return least;
}

/**
 * Degrees off straight on from which one begins to see through slats by turns on both faces:
 * `atan(overlap / cavity)`. 0 where they do not overlap, 90 where nothing is between the faces. Common practice
 * and plain geometry: the steepest line past two neighboring edges, gaps being wider than a slat's thickness takes.
 */
export function seeThroughFrom(overlap: number, cavity: number): number {
  return overlap > 0 ? degrees(Math.atan2(overlap, Math.max(0, cavity))) : 0;
}

interface Boxed {
  readonly piece: Piece;
  readonly box: Box;
}

function panelsOf(pieces: readonly Piece[]): Boxed[][] {
  const panels = new Map<number | undefined, Boxed[]>();
  for (const piece of pieces) {
    if (piece.role !== 'slat') continue;
    const boxed = { piece, box: boxOf(piece) };
    for (const bay of piece.bay === undefined ? [undefined] : baysOf(piece)) {
      const list = panels.get(bay) ?? [];
      if (list.length === 0) panels.set(bay, list);
      list.push(boxed);
    }
  }
  return [...panels.values()];
}

/** The direction in which slats follow one another: across their length. */
function readsAlong(boxes: readonly Box[]): 0 | 2 {
  const [first] = boxes;
  if (!first) return 2;
  return first.high[0] - first.low[0] < first.high[2] - first.low[2] ? 0 : 2;
}
