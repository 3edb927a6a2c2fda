// Where a run meets a wall of a house, past its first or its last post.
import type { Ticks } from '../units/index.ts';
import type { Origin, Sourced } from './job-origin.ts';
import type { FlatStock } from './job-stock.ts';

export type WallSide = 'start' | 'end';

/** How far a wall is off its plumb line at a height above the ground there; positive toward the run. */
export interface WallPoint {
  readonly height: Ticks;
  readonly toward: Ticks;
  readonly origin: Origin;
}

/** How a wall stands: plumb where nothing is stated. */
export type WallProfile =
  | {
      readonly kind: 'leans';
      /** Toward the run, or away from it where negative, going up by `over`; it is on its plumb line at the ground. */
      readonly by: Ticks;
      readonly over: Ticks;
      readonly origin: Origin;
    }
  | {
      readonly kind: 'points';
      /** By height, the lowest first; straight between them, plumb below the first and above the last. */
      readonly points: readonly WallPoint[];
      readonly origin: Origin;
    };

/** A wall at one end of a run. */
export interface WallSpec {
  readonly origin: Origin;
  /** From the outside face of the end post to the plumb line the wall was measured from. */
  readonly off: Sourced<Ticks>;
  readonly profile?: WallProfile;
}

export interface WallsSpec {
  readonly start?: WallSpec;
  readonly end?: WallSpec;
}

/** An upright board between each end post and its wall, cut to the line of the wall. */
export interface FillerSpec {
  readonly stock: Sourced<FlatStock>;
  /** It may be nowhere narrower. */
  readonly least: Sourced<Ticks>;
  readonly origin: Origin;
}
