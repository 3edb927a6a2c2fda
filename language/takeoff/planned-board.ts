import type { Piece } from '../layout/index.ts';
import type { HandStock } from '../model/index.ts';
import type { Ticks } from '../units/index.ts';
import {
  type CutBoard,
  type CutEnd,
  type CutPart,
  type CutPlace,
  type CutStrip,
  turnedEnds,
} from './cutting/index.ts';

/** A piece with the length it is sawn to, from tip to tip. */
export interface TakenPiece {
  readonly piece: Piece;
  readonly length: Ticks;
  /** Where they are not both square. */
  readonly ends?: readonly [CutEnd, CutEnd];
}

/** A piece where it lies. */
export interface SawnPiece extends TakenPiece {
  /** Its ends as they lie; the first is nearer to the start of the board. */
  readonly ends?: readonly [CutEnd, CutEnd];
  /** Its tip, from the start of the part it is in. */
  readonly at: Ticks;
}

/** As long as a square piece with as much wood in it. */
export const middleOf = ({ length, ends }: TakenPiece): Ticks =>
  (ends ?? []).reduce((sum, { across, through }) => sum - (Math.abs(across) + Math.abs(through)) / 2, length);

/** A board and the pieces cut from it. */
export interface PlannedBoard {
  /** Its stock: what is bought, or what lies in the yard, which may be a strip already. */
  readonly stock: string;
  /** All of it, or what is usable of a board with defects. */
  readonly length: Ticks;
  readonly width: Ticks;
  /** The board in the yard that it is, or is part of; it costs nothing. */
  readonly onHand?: HandStock;
  /** What it is crosscut into: longest first, or with angled ends so that alike ones meet. */
  readonly parts: readonly PlannedPart[];
  /** Left behind the last cut. */
  readonly offcut: Ticks;
}

/** One piece as wide as the board; or a part that is ripped into strips, which are then crosscut. */
export interface PlannedPart {
  readonly length: Ticks;
  /** Its tip, from the start of the board, trim taken off. */
  readonly at: Ticks;
  readonly ripped: boolean;
  /** Widest first. */
  readonly strips: readonly PlannedStrip[];
}

export interface PlannedStrip {
  readonly width: Ticks;
  /** Longest first, or as they lie. */
  readonly pieces: readonly SawnPiece[];
  readonly offcut: Ticks;
}

/** All pieces of a board, in the order they are cut. */
export function piecesOf({ parts }: PlannedBoard): readonly SawnPiece[] {
  return parts.flatMap(({ strips }) => strips.flatMap(({ pieces }) => pieces));
}

/**
 * Passes of the saw through a board: each piece is cut off once, a part to be ripped too, and each strip ripped off it. An
 * end that is not cut like the one before it takes a pass of its own.
 */
export function cutsOf({ parts }: PlannedBoard): number {
  const row = parts.map(({ ripped, strips }) => (ripped ? undefined : strips[0]?.pieces[0]));
  return parts.reduce((sum, { ripped, strips }) => {
    const pieces = strips.reduce((all, strip) => all + strip.pieces.length, 0);
    const unlike = ripped ? strips.reduce((all, strip) => all + unlikeEnds(strip.pieces), 0) : 0;
    return sum + pieces + unlike + (ripped ? 1 + strips.length : 0);
  }, unlikeEnds(row));
}

/** First ends that are cut otherwise than what lies before them, or than the square end of the board. */
function unlikeEnds(row: readonly (SawnPiece | undefined)[]): number {
  const slope = (end: CutEnd | undefined) => `${end?.across ?? 0} ${end?.through ?? 0} ${end?.kerf ?? ''}`;
  return row.filter((one, at) => {
    const [before, first] = [row[at - 1]?.ends?.[1], one?.ends?.[0]];
    return (before || first) && slope(before) !== slope(first) && !(isSquare(before) && isSquare(first));
  }).length;
}

const isSquare = (end: CutEnd | undefined): boolean => !end || (end.across === 0 && end.through === 0);

/**
 * A board of the planner, which knows pieces by their labels, with a piece for each label.
 *
 * @param take gives a piece of a label that is not given yet
 */
export function plannedBoard(
  board: CutBoard,
  about: Pick<PlannedBoard, 'stock' | 'width' | 'length' | 'onHand'>,
  kerf: Ticks,
  take: (label: string) => TakenPiece | undefined,
): PlannedBoard {
  const { offcut, parts, pieces, places } = board;
  const isLaid = places !== undefined || parts?.some(({ at }) => at !== undefined) === true;
  const whole = (one: SawnPiece): PlannedPart => ({
    length: one.length,
    at: one.at,
    ripped: false,
    strips: [{ width: about.width, pieces: [{ ...one, at: 0 }], offcut: 0 }],
  });
  const partOf = ({ length, at = 0, strips }: CutPart): PlannedPart[] => {
    const [only] = strips;
    if (only && strips.length === 1 && only.width === about.width)
      return rowOf(only, kerf, take).map((one) => whole({ ...one, at: at + one.at }));
    const ripped = strips.map((strip) => ({
      width: strip.width,
      pieces: rowOf(strip, kerf, take),
      offcut: strip.offcut,
    }));
    return [{ length, at, ripped: true, strips: ripped }];
  };
  const all = parts ? parts.flatMap(partOf) : rowOf({ pieces, places }, kerf, take).map(whole);
  return { ...about, offcut, parts: isLaid ? all : endToEnd(all, kerf) };
}

/** Pieces of one row where they lie; without places longest first, end to end. */
function rowOf(
  { pieces, places }: Pick<CutStrip, 'pieces'> & { readonly places?: readonly CutPlace[] | undefined },
  kerf: Ticks,
  take: (label: string) => TakenPiece | undefined,
): readonly SawnPiece[] {
  const taken = pieces.flatMap((label) => take(label) ?? []);
  if (!places)
    return endToEnd(
      taken.map((one) => ({ ...one, at: 0 })),
      kerf,
    );
  return taken.map((one, k) => {
    const { at = 0, turn = 'none' } = places[k] ?? {};
    return { ...one, at, ...(one.ends ? { ends: turnedEnds(one.ends, turn) } : {}) };
  });
}

/** Longest first, a cut between any two. */
function endToEnd<One extends { readonly length: Ticks; readonly at: Ticks }>(
  list: readonly One[],
  kerf: Ticks,
): One[] {
  let at = 0;
  return [...list]
    .sort((a, b) => b.length - a.length)
    .map((one) => {
      const placed = { ...one, at };
      at += one.length + kerf;
      return placed;
    });
}
