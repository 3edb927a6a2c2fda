/** A round hole: ft3 of concrete and of gravel. Inches; the post, where it stands in concrete, is taken off. */
export function holeVolumes(
  diameter: number,
  depth: number,
  gravel: number,
  postArea: number,
): { readonly concrete: number; readonly gravel: number } {
  const round = (Math.PI * diameter ** 2) / 4;
  return {
    concrete: Math.max(0, ((round - postArea) * depth) / 1_728),
    gravel: (round * gravel) / 1_728,
  };
}

/** Whole bags that hold a volume. A hair more than whole bags is no other bag. */
export function bagsFor(volume: number, yields: number): number {
  return Math.ceil(volume / yields - 1e-9);
}

/** Least concrete around a post that stands in the middle of its hole, inches. */
export function coverOf(diameter: number, along: number, through: number): number {
  return diameter / 2 - Math.hypot(along, through) / 2;
}

/**
 * The same for a post that stands off the middle by so much along the wall or across it, whichever leaves less:
 * inches from its farthest corner to the edge of the hole.
 */
export function coverOffMiddle(diameter: number, along: number, through: number, off: number): number {
  const corner = (toward: number, beside: number) => Math.hypot(toward / 2 + off, beside / 2);
  return diameter / 2 - Math.max(corner(along, through), corner(through, along));
}

/**
 * How far a post may stand off the middle of its hole, along the wall or across it, and keep so much concrete around
 * its corners, in inches; negative where it does not have that much in the middle.
 */
export function mostOffMiddle(diameter: number, along: number, through: number, cover: number): number {
  const radius = diameter / 2 - cover;
  const most = (toward: number, beside: number) =>
    radius < beside / 2 ? -1 : Math.sqrt(radius ** 2 - (beside / 2) ** 2) - toward / 2;
  return Math.min(most(along, through), most(through, along));
}
