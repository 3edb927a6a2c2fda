import type { Leaf, Piece } from '../layout/index.ts';
import { faceToward, type GroundPoint, levelAt } from '../model/index.ts';

/** The quarter circle that a leaf's bottom sweeps. */
export interface Swing {
  /** Station of the hinges, and which way the closed leaf lies from there along the run. */
  readonly hinge: number;
  readonly way: 1 | -1;
  readonly radius: number;
  /** The side it opens to, and how far on that side of the middle of the posts it turns. */
  readonly side: 'front' | 'back';
  readonly off: number;
}

/**
 * What a leaf sweeps, in ticks, where it turns at its face on the side it opens to. Undefined where that side is not
 * stated.
 *
 * @param pieces those of the leaf, its posts left out
 */
export function swingOf(
  { spec, x0, x1, width }: Leaf,
  seenFrom: string,
  pieces: readonly Piece[],
): Swing | undefined {
  if (!spec.opensTo) return undefined;
  const side = faceToward(seenFrom, spec.opensTo.value);
  const depths = pieces.flatMap(({ solid }) => solid.vertices.map(([, y]) => (side === 'back' ? y : -y)));
  const [hinge, way] = spec.hinges.value === 'left' ? [x0, 1 as const] : [x1, -1 as const];
  return { hinge, way, radius: width, side, off: depths.length > 0 ? Math.max(...depths) : 0 };
}

/**
 * Highest ground within a swing, from the datum, in ticks. Between its points the ground is a plane, so the highest
 * is at a corner of the sector, where a point's line across the run meets its edge, or where the edge runs square to
 * the steepest way up.
 *
 * @param line the ground along the run
 * @param across its rise across the run for one tick toward the back
 */
export function highestInSwing(swing: Swing, line: readonly GroundPoint[], across: number): number {
  const { hinge, way, radius, side, off } = swing;
  const slope = side === 'back' ? across : -across;
  const along = (u: number) => levelAt(line, hinge + way * u);
  const edge = (u: number) => Math.sqrt(Math.max(0, radius * radius - u * u));
  const cuts = line.map(({ x }) => (x - hinge) * way).filter((u) => u > 0 && u < radius);
  const us = [0, ...cuts.sort((a, b) => a - b), radius];
  const levels = us.flatMap((u) => [along(u) + slope * off, along(u) + slope * (off + edge(u))]);
  for (const [index, from] of us.entries()) {
    const to = us[index + 1];
    if (to === undefined) break;
    const rise = (along(to) - along(from)) / (to - from);
    const steepest = Math.hypot(rise, slope);
    if (!(slope > 0) || steepest === 0) continue;
    const u = (radius * rise) / steepest;
    if (u > from && u < to) levels.push(along(u) + slope * (off + edge(u)));
  }
  return Math.max(...levels);
}
