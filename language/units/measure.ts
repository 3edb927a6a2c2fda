import { TICKS_PER_INCH, TICKS_PER_MM, type Ticks } from './ticks.ts';

/** The unit lengths are shown in. `feet` shows feet and inches, the others show one unit only. */
export type MeasureUnit = 'inches' | 'feet' | 'mm' | 'cm' | 'm';

/** The measure a job is shown and marked in. */
export interface Measure {
  unit: MeasureUnit;
  /** The smallest mark on the tape, whole ticks > 0. */
  step: Ticks;
}

/** Feet and inches to 1/16". */
export const IMPERIAL: Measure = { unit: 'feet', step: TICKS_PER_INCH / 16 };

/** Millimeters to 1 mm. */
export const METRIC: Measure = { unit: 'mm', step: TICKS_PER_MM };
