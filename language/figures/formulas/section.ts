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

/** What is cut out of a rectangle: sizes as the rectangle's, its middle `off` the rectangle's along the depth. */
export interface CutOut {
  readonly breadth: number;
  readonly depth: number;
  readonly off: number;
}

/**
 * A rectangle less what is cut out of it, about the axis through the middle of what is left; the modulus is that of
 * the farther edge. By the theorem of parallel axes (any handbook of strength of materials). Inches.
 */
export function netSection(breadth: number, depth: number, cuts: readonly CutOut[]): Section {
  const full = rectangle(breadth, depth);
  const taken = (of: (cut: CutOut) => number) => cuts.reduce((sum, cut) => sum + of(cut), 0);
  const area = full.area - taken((cut) => cut.breadth * cut.depth);
  if (area <= 0) return { area: 0, inertia: 0, modulus: 0 };
  const middle = 0 - taken((cut) => cut.breadth * cut.depth * cut.off) / area;
  const inertia =
    full.inertia -
    taken((cut) => (cut.breadth * cut.depth ** 3) / 12 + cut.breadth * cut.depth * cut.off ** 2) -
    area * middle ** 2;
  return { area, inertia, modulus: inertia / (depth / 2 + Math.abs(middle)) };
}
