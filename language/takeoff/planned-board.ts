import type { Piece } from '../layout/index.ts';
import type { HandStock } from '../model/index.ts';
import type { Ticks } from '../units/index.ts';
import type { CutBoard, CutPart } from './cutting/index.ts';

/** A piece with the length it is sawn to. */
export interface SawnPiece {
  readonly piece: Piece;
  readonly length: Ticks;
  /** What its angled ends take from the board besides. */
  readonly more: Ticks;
}

/** A board and the pieces cut from it. */
export interface PlannedBoard {
  /** Its stock: what is bought, or what lies in the yard, which may be a strip already. */
  readonly stock: string;
  /** All of it, or what is usable of a board with defects. */
  readonly length: Ticks;
  readonly width: Ticks;
  /** The board in the yard that it is, or is part of; it costs nothing. */
  readonly onHand?: HandStock;
  /** What it is crosscut into: angled ends first, since they take the wider cuts; then longest first. */
  readonly parts: readonly PlannedPart[];
  /** Left behind the last cut. */
  readonly offcut: Ticks;
}

/** One piece as wide as the board; or a part that is ripped into strips, which are then crosscut. */
export interface PlannedPart {
  readonly length: Ticks;
  readonly ripped: boolean;
  /** Widest first. */
  readonly strips: readonly PlannedStrip[];
}

export interface PlannedStrip {
  readonly width: Ticks;
  /** Longest first. */
  readonly pieces: readonly SawnPiece[];
  readonly offcut: Ticks;
}

/** All pieces of a board, in the order they are cut. */
export function piecesOf({ parts }: PlannedBoard): readonly SawnPiece[] {
  return parts.flatMap(({ strips }) => strips.flatMap(({ pieces }) => pieces));
}

/** Passes of the saw through a board: each piece is cut off once, a part to be ripped too, and each strip ripped off it. */
export function cutsOf({ parts }: PlannedBoard): number {
  return parts.reduce((sum, { ripped, strips }) => {
    const pieces = strips.reduce((all, strip) => all + strip.pieces.length, 0);
    return sum + pieces + (ripped ? 1 + strips.length : 0);
  }, 0);
}

/**
 * A board of the planner, which knows pieces by their labels, with a piece for each label.
 *
 * @param take gives a piece of a label that is not given yet
 */
export function plannedBoard(
  { offcut, parts, pieces }: CutBoard,
  about: Pick<PlannedBoard, 'stock' | 'width' | 'length' | 'onHand'>,
  take: (label: string) => SawnPiece | undefined,
): PlannedBoard {
  const taken = (labels: readonly string[]) =>
    labels.flatMap((label) => take(label) ?? []).sort((a, b) => b.more - a.more || b.length - a.length);
  const whole = (label: string): PlannedPart[] =>
    taken([label]).map((one) => ({
      length: one.length,
      ripped: false,
      strips: [{ width: about.width, pieces: [one], offcut: 0 }],
    }));
  const partOf = ({ length: along, strips }: CutPart): PlannedPart[] => {
    const [only] = strips;
    if (only && strips.length === 1 && only.width === about.width) return only.pieces.flatMap(whole);
    return [
      {
        length: along,
        ripped: true,
        strips: strips.map((strip) => ({
          width: strip.width,
          pieces: taken(strip.pieces),
          offcut: strip.offcut,
        })),
      },
    ];
  };
  const widest = ({ strips }: PlannedPart) =>
    Math.max(...strips.flatMap((strip) => strip.pieces.map(({ more }) => more)));
  const all = parts ? parts.flatMap(partOf) : pieces.flatMap(whole);
  return { ...about, offcut, parts: all.sort((a, b) => widest(b) - widest(a) || b.length - a.length) };
}
