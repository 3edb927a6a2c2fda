/** A section about the axis it bends on, in inches to a power: `depth` lies in the direction of the load. */
export interface Section {
  readonly area: number;
  /** Second moment of area, in4. */
  readonly inertia: number;
  /** Section modulus, in3. */
  readonly modulus: number;
}

/** A full rectangle, or a tube of it with walls so thick; inches. Square corners. */
export function rectangle(breadth: number, depth: number, wall?: number): Section {
  const inside = wall === undefined ? 0 : Math.max(0, breadth - 2 * wall);
  const hollow = wall === undefined ? 0 : Math.max(0, depth - 2 * wall);
  const inertia = (breadth * depth ** 3 - inside * hollow ** 3) / 12;
  return {
    area: breadth * depth - inside * hollow,
    inertia,
    modulus: depth > 0 ? inertia / (depth / 2) : 0,
  };
}
