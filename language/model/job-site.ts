// What a job says of its place: wind, soil, lines of property and sight, notices of digging.
import type { Exposure, SoilClass, WindEdition } from '../standards/index.ts';
import type { Ticks } from '../units/index.ts';
import type { Origin, Sourced } from './job-origin.ts';

/** Wind as the job states it: by speed (mph) and a standard, or as a pressure (psf) at the level of allowable stress. */
export type WindSpec =
  | {
      readonly kind: 'speed';
      readonly speed: number;
      readonly exposure: Exposure;
      readonly edition: WindEdition;
      readonly origin: Origin;
    }
  | { readonly kind: 'pressure'; readonly pressure: number; readonly origin: Origin };

/** What holds at the place of the job. Nothing is guessed: what is missing is not stated. */
export interface Site {
  readonly wind?: WindSpec;
  readonly soil?: Sourced<SoilClass>;
  readonly frost?: Sourced<Ticks>;
  /** The day of fitting: moisture in percent, temperature in degrees Fahrenheit. */
  readonly fitted?: { readonly moisture?: Sourced<number>; readonly temperature?: Sourced<number> };
}

/** A corner to be looked across: its point on the plan, and the ends of its legs. */
export interface SightTriangle {
  readonly corners: readonly (readonly [east: number, north: number])[];
  readonly origin: Origin;
}

/** The notice of digging; days counted from 1970-01-01. */
export interface DigTicket {
  readonly number: string;
  readonly called: number;
  readonly digging: number;
  readonly until?: number;
  readonly origin: Origin;
}

/** When materials were ordered, and when what is built was agreed to; days counted from 1970-01-01. */
export interface Paperwork {
  readonly ordered?: Sourced<number>;
  readonly approvals: readonly Approval[];
}

/** Someone's agreement to what is built: a client's, a neighbor's, an authority's. */
export interface Approval {
  readonly day: number;
  readonly by?: string;
  readonly origin: Origin;
}

/** A property line parallel to a run: how far off the middle of its posts, positive toward the back. */
export interface PropertyLine {
  readonly y: Ticks;
  readonly origin: Origin;
}
