import { fromMemory, type Published, type PublishedValue, secondary, valued } from './source.ts';

export type WindEdition = 'ASCE 7-05' | 'ASCE 7-10' | 'ASCE 7-16' | 'ASCE 7-22';
export type Exposure = 'B' | 'C' | 'D';

/** Constants of the velocity pressure coefficient: `Kz = factor (z / zg)^(2 / alpha)`. */
export interface ExposureConstants extends Published {
  readonly alpha: number;
  /** Feet. */
  readonly zg: number;
}

/** What an edition of the wind standard asks for. Speeds in mph, heights in feet, pressures in psf. */
export interface WindRules extends Published {
  readonly edition: WindEdition;
  /** A speed at strength level, to be multiplied by `serviceFactor` for allowable stress; or a nominal one. */
  readonly level: 'strength' | 'service';
  readonly serviceFactor: PublishedValue;
  readonly kzFactor: PublishedValue;
  readonly exposures: Readonly<Record<Exposure, ExposureConstants>>;
  /** Sections on solid freestanding walls and on open signs and frames. */
  readonly solidSection: string;
  readonly openSection: string;
}

const constants = (alpha: number, zg: number, published: Published): ExposureConstants => ({
  alpha,
  zg,
  ...published,
});

const OLD_KZ = secondary('ASCE 7-10 and 7-16', 'Table 26.9-1; alpha and zg');
const OLD_EXPOSURES = {
  B: constants(7, 1_200, OLD_KZ),
  C: constants(9.5, 900, OLD_KZ),
  D: constants(11.5, 700, OLD_KZ),
};
const NEW_KZ = secondary('ASCE 7-22', 'Table 26.11-1; alpha and zg');
const NEW_EXPOSURES = {
  // 7.5, not the 7.0 of earlier editions: it gives the tabulated 0.57 at 15 ft, 7.0 would give 0.517.
  B: constants(7.5, 3_280, NEW_KZ),
  C: constants(9.8, 2_460, NEW_KZ),
  D: constants(11.5, 1_935, NEW_KZ),
};

const OLD_FACTOR = valued(2.01, '', secondary('ASCE 7-10 and 7-16', 'Table 27.3-1 note 1'));
const NEW_FACTOR = valued(2.41, '', secondary('ASCE 7-22', 'Table 26.10-1 note 1'));
const ULTIMATE = valued(0.6, '', secondary('ASCE 7-10, 7-16, 7-22', '2.4.1, load factor on W'));
const NOMINAL = valued(1, '', secondary('ASCE 7-05', '2.4.1, load factor on W'));

export const WIND_RULES: Readonly<Record<WindEdition, WindRules>> = {
  'ASCE 7-05': {
    edition: 'ASCE 7-05',
    level: 'service',
    serviceFactor: NOMINAL,
    kzFactor: OLD_FACTOR,
    exposures: OLD_EXPOSURES,
    solidSection: '6.5.14, Fig. 6-20',
    openSection: '6.5.15, Fig. 6-21',
    ...secondary('ASCE 7-05', 'Eq. 6-15'),
  },
  'ASCE 7-10': {
    edition: 'ASCE 7-10',
    level: 'strength',
    serviceFactor: ULTIMATE,
    kzFactor: OLD_FACTOR,
    exposures: OLD_EXPOSURES,
    solidSection: '29.4, Fig. 29.4-1',
    openSection: '29.5, Fig. 29.5-2',
    ...secondary('ASCE 7-10', 'Eq. 29.3-1'),
  },
  'ASCE 7-16': {
    edition: 'ASCE 7-16',
    level: 'strength',
    serviceFactor: ULTIMATE,
    kzFactor: OLD_FACTOR,
    exposures: OLD_EXPOSURES,
    solidSection: '29.3, Fig. 29.3-1',
    openSection: '29.4, Fig. 29.4-2',
    ...secondary('ASCE 7-16', 'Eq. 26.10-1'),
  },
  'ASCE 7-22': {
    edition: 'ASCE 7-22',
    level: 'strength',
    serviceFactor: ULTIMATE,
    kzFactor: NEW_FACTOR,
    exposures: NEW_EXPOSURES,
    solidSection: '29.3, Fig. 29.3-1',
    openSection: '29.4',
    // Kd stands in the equation of the force there, not in that of the velocity pressure; the product is the same.
    ...secondary('ASCE 7-22', 'Eq. 26.10-1, 29.3'),
  },
};

/** psf from mph: half the density of air. */
export const VELOCITY_PRESSURE = valued(0.00256, 'psf/mph²', secondary('ASCE 7', 'Eq. 26.10-1'));
/** The same in Pa from m/s. */
export const VELOCITY_PRESSURE_SI = valued(0.613, 'Pa/(m/s)²', secondary('ASCE 7', 'Eq. 26.10-1.SI'));
/** Below this height the coefficient stays what it is here. */
export const LOWEST_KZ_HEIGHT = valued(15, 'ft', secondary('ASCE 7', 'Table 26.10-1 note 1'));
/** Directionality of solid freestanding walls, open signs and single-plane frames alike. */
export const DIRECTIONALITY = valued(0.85, '', secondary('ASCE 7', 'Table 26.6-1'));
/** Gusts on what is rigid. */
export const GUST = valued(0.85, '', secondary('ASCE 7-16 and 7-22', '26.11.1'));
/** `Ke = exp(-rate × ground elevation in feet)`; 1 is on the careful side above sea level. */
export const ELEVATION_RATE = valued(
  0.0000362,
  '/ft',
  secondary('ASCE 7-16 and 7-22', 'Table 26.9-1 note 2'),
);
/** On ground without a hill or escarpment. */
export const TOPOGRAPHY = valued(1, '', secondary('ASCE 7', 'Fig. 26.8-1'));
/** Not less than this on the projected area, at strength level. */
export const MINIMUM_PRESSURE = valued(16, 'psf', secondary('ASCE 7-16', '29.7'));
/** The same in service terms, for what states no wind: 0.6 times 16 psf. */
export const LEAST_SERVICE_PRESSURE = valued(9.6, 'psf', secondary('ASCE 7-16', '29.7 and 2.4.1'));
/** Share of openings from which a screen is reckoned as an open frame; under it, as solid with openings. */
export const OPEN_FROM = valued(0.3, '', secondary('ASCE 7', 'Fig. 29.3-1, Fig. 29.4-2 notes'));
/** On walls that stand on the ground the resultant is so much of the height above their middle. */
export const CASE_A_RISE = valued(0.05, '', secondary('ASCE 7', 'Fig. 29.3-1, Case A, s/h = 1'));
/** Case B: sideways by so much of the length. */
export const CASE_B_OFFSET = valued(0.2, '', secondary('ASCE 7', 'Fig. 29.3-1, Case B'));

/** Rounded entries of the printed table, by height in feet; what lies between is interpolated. */
export const KZ_TABLE: Published & {
  readonly heights: readonly number[];
  readonly rows: Readonly<Record<Exposure, readonly number[]>>;
} = {
  heights: [15, 20, 25, 30, 40],
  rows: {
    B: [0.57, 0.62, 0.66, 0.7, 0.76],
    C: [0.85, 0.9, 0.94, 0.98, 1.04],
    D: [1.03, 1.08, 1.12, 1.16, 1.22],
  },
  ...fromMemory('ASCE 7-16', 'Table 26.10-1; 0.85, 0.98, 1.04 (C) and 0.70 (B) seen in secondary sources'),
};
