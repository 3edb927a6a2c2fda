import { fromMemory, type Published, secondary } from './source.ts';

/** Reference design values of sawn lumber, psi, before any factor. */
export interface DesignValues extends Published {
  readonly group: LumberGroup;
  readonly grade: 'No.1' | 'No.2';
  /** Dimension lumber is up to 4" thick; posts and timbers are 5" and more both ways. */
  readonly size: 'dimension' | 'timber';
  /** Nominal widths the row is for; all of them where missing (Southern Pine has the size effect in its values). */
  readonly widths?: readonly [from: number, to: number];
  readonly bending: number;
  readonly shear: number;
  /** Compression across the grain. */
  readonly bearing: number;
  readonly stiffness: number;
  readonly stiffnessMin: number;
  /** Specific gravity, ovendry. */
  readonly gravity: number;
}

export type LumberGroup =
  | 'Douglas Fir-Larch'
  | 'Hem-Fir'
  | 'Spruce-Pine-Fir'
  | 'Western Cedars'
  | 'Redwood'
  | 'Southern Pine';

const TABLE_4A = secondary('NDS Supplement', 'Table 4A');
const TABLE_4B = secondary('NDS Supplement', 'Table 4B, by a metric reprint of the SPIB values');

type Row = readonly [
  bending: number,
  shear: number,
  bearing: number,
  stiffness: number,
  stiffnessMin: number,
  gravity: number,
];

function row(
  group: LumberGroup,
  grade: 'No.1' | 'No.2',
  [bending, shear, bearing, stiffness, stiffnessMin, gravity]: Row,
  published: Published,
  more: Partial<Pick<DesignValues, 'size' | 'widths'>> = {},
): DesignValues {
  const values = { bending, shear, bearing, stiffness, stiffnessMin, gravity };
  return { group, grade, size: 'dimension', ...more, ...values, ...published };
}

const southern = (from: number, to: number, bending: number): DesignValues =>
  row('Southern Pine', 'No.2', [bending, 175, 565, 1_400_000, 510_000, 0.55], TABLE_4B, {
    widths: [from, to],
  });

export const DESIGN_VALUES: readonly DesignValues[] = [
  row('Douglas Fir-Larch', 'No.2', [900, 180, 625, 1_600_000, 580_000, 0.5], TABLE_4A),
  row('Douglas Fir-Larch', 'No.1', [1_000, 180, 625, 1_700_000, 620_000, 0.5], TABLE_4A),
  row('Hem-Fir', 'No.2', [850, 150, 405, 1_300_000, 470_000, 0.43], TABLE_4A),
  row('Spruce-Pine-Fir', 'No.2', [875, 135, 425, 1_400_000, 510_000, 0.42], TABLE_4A),
  row('Western Cedars', 'No.2', [700, 155, 425, 1_000_000, 370_000, 0.36], TABLE_4A),
  row('Western Cedars', 'No.1', [725, 155, 425, 1_000_000, 370_000, 0.36], TABLE_4A),
  row('Redwood', 'No.2', [925, 160, 650, 1_200_000, 440_000, 0.44], fromMemory('NDS Supplement', 'Table 4A')),
  southern(2, 4, 1_100),
  southern(5, 6, 1_000),
  southern(8, 8, 925),
  southern(10, 10, 800),
  southern(12, 12, 750),
  row(
    'Douglas Fir-Larch',
    'No.2',
    [750, 170, 625, 1_300_000, 470_000, 0.5],
    secondary('NDS Supplement', 'Table 4D, posts and timbers'),
    { size: 'timber' },
  ),
  row(
    'Southern Pine',
    'No.2',
    [850, 165, 375, 1_200_000, 440_000, 0.55],
    fromMemory('NDS Supplement', 'Table 4D, 5x5 and larger'),
    { size: 'timber' },
  ),
];

/** The row of a group and grade for a section of so many nominal inches, or undefined where none is known. */
export function designValuesOf(
  group: LumberGroup,
  grade: 'No.1' | 'No.2',
  size: 'dimension' | 'timber',
  nominalWidth: number,
): DesignValues | undefined {
  return DESIGN_VALUES.find(
    (row) =>
      row.group === group &&
      row.grade === grade &&
      row.size === size &&
      (!row.widths || (nominalWidth >= row.widths[0] && nominalWidth <= row.widths[1])),
  );
}
