import { DEEPEST_BEARING, EMBEDMENT, EMBEDMENT_HELD } from '../../standards/index.ts';

/** A post in the ground: pounds, feet, psf for each foot of depth (any doubling included). */
export interface Embedded {
  readonly load: number;
  /** Of the load above grade. */
  readonly arm: number;
  /** Of a round post or footing, or the diagonal of a square one. */
  readonly width: number;
  readonly bearing: number;
}

/** Allowable lateral bearing at a third of the depth, psf. */
export function bearingAtThird(depth: number, bearing: number): number {
  return (bearing * Math.min(depth, DEEPEST_BEARING.value)) / 3;
}

/** Depth asked for by the formula, feet, if bearing were that at a third of `trial`. */
export function depthFromTrial({ load, arm, width, bearing }: Embedded, trial: number): number {
  const a = (EMBEDMENT.loadFactor * load) / (bearingAtThird(trial, bearing) * width);
  return 0.5 * a * (1 + Math.sqrt(1 + (EMBEDMENT.armFactor * arm) / a));
}

/**
 * Least depth in feet of a post that nothing holds at grade, by IBC Eq. 18-1: the depth which, tried, asks for
 * itself. What is asked for falls as the trial grows, so it is found by halving. 0 for no load.
 */
export function embedmentDepth(post: Embedded): number {
  if (!(post.load > 0)) return 0;
  let [low, high] = [1e-6, 1];
  while (depthFromTrial(post, high) > high && high < 1e6) high *= 2;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (depthFromTrial(post, middle) > middle) low = middle;
    else high = middle;
  }
  return high;
}

/** The same where paving holds the post at grade, by IBC Eq. 18-2. */
export function heldDepth({ load, arm, width, bearing }: Embedded): number {
  const alone = Math.cbrt((EMBEDMENT_HELD.factor * load * arm) / (bearing * width));
  const cap = DEEPEST_BEARING.value;
  return alone <= cap ? alone : Math.sqrt((EMBEDMENT_HELD.factor * load * arm) / (bearing * cap * width));
}
