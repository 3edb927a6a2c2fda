/** Radians to degrees. */
export function degrees(radians: number): number {
  return (radians * 180) / Math.PI;
}

/** Degrees to a tenth, as a saw's scale is read: `33.7°`, `90°`. */
export function formatDegrees(d: number): string {
  const tenths = Math.round(Math.abs(d) * 10);
  return `${d < 0 && tenths > 0 ? '-' : ''}${tenths / 10}°`;
}
