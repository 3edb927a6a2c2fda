/** A leaf on its hinges: pounds and inches. */
export interface HungLeaf {
  readonly weight: number;
  /** From the hinges to the middle of its weight. */
  readonly reach: number;
  /** Between the outermost hinges. */
  readonly hingesApart: number;
}

/** The pull of the top hinge, which the push of the bottom one equals; by statics. */
export function hingePull({ weight, reach, hingesApart }: HungLeaf): number {
  return hingesApart > 0 ? (weight * reach) / hingesApart : 0;
}

/**
 * By how much the latch corner of a braced leaf drops, from the shortening of its brace: the weight at half the
 * width hangs on the brace, which is pushed by `W / (2 sin a)` and shortens by `N L / (E A)`; the corner drops by
 * that over `sin a`. Stiles and rails are taken as stiff. Inches; psi for the stiffness.
 */
export function bracedSag(
  weight: number,
  brace: {
    readonly length: number;
    readonly rise: number;
    readonly area: number;
    readonly stiffness: number;
  },
): { readonly push: number; readonly sag: number } {
  const sine = brace.rise / brace.length;
  const push = weight / (2 * sine);
  return { push, sag: (push * brace.length) / (brace.stiffness * brace.area) / sine };
}

/**
 * By how much the latch side of a leaf without a brace drops if its corners are rigid: two rails that bend
 * as beams held against turning at both ends share half the weight, `V L^3 / 12 E I` each.
 */
export function unbracedSag(
  weight: number,
  rail: { readonly length: number; readonly inertia: number; readonly stiffness: number },
  rails = 2,
): number {
  return ((weight / 2 / rails) * rail.length ** 3) / (12 * rail.stiffness * rail.inertia);
}

/**
 * What cables of one rope, one in every space between the rails of a leaf, are pulled by: half the weight hangs at the
 * latch, and each takes as much of it as it is stiff against that, `E A sin² a / L`. Of one alone `W / (2 sin a)`.
 */
export function cablePulls(
  weight: number,
  cables: readonly { readonly length: number; readonly rise: number }[],
): readonly number[] {
  const stiff = cables.map(({ length, rise }) => (rise / length) ** 2 / length);
  const all = stiff.reduce((sum, one) => sum + one, 0);
  return cables.map(({ length, rise }, index) => {
    const share = all > 0 ? (stiff[index] ?? 0) / all : 0;
    return rise > 0 ? (weight * share * length) / (2 * rise) : 0;
  });
}
