// Where a run stands: posts, ground, decks, neighbors, what is in its way.
import type { Ticks } from '../units/index.ts';
import type { Origin, Sourced } from './job-origin.ts';
import type { FlatStock } from './job-stock.ts';

export type PostSpacing =
  | { readonly kind: 'at-most'; readonly limit: Ticks; readonly measured: 'clear' | 'on-center' }
  | { readonly kind: 'bays'; readonly count: number }
  | { readonly kind: 'posts'; readonly count: number }
  /** Faces nearest station 0 of the posts; the end posts are there whether listed or not. */
  | { readonly kind: 'stations'; readonly stations: readonly Sourced<Ticks>[] };

/**
 * What closes the offset between two runs that stand in planes apart: a short leg of slats square to both, boards
 * that stand between them, or a bay at an angle from one plane to the other.
 */
export type Bridge =
  | { readonly kind: 'return' | 'panel'; readonly origin: Origin }
  | { readonly kind: 'filler'; readonly board: Sourced<FlatStock>; readonly origin: Origin };

/** How two runs meet: at a post that slats die into; this run's slats past the first's, against them, or mitered with them. */
export type CornerKind = 'post' | 'lap' | 'butt' | 'miter';

/**
 * Where station 0 of a run is on the plan: at a point, going in a direction, or at the end of another run.
 * Bearings are degrees clockwise from north, as on a compass. A turn is in degrees, positive to the left of
 * one who walks the first run from its station 0 (that is toward its back), 0 straight on.
 */
export type Placement =
  | {
      readonly kind: 'at';
      readonly east: Sourced<Ticks>;
      readonly north: Sourced<Ticks>;
      readonly bearing: Sourced<number>;
      readonly origin: Origin;
    }
  | {
      /** Straight on with a space between, from face to face of the posts. */
      readonly kind: 'on';
      readonly run: string;
      readonly gap: Sourced<Ticks>;
      /** Of the middle line of its posts from that of the first run's, positive toward the back. */
      readonly step?: Sourced<Ticks>;
      /** Left open where nothing is stated. */
      readonly bridge?: Bridge;
      readonly origin: Origin;
    }
  | {
      readonly kind: 'after';
      readonly run: string;
      readonly turn: Sourced<number>;
      readonly corner: Sourced<CornerKind>;
      readonly origin: Origin;
    };

/** Ground at a station of a run, from the datum. */
export interface GroundLevel {
  readonly station: Ticks;
  readonly level: Ticks;
  readonly origin: Origin;
}

/**
 * One top line and the same course lines for all of the run, more courses below where the ground falls away; bays
 * that step down with the ground, by whole pitches of the pattern; or rails that slope with it from post to post,
 * upright slats plumb on them.
 */
export type Slope = 'level-top' | 'in-steps' | 'racked';

/** A stretch of the run where no hole may be: a pipe, a root, a tap. */
export interface NoHole {
  readonly from: Ticks;
  readonly to: Ticks;
  readonly reason?: string;
  /** A buried line that feeds others: work near it is by hand. */
  readonly utility?: true;
  readonly origin: Origin;
}

/** What the hole of each post is like. */
export interface HoleSpec {
  readonly diameter: Sourced<Ticks>;
  /** Below the post. */
  readonly gravel: Sourced<Ticks>;
}

/** How posts are held at the edge of a deck. */
export type DeckHold = 'outside-rim' | 'inside-frame' | 'footing';

/** Where stairs go down from the edge of a deck, away from it. */
export interface StairHead {
  /** Stations of the run on the deck between which the stairs are. */
  readonly from: Ticks;
  readonly to: Ticks;
  /** From the deck's surface to the ground. */
  readonly down: Ticks;
  /** How many steps down it takes to the ground, the one off the deck and the one onto the ground among them. */
  readonly risers: number;
  /** From nosing to nosing, level. */
  readonly going: Ticks;
  readonly origin: Origin;
}

/** A deck edge that a run stands on. Stations are those of the run; joists and blocking by their middles. */
export interface DeckSpec {
  readonly name: string;
  readonly origin: Origin;
  readonly statement: Origin;
  readonly hold: Sourced<DeckHold>;
  /** From the datum. */
  readonly surface: Sourced<Ticks>;
  readonly boards: Sourced<Ticks>;
  readonly joist: { readonly thickness: Ticks; readonly depth: Ticks; readonly origin: Origin };
  /** Square to the edge, from station 0 to the end of the run. Empty where they lie along it. */
  readonly joists: readonly Ticks[];
  /** All layers together. */
  readonly rim: Sourced<Ticks>;
  readonly blocking: readonly Ticks[];
  /** The statement that says where blocking is. */
  readonly blockingAt?: Origin;
  /** From the datum, where it is stated. */
  readonly ground?: Sourced<Ticks>;
  readonly stairs?: readonly StairHead[];
}
