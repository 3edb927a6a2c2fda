// What the builder decides about findings.
import type { Origin } from './job-origin.ts';

/** What a threshold may be: a length in ticks, a percentage, degrees, or so many times something. */
export type ThresholdMeasure = 'length' | 'percent' | 'degrees' | 'times';

/** Where a finding begins to be told. Which codes there are, and what each measures, checks/ knows. */
export interface StatedThreshold {
  readonly code: string;
  readonly is: ThresholdMeasure;
  readonly value: number;
  readonly origin: Origin;
  /** Where the code is written. */
  readonly named: Origin;
}

/** A finding to be shown as known: everywhere, or in one run. */
export interface Acceptance {
  readonly code: string;
  /** Name of the run. */
  readonly run?: string;
  readonly reason: string;
  readonly origin: Origin;
  /** Where the code is written. */
  readonly named: Origin;
}
