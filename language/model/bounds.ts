import { mm, type Ticks } from '../units/index.ts';

// Beyond these a text is a slip of the pen, and working it out would only cost time.

/** The longest size of anything in a job: 1 km. */
export const LONGEST_SIZE: Ticks = mm(1_000_000);

/** The coarsest mark a tape is read to: 1 m. */
export const COARSEST_STEP: Ticks = mm(1_000);

/** Of a run, end posts and gate posts counted. */
export const MOST_POSTS = 2_000;

/** Of a run: one fewer than its posts. */
export const MOST_BAYS = MOST_POSTS - 1;

/** In all bays of a run together, and in a gate leaf. */
export const MOST_SLATS = 20_000;

/** Slats in one repeat, each `N of` counted N times; also the greatest N. */
export const MOST_REPEAT = 200;

/** Lengths one stock is sold in. */
export const MOST_LENGTHS = 200;
