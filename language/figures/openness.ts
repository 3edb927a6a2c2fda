import { degrees } from '../units/index.ts';

/**
 * Share of slats and gaps that is open straight on, 0 to 1: gap over gap and width, in any one unit.
 * Plain geometry. Nothing to see, where there is neither gap nor width, is 0.
 */
export function openShare(gap: number, width: number): number {
  return openShareAtAngle(gap, width, 0, 0);
}

/**
 * Share that is still open when looked at from the side, 0 to 1: what the slats' thickness hides of each
 * gap is `thickness * tan(angle)`. The angle is in degrees off straight on, across the slats: up or down
 * for level slats, sideways for upright ones; which way does not matter, and from 90 degrees on nothing
 * is open. Plain geometry of square-edged slats in one plane; the lengths are in any one unit.
 */
export function openShareAtAngle(gap: number, width: number, thickness: number, angle: number): number {
  const away = Math.abs(angle);
  const pitch = gap + width;
  if (!(gap > 0) || !(width >= 0) || !(away < 90)) return 0;
  const hidden = Math.max(0, thickness) * Math.tan((away * Math.PI) / 180);
  return Math.max(0, gap - hidden) / pitch;
}

/**
 * Degrees off straight on from which a gap shows nothing: `atan(gap / thickness)`. 0 for no gap; 90 for
 * slats of no thickness, which never hide a gap.
 */
export function cutOffAngle(gap: number, thickness: number): number {
  return gap > 0 ? degrees(Math.atan2(gap, Math.max(0, thickness))) : 0;
}
