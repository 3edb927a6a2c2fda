/**
 * Runs made by hand and at random, for tests of every stage after the text.
 *
 * Lives here: specs as plain data. Does not live here: text, anything a spec is turned into.
 */
export { arbitraryGateSpec, arbitraryInfill, arbitraryMeasure, arbitraryRunSpec } from './arbitrary.ts';
export {
  board,
  type GateParts,
  gateOf,
  type InfillParts,
  infillOf,
  jobOf,
  originOf,
  patternOf,
  postOf,
  type RunParts,
  ripOf,
  runOf,
  sourced,
} from './build.ts';
export { bicycleCourt, compostBay, leafBetween, postsOnly, teaTerrace } from './made.ts';
