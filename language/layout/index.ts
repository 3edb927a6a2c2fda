/**
 * Job to Layout: every physical piece of a run with what the saw needs and its solid in space, and
 * the posts, bays, courses, openings and fits they follow from.
 *
 * Lives here: geometry of pieces. Does not live here: judgment (checks/), pictures (drawing/).
 */
export { aboveGround, bottomEdge, reachAt, topEdge } from './bay-edges.ts';
export { baysOf, isInBay } from './bays-of.ts';
export { bridgeJoint } from './bridge-joint.ts';
export { convexParts, movedSolid } from './convex.ts';
export { type Flat, levelFace, type SlatEnd } from './corner.ts';
export {
  type DeckDivision,
  type DeckMember,
  deckDivisions,
  deckMembers,
  nearestMember,
} from './deck-posts.ts';
export { jointGapOf } from './face-ends.ts';
export { gapTolerance, leastOverlap, spellName, TRIED } from './fit/index.ts';
export { hashOf } from './hash.ts';
export { heightAt, type Incline } from './incline.ts';
export { createLayoutMemo, type LayoutMemo, layOutJob } from './job.ts';
export type { Joints } from './joints.ts';
export type * from './layout.ts';
export { bayKey, bridgeKey, courseKey, gateKey, postKey, runKey } from './names.ts';
export { findOverlaps, overlap } from './overlap.ts';
export type * from './piece.ts';
export { placesOf, toPlan } from './places.ts';
export { pocketOf } from './pockets.ts';
export { backHalfKey, isBackHalf } from './post-pieces.ts';
export type { GeometryArgs, GeometryCode } from './problems.ts';
export { isRacked } from './racks.ts';
export { fitEdits, refitted, refitUpright } from './refit.ts';
export { layOutRun } from './run.ts';
export { spellAfter } from './spell-after.ts';
export { contactArea, findUnsupported } from './support.ts';
export { bendsOf, wallAt, wallBetween } from './walls.ts';
