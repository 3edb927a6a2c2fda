import { facesOf, type RunSpec } from '../model/index.ts';
import { edgeMoved } from './edge.ts';
import { faceEnds } from './face-ends.ts';
import type { Panel, Range } from './infill.ts';
import { endInset } from './pockets.ts';
import type { PlacedBay } from './posts.ts';

export type Reach = Pick<Panel, 'reach' | 'flush' | 'edges'>;

/**
 * Between posts, with what is free at each end, or as far as slats go into them. Through split posts: to the middle of a
 * post that slats share, else all through it.
 */
export function levelReach(spec: RunSpec, placed: PlacedBay): Reach {
  const { infill } = spec;
  const { bay, left, right, faces } = placed;
  if (infill.mounting.value.kind !== 'split') {
    const gap = endInset(infill);
    const edges = faces && { low: edgeMoved(faces.left, gap), high: edgeMoved(faces.right, -gap) };
    return { reach: [bay.from + gap, bay.to - gap], flush: 'middle', ...(edges ? { edges } : {}) };
  }
  const { low, high } = faceEnds(spec, placed);
  const flush = !left.sharesSlats ? 'start' : !right.sharesSlats ? 'end' : 'middle';
  const edges = low.edge && high.edge && { low: low.edge, high: high.edge };
  return { reach: [low.at, high.at], flush, ...(edges ? { edges } : {}) };
}

/** From end to end of a level slat that begins and ends with a bay, between its posts or on a face of them. */
export function slatReach(spec: RunSpec, placed: PlacedBay): Range {
  if (facesOf(spec.infill.mounting.value).length === 0) return levelReach(spec, placed).reach;
  const { low, high } = faceEnds(spec, placed);
  return [low.at, high.at];
}
