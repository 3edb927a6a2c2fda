import { type Measure, roundToStep, type Ticks } from '../units/index.ts';
import { dimensionText } from './dimension-text.ts';

/** Which side of the object a chain stands on. */
export type ChainSide = 'top' | 'left' | 'right';

/**
 * A string of dimensions. Every printed value is the difference of two marks, each the position of a
 * boundary rounded to the measure's step; so a chain adds up, as printed, to the values of its parent
 * over the same marks.
 */
export interface Chain {
  readonly key: string;
  /** Key of the chain whose marks take in this chain's first and last. */
  readonly parent?: string;
  readonly side: ChainSide;
  /** What it measures: decides what is left out first where room is short. */
  readonly kind: 'overall' | 'posts' | 'gate' | 'heights' | 'frame' | 'slats';
  /** Where the boundaries are: x from station 0, or height from the datum. Ascending. */
  readonly at: readonly Ticks[];
  /** The same from the chain's origin, rounded to the measure's step. */
  readonly marks: readonly Ticks[];
  /** One for each interval. */
  readonly texts: readonly string[];
  /** The way along the chain in which texts lean that are led out of it; inward where nothing is said. */
  readonly lean?: 1 | -1;
}

/** A chain along the top as it runs seen from behind: the very same values, from the other end of `length`. */
export function turnedChain(one: Chain, length: Ticks): Chain {
  if (one.side !== 'top') return one;
  return {
    ...one,
    at: one.at.map((t) => length - t).reverse(),
    marks: [...one.marks].reverse(),
    texts: [...one.texts].reverse(),
    ...(one.lean ? { lean: one.lean === 1 ? -1 : 1 } : {}),
  };
}

/** A chain over boundaries in any order; those that fall together count once. `origin` is where the tape starts. */
export function chain(
  parts: Pick<Chain, 'key' | 'parent' | 'side' | 'kind' | 'lean'>,
  boundaries: readonly Ticks[],
  origin: Ticks,
  measure: Measure,
): Chain {
  const at = [...new Set(boundaries)].sort((a, b) => a - b);
  const marks = at.map((t) => roundToStep(t - origin, measure.step));
  const texts = marks.slice(1).map((mark, i) => dimensionText(mark - (marks[i] as Ticks), measure));
  return { ...parts, at, marks, texts };
}
