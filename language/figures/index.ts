/**
 * Figures on what is laid out: shares, angles, spans.
 *
 * Lives here: calculations whose working can be shown. Does not live here: judgment on a figure
 * (checks/), the geometry of pieces (layout/).
 */
export { measuredAt } from './as-built.ts';
export {
  type BuiltWay,
  type BuiltWays,
  builtWays,
  GAPS_ALIKE,
  isAsPlanned,
} from './as-built-ways.ts';
export { type BothFaces, bothFaces } from './both-faces.ts';
export { boxOf } from './box.ts';
export { clearSpan } from './clear-span.ts';
export { faceOverlap, seeThroughFrom } from './face-overlap.ts';
export { bagsFor } from './formulas/index.ts';
export { infillOf } from './infill-of.ts';
export { clearWhenOpen, handOf, leafDiagonal } from './leaf-swing.ts';
export { cutOffAngle, openShare, openShareAtAngle } from './openness.ts';
export { cutSlats, type Recut, recutOf } from './recut.ts';
export { screwedTo } from './screwed.ts';
export { seeThrough } from './see-through.ts';
export * from './sight/index.ts';
export { type SlatJoint, slatJointsOf } from './slat-joints.ts';
export { highestInSwing, type Swing, swingOf } from './swing-ground.ts';
export { LEAST_OPEN_GAP, openBesideWall, type WallGap, wallGaps } from './wall-gaps.ts';
export { keepsWithin, type Working, type WorkingInput, type WorkingStep } from './working.ts';
export { workingLines } from './working-lines.ts';
export * from './workings/index.ts';
export { workingsOf, workingsOfRun } from './workings.ts';
