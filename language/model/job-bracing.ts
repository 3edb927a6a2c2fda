// What sets the posts of a run and comes off again.
import type { Ticks } from '../units/index.ts';
import type { Origin, Sourced } from './job-origin.ts';
import type { FlatStock } from './job-stock.ts';

/** Strips from post to post, and two braces from stakes to each post, till its concrete is hard. */
export interface BracingSpec {
  readonly board: Sourced<FlatStock>;
  readonly stake: Sourced<FlatStock>;
  readonly stakeLength: Sourced<Ticks>;
  /** Where the middle of a brace meets the middle of its post, above the ground; two thirds of the post when left out. */
  readonly up?: Sourced<Ticks>;
  /** From the middle of the post to that of the stake, level; as far as it is up when left out. */
  readonly out?: Sourced<Ticks>;
  /** Lower edges of the strips, above the highest ground of their bay; the high one ends with the posts when left out. */
  readonly low: Sourced<Ticks>;
  readonly high?: Sourced<Ticks>;
  /** The pieces go on from bay to bay, so that no more are needed than one bay takes. */
  readonly again: boolean;
  /** How high braces meet the posts and how far out they stand, where that is stated. */
  readonly reach?: Origin;
  readonly origin: Origin;
}
