import { aboveGround, type Bay, type RunLayout, reachAt, topEdge } from '../../layout/index.ts';
import { toInches } from '../../units/index.ts';

/** What the wind meets of a run, in inches. */
export interface WindFace {
  /** Of the top above the lowest ground below it: under a deck the ground there, where it is stated. */
  readonly top: number;
  /** From the lowest to the highest edge of what fills the bay. */
  readonly face: number;
  /** Whether the run stands on a deck whose ground is stated, which lies so much lower. */
  readonly raised: boolean;
}

/**
 * The face of each bay as the wind standard measures it, gates left out unless there is nothing else. Bays are not
 * alike where the ground slopes; which counts is for the formula to say.
 */
export function windFaces(run: RunLayout): readonly WindFace[] {
  const fixed = run.bays.filter(({ gate }) => gate === undefined);
  const bays = fixed.length ? fixed : run.bays;
  const faces = bays.flatMap((bay) => faceOf(run, bay));
  const level = { top: toInches(run.top - run.ground), face: toInches(run.top - run.bottom), raised: false };
  return faces.length ? faces : [level];
}

function faceOf(run: RunLayout, bay: Bay): WindFace[] {
  const edge = topEdge(run, bay.number);
  const reach = reachAt(run, bay.number, (bay.from + bay.to) / 2);
  if (!edge || !reach || reach[1] <= reach[0]) return [];
  const below = run.spec.deck?.ground?.value;
  const top = below === undefined ? aboveGround(run, bay, edge).most : reach[1] - below;
  return [{ top: toInches(top), face: toInches(reach[1] - reach[0]), raised: below !== undefined }];
}
