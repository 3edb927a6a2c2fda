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
