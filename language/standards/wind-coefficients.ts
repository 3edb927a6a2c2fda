import { fromMemory, type Published, secondary } from './source.ts';

/** Force coefficients by two ratios; between entries they are interpolated, past the ends they stay. */
export interface CoefficientTable extends Published {
  /** Length over height of the wall's face. */
  readonly lengths: readonly number[];
  /** Height of the face over height of its top above ground, with a row of coefficients each. */
  readonly rows: readonly { readonly ratio: number; readonly cf: readonly number[] }[];
}

/**
 * Solid freestanding walls and solid signs, cases A and B. Two independent transcriptions agree in 83 of 84
 * cells; in the one left (0.7, 4) 1.60 is taken, which is the greater.
 */
export const SOLID_WALL: CoefficientTable = {
  lengths: [0.05, 0.1, 0.2, 0.5, 1, 2, 4, 5, 10, 20, 30, 45],
  rows: [
    { ratio: 1, cf: [1.8, 1.7, 1.65, 1.55, 1.45, 1.4, 1.35, 1.35, 1.3, 1.3, 1.3, 1.3] },
    { ratio: 0.9, cf: [1.85, 1.75, 1.7, 1.6, 1.55, 1.5, 1.45, 1.45, 1.4, 1.4, 1.4, 1.4] },
    { ratio: 0.7, cf: [1.9, 1.85, 1.75, 1.7, 1.65, 1.6, 1.6, 1.55, 1.55, 1.55, 1.55, 1.55] },
    { ratio: 0.5, cf: [1.95, 1.85, 1.8, 1.75, 1.75, 1.7, 1.7, 1.7, 1.7, 1.7, 1.7, 1.75] },
    { ratio: 0.3, cf: [1.95, 1.9, 1.85, 1.8, 1.8, 1.8, 1.8, 1.8, 1.8, 1.85, 1.85, 1.85] },
    { ratio: 0.2, cf: [1.95, 1.9, 1.85, 1.8, 1.8, 1.8, 1.8, 1.8, 1.85, 1.9, 1.9, 1.95] },
    { ratio: 0.16, cf: [1.95, 1.9, 1.85, 1.85, 1.8, 1.8, 1.85, 1.85, 1.85, 1.9, 1.9, 1.95] },
  ],
  ...secondary('ASCE 7-05 to 7-22', 'Fig. 29.3-1 (7-16), cases A and B'),
};

/** Case C near the windward edge, by stretch as long as the face is high; for length over height of 2 and more. */
export const WINDWARD_EDGE: Published & {
  readonly lengths: readonly number[];
  readonly stretches: readonly (readonly number[])[];
} = {
  lengths: [2, 3, 4, 5, 6, 7, 8, 9, 10, 13, 45],
  stretches: [
    [2.25, 2.6, 2.9, 3.1, 3.3, 3.4, 3.55, 3.65, 3.75, 4, 4.3],
    [1.5, 1.7, 1.9, 2, 2.15, 2.25, 2.3, 2.35, 2.45, 2.6, 2.55],
  ],
  ...secondary('ASCE 7-05 to 7-22', 'Fig. 29.3-1 (7-16), Case C, first two stretches'),
};

/** Case C is multiplied by `from - s/h` where `s/h` is over `over`: a gap under a wall relieves it. */
export const GROUND_REDUCTION: Published & { readonly over: number; readonly from: number } = {
  over: 0.8,
  from: 1.8,
  ...secondary('ASCE 7', 'Fig. 29.3-1, note on Case C'),
};

/** Where a return wall shelters the edge, by its length over the height of the face. */
export const RETURN_REDUCTION: Published & {
  readonly lengths: readonly number[];
  readonly factors: readonly number[];
} = {
  lengths: [0, 0.3, 1, 2],
  factors: [1, 0.9, 0.75, 0.6],
  ...secondary('ASCE 7', 'Fig. 29.3-1, table of returns'),
};

/** Open signs and single-plane frames of flat-sided members, by the greatest solidity each row holds for. */
export const OPEN_FRAME: Published & {
  readonly rows: readonly { readonly below: number; readonly cf: number }[];
} = {
  rows: [
    { below: 0.1, cf: 2 },
    { below: 0.3, cf: 1.8 },
    { below: 1, cf: 1.6 },
  ],
  ...secondary('ASCE 7-16', 'Fig. 29.4-2, flat-sided members'),
};

/** Openings relieve a solid wall by `1 - (1 - solidity)^power`. */
export const POROSITY_POWER: Published & { readonly power: number } = {
  power: 1.5,
  ...secondary('ASCE 7', 'Fig. 29.3-1, note on openings'),
};

/** Net pressure coefficients of a solid wall without returns, five times as long as high, from its free end on. */
export const EUROPEAN_WALL: Published & { readonly zones: Readonly<Record<'A' | 'B' | 'C' | 'D', number>> } =
  {
    zones: { A: 2.9, B: 1.8, C: 1.4, D: 1.2 },
    ...secondary('EN 1991-1-4', '7.4.1, Table 7.9, solidity 1, l/h = 5'),
  };

/** The same for walls four fifths solid: one value along all of it. */
export const EUROPEAN_OPEN_WALL: Published & { readonly cp: number; readonly solidity: number } = {
  cp: 1.2,
  solidity: 0.8,
  ...fromMemory('EN 1991-1-4', '7.4.1, Table 7.9, solidity 0.8'),
};
