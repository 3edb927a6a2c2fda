// Who looks, and what is to be hidden.
import type { Ticks } from '../units/index.ts';
import type { Band, Origin, Sourced } from './job-origin.ts';

/** A point beside a run: a station, and how far off the middle of its posts, positive toward the back. */
export interface Spot {
  /** Name of the run. */
  readonly run: string;
  readonly along: Ticks;
  readonly off: Ticks;
  readonly origin: Origin;
}

/** Someone who looks: standing at a spot, or walking from one to another. */
export interface Viewer {
  readonly name: string;
  readonly origin: Origin;
  readonly at: Spot;
  readonly to?: Spot;
  /** Above the floor. */
  readonly eye: Sourced<Ticks>;
  /** From the datum; the ground beside the run when left out. */
  readonly floor?: Sourced<Ticks>;
}

/** What is to be hidden: an upright area that lies along its run, its middle at a spot. */
export interface Place {
  readonly name: string;
  readonly origin: Origin;
  readonly at: Spot;
  readonly width: Sourced<Ticks>;
  /** Above the floor. */
  readonly heights: Sourced<Band>;
  readonly floor?: Sourced<Ticks>;
}

/** So much of a place is to be hidden from a viewer. */
export interface HideDemand {
  readonly place: Place;
  readonly viewer: Viewer;
  /** 0 to 1. */
  readonly share: Sourced<number>;
  readonly origin: Origin;
}
