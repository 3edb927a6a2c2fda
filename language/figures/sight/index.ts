/**
 * What can be seen of a place from where someone stands: exact areas of central projections of the pieces.
 *
 * Lives here: geometry of sight. Does not live here: judgment on how much is too much (checks/), pictures (drawing/).
 */
export { clipped, coveredArea, type Polygon, type Window } from './covered-area.ts';
export { type HidingGap, hidingGap } from './hiding-gap.ts';
export { type Look, lookOf } from './look.ts';
export { type NeededTop, neededTop } from './needed-top.ts';
export {
  areaOf,
  eyesOf,
  inPlan,
  type PlaceArea,
  type PlacedRun,
  placedRun,
  type Scene,
  sceneOf,
} from './scene.ts';
export { type Sight, shadowOf, sightOn } from './shadow.ts';
export { type PlaceSight, sightOf, wallsBefore } from './sight.ts';
export type { Way } from './ways.ts';
export { type WorstSight, worstSight } from './worst-sight.ts';
