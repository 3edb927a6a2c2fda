// Gates and their leaves.
import type { Ticks } from '../units/index.ts';
import type { InfillSpec } from './job-infill.ts';
import type { Band, Origin, Sourced } from './job-origin.ts';
import type { FlatStock, PostStock } from './job-stock.ts';

/** Two leaves: the one used every day, on the side the hinges are named for, and the other. */
export interface PairSpec {
  /** Between the leaves where they meet. */
  readonly meetingGap: Sourced<Ticks>;
  /** Width of the active leaf; half of what there is when left out. */
  readonly active?: Sourced<Ticks>;
  readonly origin: Origin;
}

/** Which leaf of a pair a gate spec is, and of which gate. */
export interface HalfSpec {
  readonly of: string;
  readonly side: 'left' | 'right';
  readonly active: boolean;
  /** A passive leaf that is the mirror image of the active one. */
  readonly mirrors: boolean;
}

/**
 * Rails of a leaf between the top one and the bottom one: so many rails in all, evenly spaced; or where their middles
 * are, above ground; or on the middles of which courses of the run, so that its lines run on.
 */
export type LeafRails =
  | { readonly kind: 'count'; readonly count: number }
  | { readonly kind: 'at'; readonly heights: readonly Sourced<Ticks>[] }
  | { readonly kind: 'courses'; readonly courses: readonly number[] };

export interface GateSpec {
  readonly name: string;
  readonly origin: Origin;
  /** Clear between gate posts. */
  readonly opening: Sourced<Ticks>;
  /** Where the opening begins: the face of the left gate post that looks into it. */
  readonly station: Sourced<Ticks>;
  readonly hinges: Sourced<'left' | 'right'>;
  /** How many; as many as the leaf needs where nothing is said. */
  readonly hingeCount?: Sourced<number>;
  readonly opensTo?: Sourced<string>;
  /** Where it is asked to be wide enough for a wheelchair. */
  readonly accessible?: Origin;
  readonly hingeGap: Sourced<Ticks>;
  readonly latchGap: Sourced<Ticks>;
  /** The post it hangs on, and the other too where `latchPost` is left out. */
  readonly post: Sourced<PostStock>;
  readonly latchPost?: Sourced<PostStock>;
  /** Depth of its posts below ground; as of the run's other posts when left out. */
  readonly embed?: Sourced<Ticks>;
  /** Stiles and rails: `width` is the face seen. */
  readonly frame: Sourced<FlatStock>;
  /** Two leaves that meet in the opening; one when left out. */
  readonly pair?: PairSpec;
  /** Set for each leaf of a pair, which is laid out as a gate of its own. */
  readonly half?: HalfSpec;
  /** Two, at the top and at the bottom, when left out. */
  readonly rails?: Sourced<LeafRails>;
  readonly brace?: Sourced<FlatStock>;
  /** Where it has a cable in place of a brace: that runs from the top corner at the hinges and pulls. */
  readonly cable?: Origin;
  /** Above ground; the run's own when not stated. */
  readonly bottom?: Sourced<Band>;
  readonly height?: Sourced<Band>;
  readonly infill: InfillSpec;
}
