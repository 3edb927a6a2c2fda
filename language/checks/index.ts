/**
 * Findings: one file each (or a close family) with its page and its test beside it, and one registry
 * of code, severity, message and basis.
 *
 * Lives here: judgment. Does not live here: geometry (layout/), text positions (resolved at the edge).
 */
export { acceptanceOf } from './accept.ts';
export { describeWay, whatDiffers } from './as-built-text.ts';
export type * from './finding.ts';
export { describeChoice } from './pattern-open.ts';
export {
  checkJob,
  checkLayout,
  checkRun,
  FINDING_KINDS,
  findingKind,
  messageOf,
  warningCodes,
} from './registry.ts';
export { SPAN_OVER_THICKNESS } from './span-too-long.ts';
export type { TextArgs } from './text-problems.ts';
export { type LimitedKind, thresholdOf } from './threshold.ts';
