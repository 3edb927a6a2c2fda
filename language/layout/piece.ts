import type { Origin } from '../model/index.ts';
import type { Ticks } from '../units/index.ts';

/** A point in the run's frame, in ticks: x along from station 0, y through toward the back, z up from the datum. */
export type Vec3 = readonly [x: number, y: number, z: number];

export type Role =
  | 'post'
  | 'slat'
  | 'cleat'
  | 'rail'
  | 'stile'
  | 'brace'
  | 'trim'
  | 'stiffener'
  | 'batten'
  | 'cap'
  | 'collar'
  | 'filler'
  | 'channel'
  | 'spacer'
  | 'cable'
  | 'kick'
  | 'strip'
  | 'prop'
  | 'stake';

/**
 * One end of a piece: angles in degrees from a square cut. Positive where the end leans forward along
 * the grain with growing width or thickness; so both ends of a parallelogram have the same sign, and
 * those of a trapezoid opposite ones.
 */
export interface EndCut {
  /** Across the width. */
  readonly miter: number;
  /** Across the thickness. */
  readonly bevel: number;
}

/** A groove along the grain, in one of the two sides that the width runs between. Ticks. */
export interface Groove {
  /** The side where the width begins, or ends: of a post its left or its right, of a rail its top or its bottom. */
  readonly side: 'start' | 'end';
  /** Along the grain, from the first end at the corner where the section begins. */
  readonly from: Ticks;
  /** Left out where it runs out at the second end. */
  readonly to?: Ticks;
  /** Where it begins through the thickness, and how wide it is there. */
  readonly at: Ticks;
  readonly width: Ticks;
  /** Into the width. */
  readonly depth: Ticks;
}

/** What the saw needs. */
export interface Cut {
  /** Name of the stock it comes from. */
  readonly stock: string;
  readonly width: Ticks;
  readonly thickness: Ticks;
  /** True when it is ripped narrower than the stock it comes from. */
  readonly ripped: boolean;
  /** Ripped with a taper: its width at the first end and at the second, of which `width` is the greater. */
  readonly taper?: readonly [first: Ticks, second: Ticks];
  /** From tip to tip along the grain: what it takes from the board. Whole ticks, rounded down. */
  readonly longPoint: Ticks;
  /** The length that all of the section has in common; equal to the long point when both ends are square. */
  readonly shortPoint: Ticks;
  readonly ends: readonly [EndCut, EndCut];
  /** Of a board scribed to a wall: its width at distances from its first end, ascending; straight between them. */
  readonly scribe?: readonly ScribePoint[];
  /** Of a piece with one edge ripped at an angle, which makes its other face narrower: degrees from square. */
  readonly edge?: number;
  /** Of a hipped cap: thickness left at the rim, and degrees that its four slopes rise. */
  readonly hip?: { readonly edge: Ticks; readonly slope: number };
  /** Of stock that comes plain: what is cut out of it. */
  readonly grooves?: readonly Groove[];
  /** To be marked on it: how far from its first end. */
  readonly marks?: readonly Ticks[];
}

/** How wide a scribed board is at a distance from its first end. Whole ticks, rounded down. */
export interface ScribePoint {
  readonly at: Ticks;
  readonly width: Ticks;
}

/**
 * A convex solid, or one of several convex parts. A straight piece has eight corners: corners 0 to 3 are one end, 4 to 7 the other, in the same order,
 * so that edges 0-4, 1-5, 2-6 and 3-7 run along the grain; 0-1 is the width and 0-3 the thickness.
 * A hipped cap has twelve, in rings of four from below: its underside, its rim, and its ridge or point, where
 * corners coincide. A scribed board has rings of four from its first end to its second, one at each bend of its
 * edge; `parts` are the straight pieces between them, each with eight corners. Of a piece with grooves the corners
 * are those it had before them; `parts` are what is left, `hollows` what was taken out.
 */
export interface Solid {
  readonly vertices: readonly Vec3[];
  /** Missing where it is convex as a whole. */
  readonly parts?: readonly Solid[];
  readonly hollows?: readonly Hollow[];
}

/** What was taken out of a piece for a groove, and the edge of the piece that it is open to. */
export interface Hollow extends Solid {
  readonly side: Groove['side'];
}

/** One physical piece. `cut` and `solid` are made together (see `makePiece`), so they cannot disagree. */
export interface Piece {
  /** Made of names: "bank/b2/c07", "bank/orchard/stile-hinge". */
  readonly key: string;
  /** What is written on it: short, unique within its run (see labels.ts). */
  readonly label: string;
  readonly role: Role;
  readonly run: string;
  readonly gate?: string;
  /** Numbered from 1, from station 0. */
  readonly bay?: number;
  /** The last of the bays it goes through, where it is in more than one; `bay` is the first then. */
  readonly until?: number;
  /** Slats, numbered from 1: from the top; upright, from the left. */
  readonly course?: number;
  /** Which face of the screen it belongs to. */
  readonly side: 'front' | 'middle' | 'back';
  readonly cut: Cut;
  readonly solid: Solid;
  /** Keys of the pieces that hold it; empty for a post, which stands in the ground. */
  readonly supports: readonly string[];
  /** Statements it follows from, the most telling first. */
  readonly from: readonly Origin[];
}
