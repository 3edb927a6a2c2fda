import type { RunSpec } from '../model/index.ts';
import type { Ticks } from '../units/index.ts';
import { type Edge, straightEdge } from './edge.ts';
import { thickestSlat } from './lines.ts';
import { middleOf, type PlacedBay, type PlacedPost } from './posts.ts';

/** Where a level slat on a face ends that ends with a bay. */
export interface FaceEnd {
  /** Station, of an end that leans at the middle of the infill. */
  readonly at: Ticks;
  readonly edge?: Edge;
  /** The farthest that it goes, so that no board is planned too short. */
  readonly most: number;
}

/** What is left between two slats that meet over a post: as stated, else the end gap. */
export function jointGapOf({ slatJoints, infill }: RunSpec): Ticks {
  return slatJoints?.gap?.value ?? infill.endGap.value;
}

/** At the middle of a post that slats share, half the joint gap off it; else all over the post, or as a corner asks. */
export function faceEnds(
  spec: RunSpec,
  { left, right, faces }: PlacedBay,
): { readonly low: FaceEnd; readonly high: FaceEnd } {
  const gap = jointGapOf(spec);
  const low = left.sharesSlats ? middleOf(left) + Math.floor(gap / 2) : left.mark.from;
  const high = right.sharesSlats ? middleOf(right) - Math.ceil(gap / 2) : right.mark.to;
  return {
    low: endOf(spec, low, left, faces?.left.z, -1),
    high: endOf(spec, high, right, faces?.right.z, 1),
  };
}

/** Ends lean with the posts they lie on. `outward` is -1 where the slat reaches toward station 0. */
function endOf(
  spec: RunSpec,
  at: Ticks,
  { corner, lean }: PlacedPost,
  z: Edge['z'] | undefined,
  outward: 1 | -1,
): FaceEnd {
  const far = (stations: readonly number[]) =>
    outward === 1 ? Math.max(...stations) : Math.min(...stations);
  const { end } = corner ?? {};
  if (end) {
    return {
      at,
      most: far([end.at, end.at + end.slope * thickestSlat(spec.infill)]),
      ...leaning(at, lean, z),
    };
  }
  const leant = leaning(at, lean, z);
  return { at, most: far([at, ...(leant.edge?.x ?? [])]), ...leant };
}

function leaning(at: Ticks, lean: PlacedPost['lean'], z: Edge['z'] | undefined): Pick<FaceEnd, 'edge'> {
  return z ? { edge: straightEdge(z, [at, lean?.pivot[1] ?? 0], lean?.slope ?? 0) } : {};
}
