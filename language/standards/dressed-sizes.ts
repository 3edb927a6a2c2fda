import { inches, type Ticks } from '../units/index.ts';
import { type Published, secondary } from './source.ts';

/** A size as it is called and as it is when dressed and dry. */
export interface DressedSize {
  readonly nominal: Ticks;
  readonly dressed: Ticks;
}

/**
 * Softwood lumber: what a nominal size is when surfaced and dry (19 % moisture or less).
 * Source: American Softwood Lumber Standard PS 20, dressed dry sizes of boards and dimension lumber;
 * seen in two reference pages that transcribe it (secondary).
 */
export const DRESSED_SIZES: Published & {
  readonly width: readonly DressedSize[];
  readonly thickness: readonly DressedSize[];
} = {
  width: [
    { nominal: inches(2), dressed: inches(1.5) },
    { nominal: inches(3), dressed: inches(2.5) },
    { nominal: inches(4), dressed: inches(3.5) },
    { nominal: inches(5), dressed: inches(4.5) },
    { nominal: inches(6), dressed: inches(5.5) },
    { nominal: inches(8), dressed: inches(7.25) },
    { nominal: inches(10), dressed: inches(9.25) },
    { nominal: inches(12), dressed: inches(11.25) },
  ],
  thickness: [
    { nominal: inches(1), dressed: inches(0.75) },
    { nominal: inches(1.25), dressed: inches(1) },
    { nominal: inches(1.5), dressed: inches(1.25) },
    { nominal: inches(2), dressed: inches(1.5) },
    { nominal: inches(2.5), dressed: inches(2) },
    { nominal: inches(3), dressed: inches(2.5) },
    { nominal: inches(4), dressed: inches(3.5) },
  ],
  ...secondary('American Softwood Lumber Standard PS 20', 'dressed dry sizes'),
};

/** Nominal inches of a dressed width: 6 for 5-1/2". The next size up where it is between two; halves under 2. */
export function nominalOf(width: Ticks): number {
  const size = DRESSED_SIZES.width.find(({ dressed }) => width <= dressed);
  return size ? Math.round(size.nominal / inches(1)) : Math.round(width / inches(1) + 0.75);
}

/** What a board called so wide measures, or undefined when no board is called that. */
export function dressedWidthOf(width: Ticks): Ticks | undefined {
  return DRESSED_SIZES.width.find((size) => size.nominal === width)?.dressed;
}
