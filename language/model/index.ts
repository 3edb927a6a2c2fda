/**
 * AST to Job: plain immutable data with units resolved, references followed and defaults filled,
 * where every value remembers where it is stated or why it is what it is.
 *
 * Lives here: the shape of a job and how it is built from syntax. Does not live here: geometry,
 * findings' texts, anything that knows an editor, a file system or a clock.
 */
export * from './bounds.ts';
export { DEFAULT_LENGTHS, type DefaultLength, type DefaultName, isMetric, LEAST_TRIM } from './defaults.ts';
export { facesOf, faceToward, type ScreenFace, standsBetween } from './faces.ts';
export { type Filling, type FillWay, type FillWays, fillWays } from './fill-ways.ts';
export {
  type GroundPoint,
  groundLine,
  highestGround,
  levelAt,
  lowestGround,
} from './ground-line.ts';
export type * from './job.ts';
export { limitOf, statedLimit } from './limit-of.ts';
export { usualEndGap } from './or-assumed.ts';
export { HINT_SEPARATOR, type ProblemArgs, type ProblemCode } from './problems.ts';
export { patternAlone, stockAlone } from './read-alone.ts';
export { buildJob } from './read-job.ts';
export { asPlanned, isMeasured } from './read-measured-boards.ts';
export { TASK_COUNTS, type TaskCount } from './read-quote.ts';
export type { JobContext } from './reader.ts';
export { soldLengths } from './sold-lengths.ts';
export { stocksOf } from './stocks-of.ts';
export { MATERIAL_WORDS, UNIT_WORDS } from './words.ts';
