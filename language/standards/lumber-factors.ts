import { fromMemory, type Published, type PublishedValue, secondary, valued } from './source.ts';

/** How long a load lasts decides how much of it wood bears; not applied to stiffness. */
export const LOAD_DURATION: Readonly<
  Record<'dead' | 'occupancy' | 'snow' | 'construction' | 'wind' | 'impact', PublishedValue>
> = {
  dead: valued(0.9, '', secondary('NDS', 'Table 2.3.2')),
  occupancy: valued(1, '', secondary('NDS', 'Table 2.3.2')),
  snow: valued(1.15, '', secondary('NDS', 'Table 2.3.2')),
  construction: valued(1.25, '', secondary('NDS', 'Table 2.3.2')),
  wind: valued(1.6, '', secondary('NDS', 'Table 2.3.2, ten minutes')),
  impact: valued(2, '', secondary('NDS', 'Table 2.3.2')),
};

/** Wet service of dimension lumber, over 19 % moisture: bending is reduced only where `Fb CF` is over `bendingOver`. */
export const WET_SERVICE: Published & {
  readonly bending: number;
  readonly bendingOver: number;
  readonly shear: number;
  readonly bearing: number;
  readonly stiffness: number;
} = {
  bending: 0.85,
  bendingOver: 1_150,
  shear: 0.97,
  bearing: 0.67,
  stiffness: 0.9,
  ...secondary('NDS Supplement', 'Table 4A adjustment factors'),
};

/** Wet service of posts and timbers. */
export const WET_TIMBER: Published & { readonly bending: number; readonly stiffness: number } = {
  bending: 1,
  stiffness: 1,
  ...fromMemory('NDS Supplement', 'Table 4D adjustment factors'),
};

/** Size and flat use factors by nominal width, for lumber up to 3" thick and for 4" thick. */
export interface WidthFactors extends Published {
  readonly rows: readonly { readonly upTo: number; readonly thin: number; readonly thick: number }[];
}

/** Not for Southern Pine, whose values hold the size effect already. */
export const SIZE_FACTORS: WidthFactors = {
  rows: [
    { upTo: 4, thin: 1.5, thick: 1.5 },
    { upTo: 5, thin: 1.4, thick: 1.4 },
    { upTo: 6, thin: 1.3, thick: 1.3 },
    { upTo: 8, thin: 1.2, thick: 1.3 },
    { upTo: 10, thin: 1.1, thick: 1.2 },
    { upTo: 12, thin: 1, thick: 1.1 },
    { upTo: Number.POSITIVE_INFINITY, thin: 0.9, thick: 1 },
  ],
  ...secondary('NDS Supplement', 'Table 4A, size factor for bending'),
};

/** For bending about the weak axis: loads on the wide face. */
export const FLAT_USE_FACTORS: WidthFactors = {
  rows: [
    { upTo: 3, thin: 1, thick: 1 },
    { upTo: 4, thin: 1.1, thick: 1 },
    { upTo: 5, thin: 1.1, thick: 1.05 },
    { upTo: 8, thin: 1.15, thick: 1.05 },
    { upTo: Number.POSITIVE_INFINITY, thin: 1.2, thick: 1.1 },
  ],
  ...secondary('NDS Supplement', 'Table 4A, flat use factor'),
};

/** Lumber pricked for treatment. */
export const INCISED: Published & { readonly strength: number; readonly stiffness: number } = {
  strength: 0.8,
  stiffness: 0.95,
  ...secondary('NDS', 'Table 4.3.8'),
};

/** Members of three or more that share a load, up to 24" apart. */
export const REPETITIVE = valued(1.15, '', secondary('NDS', '4.3.9'));

/** The factor of a width; `thick` for lumber of 4" nominal. */
export function widthFactor({ rows }: WidthFactors, nominalWidth: number, thick: boolean): number {
  const row = rows.find(({ upTo }) => nominalWidth <= upTo);
  return row === undefined ? 1 : thick ? row.thick : row.thin;
}
