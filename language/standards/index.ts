/**
 * Published tables as data: each value with its source and how sure we are of it.
 *
 * Lives here: tables. Does not live here: judgment on them (checks/), calculation with them (figures/).
 */
export { DRESSED_SIZES, type DressedSize, dressedWidthOf } from './dressed-sizes.ts';
