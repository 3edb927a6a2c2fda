import { type Published, secondary } from './source.ts';

/**
 * What a beam comes to under an even load `w` on spans of `L`, or a load `P`: moments as parts of `w L²` or
 * `P L`, deflections of `w L⁴ / E I` or `P L³ / E I`.
 */
export interface BeamCase extends Published {
  readonly name: string;
  readonly moment: number;
  readonly deflection: number;
}

const DIAGRAMS = secondary('AISC beam diagrams and formulas', 'Table 3-23');

export const SIMPLE_SPAN: BeamCase = {
  name: 'one span, even load',
  moment: 1 / 8,
  deflection: 5 / 384,
  ...DIAGRAMS,
};

export const CENTER_LOAD: BeamCase = {
  name: 'one span, load at the middle',
  moment: 1 / 4,
  deflection: 1 / 48,
  ...DIAGRAMS,
};

export const CANTILEVER: BeamCase = {
  name: 'cantilever, even load',
  moment: 1 / 2,
  deflection: 1 / 8,
  ...DIAGRAMS,
};

export const CANTILEVER_END: BeamCase = {
  name: 'cantilever, load at the end',
  moment: 1,
  deflection: 1 / 3,
  ...DIAGRAMS,
};

/** Equal spans under an even load, by count: greatest moments over supports and deflections as tabulated. */
export const EQUAL_SPANS: Readonly<Record<2 | 3 | 4, BeamCase>> = {
  2: { name: 'two spans', moment: 1 / 8, deflection: 1 / 185, ...DIAGRAMS },
  3: { name: 'three spans', moment: 0.1, deflection: 0.0069, ...DIAGRAMS },
  4: { name: 'four spans', moment: 0.1071, deflection: 0.0065, ...DIAGRAMS },
};
