import { type Published, type PublishedValue, primary, secondary, valued } from './source.ts';

export type SoilClass = 1 | 2 | 3 | 4 | 5;

/** Presumptive bearing of a class of soil. */
export interface SoilBearing extends Published {
  readonly class: SoilClass;
  readonly material: string;
  /** Vertical, psf. */
  readonly vertical: number;
  /** Lateral, psf for each foot of depth. */
  readonly lateral: number;
}

const TABLE = primary('IBC', 'Table 1806.2');

export const SOIL_CLASSES: readonly SoilBearing[] = [
  { class: 1, material: 'crystalline bedrock', vertical: 12_000, lateral: 1_200, ...TABLE },
  { class: 2, material: 'sedimentary and foliated rock', vertical: 4_000, lateral: 400, ...TABLE },
  { class: 3, material: 'sandy gravel and gravel', vertical: 3_000, lateral: 200, ...TABLE },
  {
    class: 4,
    material: 'sand, silty or clayey sand, silty or clayey gravel',
    vertical: 2_000,
    lateral: 150,
    ...TABLE,
  },
  { class: 5, material: 'clay, sandy or silty clay, silt', vertical: 1_500, lateral: 100, ...TABLE },
];

/** Words a builder states soil by, and the class each stands in. */
export const SOIL_WORDS: Readonly<Record<string, SoilClass>> = {
  bedrock: 1,
  rock: 2,
  gravel: 3,
  sand: 4,
  clay: 5,
  silt: 5,
};

/** The class of the least bearing, for want of a stated one. */
export const WEAKEST_SOIL: SoilClass = 5;

export function soilOf(soil: SoilClass): SoilBearing {
  return SOIL_CLASSES[soil - 1] ?? (SOIL_CLASSES.at(-1) as SoilBearing);
}

/** Posts not held at grade: `d = 0.5 A (1 + sqrt(1 + 4.36 h / A))`, `A = 2.34 P / (S1 b)`. */
export const EMBEDMENT: Published & { readonly loadFactor: number; readonly armFactor: number } = {
  loadFactor: 2.34,
  armFactor: 4.36,
  ...primary('IBC', '1807.3.2.1, Eq. 18-1'),
};

/** Posts held at grade by paving: `d = sqrt(4.25 P h / (S3 b))`. */
export const EMBEDMENT_HELD: Published & { readonly factor: number } = {
  factor: 4.25,
  ...secondary('IBC', '1807.3.2.2, Eq. 18-2'),
};

/** Lateral bearing of isolated posts that half an inch of motion at grade does not harm. */
export const ISOLATED_POLE: PublishedValue = valued(2, '', secondary('IBC', '1806.3.4'));

/** Deeper than this the lateral bearing is taken to grow no more. */
export const DEEPEST_BEARING: PublishedValue = valued(
  12,
  'ft',
  primary('IBC', '1807.3.2.1, definition of d'),
);
