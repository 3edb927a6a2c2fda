// What fills a bay or a leaf: the pattern, how it is made to close, and how slats are held.
import type { Ticks } from '../units/index.ts';
import type { Origin, Sourced } from './job-origin.ts';
import type { ChannelStock, FlatStock } from './job-stock.ts';

/** The closing rule: which slat may be the last. */
export type EndRule =
  | { readonly kind: 'whole' }
  | { readonly kind: 'anywhere' }
  | { readonly kind: 'on'; readonly slat: string };

/** What may be done so that the pattern fills its height; tried in the order written. */
export type Remedy =
  | { readonly kind: 'move-ends' }
  | { readonly kind: 'gaps'; readonly low: Ticks; readonly high: Ticks }
  | { readonly kind: 'short-repeat' }
  | { readonly kind: 'rip-last'; readonly least?: Ticks }
  | { readonly kind: 'change-width'; readonly slat: string; readonly width: Ticks }
  | { readonly kind: 'trim'; readonly board?: FlatStock; readonly edge: 'top' | 'bottom' };

/** A pattern with its parameters filled in. Reads top to bottom; upright, left to right from the front. */
export interface PatternSpec {
  readonly name: string;
  readonly origin: Origin;
  /** One whole repeat; `2 of strip` stands as two items with the same origin. */
  readonly repeat: readonly Sourced<FlatStock>[];
  readonly gap: Sourced<Ticks>;
  /** Outside the first and last slat. */
  readonly edgeGap: Sourced<Ticks>;
  /** The edge gap is stated as half the gap, so that it follows when a fit changes the gaps. */
  readonly edgeHalf?: boolean;
  readonly end: Sourced<EndRule>;
}

/** Remedies asked for, and where: in the run or gate itself, else in its pattern. */
export interface FitSpec {
  readonly remedies: readonly Sourced<Remedy>[];
  readonly origin: Origin;
}

/** How the pattern is turned before it is built. */
export interface FlipSpec {
  readonly upright: boolean;
  /** Where the pattern's top edge goes when upright, as seen from the front. */
  readonly topEdge: 'left' | 'right';
  /** Top to bottom. */
  readonly over: boolean;
  readonly endForEnd: boolean;
  readonly origin: Origin;
}

/** How slats meet what holds them. */
export type Mounting =
  | { readonly kind: 'between' }
  | { readonly kind: 'face'; readonly face: 'front' | 'back' }
  /** The same lines on the front and on the back. */
  | { readonly kind: 'both' }
  /** One board by turns on both faces: the front begins with a slat, the back with a space. */
  | { readonly kind: 'alternate' }
  /** In grooves of what holds their ends, so deep; as wide as stated, else as the thickest slat and `room`. */
  | {
      readonly kind: 'grooves';
      readonly depth: Sourced<Ticks>;
      readonly width?: Sourced<Ticks>;
      readonly room: Ticks;
    }
  /** In channels on what holds their ends. */
  | { readonly kind: 'channels'; readonly channel: Sourced<ChannelStock> }
  /** Through posts of two halves that clamp them. */
  | { readonly kind: 'split' };

/** How the screws of slats are kept from telling one side from the other. */
export type ScrewsLook = 'hidden' | 'plugged' | 'alternate';

/** What a run and a gate leaf have in common: slats of a pattern in a frame. */
export interface InfillSpec {
  readonly pattern: PatternSpec;
  /** The statement that asks for the pattern, here or, for a gate that states none, in its run. */
  readonly fill: Origin;
  readonly flip: FlipSpec;
  readonly fit: FitSpec;
  readonly mounting: Sourced<Mounting>;
  /** Holds slats that stand between posts, rails or stiles; needed for `between` only. */
  readonly cleat?: Sourced<FlatStock>;
  readonly endGap: Sourced<Ticks>;
  /** Their heads are in sight where nothing is said. */
  readonly screws?: Sourced<ScrewsLook>;
}
