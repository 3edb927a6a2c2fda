import { greatestCommon } from './greatest-common.ts';
import type { Problem, Ripping } from './problem.ts';
import { waysAcross } from './ways-across.ts';

/** Boards that are ripped are cut by tables with so many places along them at most. */
const MOST_PLACES = 12_000;
/** Areas stay whole numbers that a float holds, summed over all pieces. */
const LARGEST_AREA = 2 ** 34;

/** Pieces of one length and width, in whole numbers with a kerf each. */
export interface Item {
  readonly along: number;
  readonly across: number;
  readonly labels: string[];
}

/**
 * Spaces of pieces and boards as areas, and what may lie beside what.
 *
 * @param divisor of all pieces' lengths
 * @param shown a whole number in the unit of the instance
 */
export function rippedSpaces(
  items: readonly Item[],
  boards: readonly { readonly room: number; readonly across: number }[],
  divisor: number,
  shown: (whole: number) => number,
  kerf: number,
): Pick<Problem, 'sizes' | 'capacities' | 'unit' | 'ripping'> {
  const longest = Math.max(...boards.map(({ room }) => room)) / divisor;
  const step = divisor * Math.max(1, Math.ceil(longest / MOST_PLACES));
  const widths = [...new Set(items.map(({ across }) => across))].sort((a, b) => b - a);
  const across = [...new Set(boards.map((board) => board.across))];
  const found = across.map((room) => waysAcross(widths, room));
  const common = [...items, ...boards].map((one) => one.across).reduce(greatestCommon, 0) || 1;
  const areaOf = (along: number, wide: number) => (along / divisor) * (wide / common);
  // Areas are rounded so that pieces ask for less and boards give more: what they bound stays true.
  const part = Math.max(1, ...boards.map((board) => areaOf(board.room, board.across) / LARGEST_AREA));
  const ripping: Ripping = {
    along: items.map(({ along }) => Math.ceil(along / step)),
    widthOf: items.map((item) => widths.indexOf(item.across)),
    widths,
    room: boards.map(({ room }) => Math.floor(room / step)),
    acrossOf: boards.map((board) => across.indexOf(board.across)),
    across,
    ways: found.map(({ ways }) => ways),
    coarse: step !== divisor || found.some(({ all }) => !all),
    shown: widths.map((wide) => shown(wide - kerf)),
    kerf: shown(kerf),
  };
  return {
    sizes: items.map((item) => Math.floor(areaOf(item.along, item.across) / part)),
    capacities: boards.map((board) => Math.ceil(areaOf(board.room, board.across) / part)),
    unit: shown(step),
    ripping,
  };
}
