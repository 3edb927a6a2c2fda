/** Pieces of one length, wanted so many times. Lengths are in any one unit; what is asked need not be whole. */
export interface CutDemand {
  readonly label: string;
  readonly length: number;
  /** Across the grain. Stated of all pieces and all stock, or of none; what is narrower than its board is ripped. */
  readonly width?: number;
  readonly count: number;
  /** Where they are not cut square: `length` is then from tip to tip. All pieces of a label are cut alike. */
  readonly ends?: readonly [first: CutEnd, second: CutEnd];
}

/**
 * An end of a piece, by how far its cut goes along the board over all of the width, and over all of the thickness: forward
 * with growing width or thickness, or, below 0, backward.
 */
export interface CutEnd {
  readonly across: number;
  readonly through: number;
  /** How much the cut takes along the board. */
  readonly kerf: number;
}

/** How a piece is turned by half a turn on its board: end for end with the same face up, over about its length, or both. */
export type CutTurn = 'none' | 'end' | 'over' | 'end-over';

/** Where a piece lies: its tip, from the start of the row it is in, trim taken off; and how it is turned. */
export interface CutPlace {
  readonly at: number;
  readonly turn: CutTurn;
}

/** Boards of one length as they can be had. */
export interface CutStock {
  readonly length: number;
  readonly width?: number;
  /** Of one board, in whole minor units of money; 0 for what lies in the yard. */
  readonly price: number;
  /** How many there are; without it, as many as wanted. */
  readonly available?: number;
}

/** What is to be cut, from what, with which saw. */
export interface CutInstance {
  /**
   * Width of a cut; one goes between any two pieces of a board: `sum(length + kerf) <= stock + kerf`. Of strips side by
   * side alike: `sum(width + kerf) <= width of the board + kerf`.
   */
  readonly kerf: number;
  /** Taken off each board before it is cut, both ends together. */
  readonly trim?: number;
  /** Offcuts at least so long are worth keeping: of plans alike, those with more of them are taken. */
  readonly keep?: number;
  /**
   * Of plans that cost at most this share more than the least (0: none but the cheapest), one with the fewest settings of
   * the saw is sought. Without it settings are no matter.
   */
  readonly settingsWithin?: number;
  /** Whether both faces of all stock are alike, so that pieces may be cut with the other one up. */
  readonly turnsOver?: boolean;
  /** What pieces with angled ends need of a board is rounded to this. */
  readonly mark?: number;
  readonly pieces: readonly CutDemand[];
  readonly stock: readonly CutStock[];
}

/** A board and the pieces cut from it, longest first. */
export interface CutBoard {
  /** Which of the instance's stock, from 0. */
  readonly stock: number;
  readonly length: number;
  readonly price: number;
  readonly pieces: readonly string[];
  /** What is left of it behind the last cut. */
  readonly offcut: number;
  /** Where some have angled ends and none is ripped: where each lies, pieces in the order they lie. */
  readonly places?: readonly CutPlace[];
  /** Where pieces have widths: what the board is crosscut into, longest first, or in the order they lie. */
  readonly parts?: readonly CutPart[];
}

/** A part of a board, crosscut and then ripped; or one piece as wide as the board. */
export interface CutPart {
  readonly length: number;
  /** Where some pieces have angled ends: its tip, from the start of the board, trim taken off. */
  readonly at?: number;
  /** Side by side, widest first; each is crosscut once more where it holds shorter pieces, or several. */
  readonly strips: readonly CutStrip[];
}

export interface CutStrip {
  readonly width: number;
  readonly pieces: readonly string[];
  /** Where some pieces have angled ends: where each lies in the part. */
  readonly places?: readonly CutPlace[];
  readonly offcut: number;
}

/** A plan, and how good it is known to be. */
export interface CutPlan {
  readonly boards: readonly CutBoard[];
  /** Sum of the prices of its boards. */
  readonly cost: number;
  /** No plan costs less than this. */
  readonly bound: number;
  /**
   * How often the stop is set where boards cut alike are cut together: once for each length of each way to cut a board.
   * Where boards are ripped: for the lengths of parts and of pieces, and the fence for each width.
   */
  readonly settings: number;
  /** Where fewest were asked for: no plan that costs as little as it was asked takes fewer. */
  readonly settingsBound?: number;
  /**
   * Whether the plan is known to be the cheapest: its cost is its bound. Where fewest settings were asked for, whether it is
   * known what is least, and that no plan for so much takes fewer settings.
   */
  readonly proven: boolean;
}

/**
 * Why there is no plan: pieces that no board is long enough for, or wide enough; more pieces than limited stock gives, with those that
 * are left when it is cut as full as it goes; or none found yet, nor shown that there is none.
 */
export type NoPlan =
  | { readonly kind: 'too-long'; readonly labels: readonly string[]; readonly longest: number }
  | { readonly kind: 'too-wide'; readonly labels: readonly string[]; readonly widest: number }
  | { readonly kind: 'too-few-boards'; readonly lacking: readonly { label: string; count: number }[] }
  | { readonly kind: 'none-yet' };

/** The same in whole numbers, alike lengths together, longest first, only stock that can be worth using. */
export interface Problem {
  /** Space each piece takes: its length and a kerf; where boards are ripped, times its width and a kerf. */
  readonly sizes: readonly number[];
  readonly demands: readonly number[];
  /** Space each board gives: its length less trim, and a kerf; where boards are ripped, times its width and a kerf. */
  readonly capacities: readonly number[];
  /** Combined cost: price times `scale`, and 1 for a board that is bought, so that fewer boards break ties. */
  readonly costs: readonly number[];
  /** Infinity where there are as many as wanted. */
  readonly available: readonly number[];
  readonly scale: number;
  /** Space of an offcut worth keeping, with a kerf; Infinity where none is. */
  readonly keep: number;
  /** Lengths of the instance in one unit of size. */
  readonly unit: number;
  /** Which of the instance's pieces have each size, and which of its stock each board is. */
  readonly labels: readonly (readonly string[])[];
  readonly stockOf: readonly number[];
  /** Where pieces are ripped from boards: which fillings a board can have is then more than a matter of space. */
  readonly ripping?: Ripping;
}

/**
 * How boards are cut that are ripped as well: crosscut into parts, each part ripped into strips, each strip crosscut into
 * pieces. Pieces as wide as the board are strips without a neighbor. Whole numbers, each with a kerf.
 */
export interface Ripping {
  /** By size: along the board, and which width, by its place in `widths`. */
  readonly along: readonly number[];
  readonly widthOf: readonly number[];
  /** Widest first. */
  readonly widths: readonly number[];
  /** By stock: room along it, and which of `across` it has. */
  readonly room: readonly number[];
  readonly acrossOf: readonly number[];
  /** Room across, as boards have it; and of each the ways to fill it with strips, as many of each width. */
  readonly across: readonly number[];
  readonly ways: readonly (readonly (readonly number[])[])[];
  /** Lengths are rounded up to a coarser step, so that only space bounds what a board can hold. */
  readonly coarse: boolean;
  /** In the unit of the instance: widths without their kerf, and the kerf. */
  readonly shown: readonly number[];
  readonly kerf: number;
}

/** A part of a board in terms of a problem: its space along, and the pieces in each of its strips. */
export interface Segment {
  readonly along: number;
  readonly strips: readonly Strip[];
}

export interface Strip {
  /** By its place in `widths`. */
  readonly width: number;
  readonly items: readonly number[];
  readonly counts: readonly number[];
}

/** So many pieces of each size from one board of one stock. */
export interface Pattern {
  readonly stock: number;
  /** Sizes it has, ascending, and how many of each. */
  readonly items: readonly number[];
  readonly counts: readonly number[];
  /** Where boards are ripped: one way to cut it. */
  readonly segments?: readonly Segment[];
}

/** A plan in terms of a problem: patterns, and how often each is cut. */
export type Packing = readonly { readonly pattern: Pattern; readonly times: number }[];

export function costOf(packing: Packing, { costs }: Problem): number {
  return packing.reduce((sum, { pattern, times }) => sum + times * (costs[pattern.stock] as number), 0);
}
