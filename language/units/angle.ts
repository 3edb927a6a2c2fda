/** Radians to degrees. */
export function degrees(radians: number): number {
  return (radians * 180) / Math.PI;
}

/** Degrees to a tenth, as a saw's scale is read: `33.7°`, `90°`. */
export function formatDegrees(d: number): string {
  const tenths = Math.round(Math.abs(d) * 10);
  return `${d < 0 && tenths > 0 ? '-' : ''}${tenths / 10}°`;
}

/**
 * The angle, in degrees, that sides `a` and `b` of a triangle make, from the length of the third side `c` across
 * it (law of cosines). So the corner between two walls is measured by a tape: marks on both, and from mark to
 * mark. Undefined where no triangle has such sides.
 */
export function angleOfSides(a: number, b: number, c: number): number | undefined {
  const cosine = (a * a + b * b - c * c) / (2 * a * b);
  if (!(a > 0 && b > 0 && c > 0) || !(Math.abs(cosine) <= 1)) return undefined;
  return degrees(Math.acos(cosine));
}
