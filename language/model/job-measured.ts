// What stands already, as measured.
import type { Ticks } from '../units/index.ts';
import type { FitSpec } from './job-infill.ts';
import type { Origin, Sourced } from './job-origin.ts';

/** A bay measured between its posts, at three heights of what fills it. */
export interface MeasuredBay {
  readonly number: number;
  /** Clear planned when it was measured. Where the plan says otherwise now, the measure is of another bay. */
  readonly planned?: Sourced<Ticks>;
  readonly middle: Ticks;
  /** Missing where it was measured at the middle only. */
  readonly ends?: { readonly top: Ticks; readonly bottom: Ticks };
  readonly origin: Origin;
}

/** A post measured to be out of plumb, off the line, or both. */
export interface MeasuredPost {
  readonly number: number;
  /** Station planned when it was measured. Where the plan says otherwise now, the measure is of another post. */
  readonly planned?: Sourced<Ticks>;
  /** Along the run for one tick up, positive to the right. */
  readonly slope?: number;
  /** From the line of the run, positive toward its back. */
  readonly off?: Sourced<Ticks>;
  readonly origin: Origin;
}

/** Slats of a bay that are cut: all, or those of some courses; to the plan, or to a length. */
export interface CutSlats {
  readonly bay: number;
  readonly courses?: { readonly first: number; readonly last: number };
  readonly length?: Sourced<Ticks>;
  readonly origin: Origin;
}

/** What stands and what is cut already. */
export interface Measured {
  readonly bays: readonly MeasuredBay[];
  readonly posts: readonly MeasuredPost[];
  readonly cuts: readonly CutSlats[];
  /** Ends of the slats above the ground, in place of the planned ones. */
  readonly height?: Sourced<Ticks>;
  readonly bottom?: Sourced<Ticks>;
  /** How the pattern is made to close as it stands, in place of what was planned. */
  readonly fit?: FitSpec;
  readonly origin: Origin;
}
