import type { Leaf, Piece } from '../layout/index.ts';
import { faceToward } from '../model/index.ts';
import { degrees, type Ticks } from '../units/index.ts';

/**
 * What is left of an opening, in ticks, while its leaf stands open at a right angle: less the hinge gap and the
 * leaf's whole thickness, which then stands in the opening. Holds for hinges that turn at the leaf's face.
 *
 * @param pieces those of the leaf, its posts left out
 */
export function clearWhenOpen({ spec }: Leaf, pieces: readonly Piece[]): Ticks {
  const depths = pieces.flatMap(({ solid }) => solid.vertices.map(([, y]) => y));
  const thickness = depths.length > 0 ? Math.max(...depths) - Math.min(...depths) : 0;
  return spec.opening.value - spec.hingeGap.value - Math.round(thickness);
}

/** From corner to opposite corner of a leaf, in ticks, and how steep that is, in degrees from level. */
export function leafDiagonal({ width, height }: Pick<Leaf, 'width' | 'height'>): {
  readonly length: number;
  readonly angle: number;
} {
  return { length: Math.hypot(width, height), angle: degrees(Math.atan2(height, width)) };
}

/**
 * The hand of a leaf for one who stands at the front of its run: the side of its hinges, and whether it is pushed
 * away or pulled. Undefined where it is not stated to which side it opens.
 */
export function handOf(
  { spec }: Leaf,
  seenFrom: string,
): { readonly hand: 'left' | 'right'; readonly way: 'pushed' | 'pulled' } | undefined {
  if (spec.opensTo === undefined) return undefined;
  const pulled = faceToward(seenFrom, spec.opensTo.value) === 'front';
  return { hand: spec.hinges.value, way: pulled ? 'pulled' : 'pushed' };
}
