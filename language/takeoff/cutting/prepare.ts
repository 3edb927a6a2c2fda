import { greatestCommon } from './greatest-common.ts';
import { type Item, rippedSpaces } from './prepare-ripping.ts';
import type { CutInstance, CutStock, NoPlan, Problem } from './problem.ts';

/** Decimals are brought to whole numbers by at most this factor. */
const FINEST = 1_000_000;
/** So many pieces are planned at most. */
const MOST_PIECES = 100_000;
/** Sums of lengths stay whole numbers that a float holds. */
const LARGEST = 2 ** 42;
type Board = CutStock & { readonly index: number; readonly room: number; readonly across: number };

/**
 * The instance in whole numbers. Lengths that differ by less than a millionth of the unit are one; stock that
 * another, no shorter, no narrower and no dearer and without limit, replaces is left out.
 *
 * @throws RangeError for lengths, counts or prices that are negative or no numbers
 */
export function prepare(instance: CutInstance): Problem | NoPlan {
  check(instance);
  const { kerf, trim = 0, stock } = instance;
  const pieces = instance.pieces.filter(({ count }) => count > 0);
  const none = withoutBoard(pieces, stock.filter(has), trim);
  if (none) return none;
  const lengths = [kerf, trim, ...[...pieces, ...stock].map(({ length }) => length)];
  const { whole, factor } = wholeNumbers([
    ...lengths,
    ...[...pieces, ...stock].flatMap(({ width }) => width ?? []),
  ]);
  const [k, t] = [whole(kerf), whole(trim)];
  const bySize = new Map<string, Item>();
  for (const { label, length, width = 0, count } of pieces) {
    const [along, across] = [whole(length) + k, whole(width) + k];
    const item = bySize.get(`${along} ${across}`) ?? { along, across, labels: [] };
    for (let i = 0; i < count; i++) item.labels.push(label);
    bySize.set(`${along} ${across}`, item);
  }
  const items = [...bySize.values()].sort((a, b) => b.along - a.along || b.across - a.across);
  const total = items.reduce((sum, { labels }) => sum + labels.length, 0);
  const scale = total + 1;
  const boards = stock
    .map((one, index) => ({
      ...one,
      index,
      room: whole(one.length) - t + k,
      across: whole(one.width ?? 0) + k,
    }))
    .filter((one) => has(one) && items.some((item) => fits(item, one)));
  const useful = boards.filter((one) => !boards.some((other) => replaces(other, one)));
  const ripped = new Set([...items, ...useful].map(({ across }) => across)).size > 1;
  const divisor = items.map(({ along }) => along).reduce(greatestCommon, 0) || 1;
  const spaces = ripped
    ? rippedSpaces(items, useful, divisor, (whole) => whole / factor, k)
    : {
        sizes: items.map(({ along }) => along / divisor),
        capacities: useful.map(({ room }) => Math.floor(room / divisor)),
        unit: divisor / factor,
      };
  return {
    ...spaces,
    demands: items.map(({ labels }) => labels.length),
    costs: useful.map(({ price }) => (price === 0 ? 0 : price * scale + 1)),
    available: useful.map(({ available }) =>
      available === undefined ? Infinity : Math.min(available, total),
    ),
    scale,
    // What parts it off is taken from it.
    keep: instance.keep === undefined ? Infinity : Math.ceil((instance.keep + kerf) / spaces.unit - 1e-9),
    labels: items.map(({ labels }) => labels),
    stockOf: useful.map(({ index }) => index),
  };
}

const fits = (item: Item, board: Board): boolean => item.along <= board.room && item.across <= board.across;

/** Why some pieces come from no board at all; undefined when each has one. */
function withoutBoard(
  pieces: CutInstance['pieces'],
  stock: CutInstance['stock'],
  trim: number,
): NoPlan | undefined {
  const labelsOf = (bad: (piece: CutInstance['pieces'][number]) => boolean) =>
    pieces.filter(bad).map(({ label }) => label);
  const [longest, widest] = [
    stock.reduce((most, { length }) => Math.max(most, length - trim), 0),
    stock.reduce((most, { width = 0 }) => Math.max(most, width), 0),
  ];
  const tooWide = stock.length > 0 ? labelsOf(({ width = 0 }) => width > widest + 1e-9) : [];
  if (tooWide.length > 0) return { kind: 'too-wide', labels: tooWide, widest };
  const tooLong = labelsOf(
    ({ length, width = 0 }) =>
      !stock.some((one) => length <= one.length - trim + 1e-9 && width <= (one.width ?? 0) + 1e-9),
  );
  return tooLong.length > 0 ? { kind: 'too-long', labels: tooLong, longest } : undefined;
}

const has = ({ available }: CutStock): boolean => available === undefined || available > 0;

/** Whether one makes the other needless; of two alike the first stays. */
function replaces(one: Board, other: Board): boolean {
  if (one.index === other.index || one.available !== undefined) return false;
  if (one.room < other.room || one.across < other.across || one.price > other.price) return false;
  const alike =
    one.room === other.room &&
    one.across === other.across &&
    one.price === other.price &&
    other.available === undefined;
  return !alike || one.index < other.index;
}

function check({ kerf, trim = 0, pieces, stock }: CutInstance): void {
  const all = [...pieces, ...stock];
  if (
    ![kerf, trim].every((one) => Number.isFinite(one) && one >= 0) ||
    !all.every(({ length, width = 1 }) => [length, width].every((one) => one > 0 && one < Infinity))
  )
    throw new RangeError('lengths and widths are greater than 0; kerf and trim are 0 or more');
  if (new Set(all.map(({ width }) => width === undefined)).size > 1)
    throw new RangeError('widths are stated of all pieces and all stock, or of none');
  const counts = [...pieces.map(({ count }) => count), ...stock.flatMap(({ available }) => available ?? [])];
  if (!counts.every((one) => Number.isSafeInteger(one) && one >= 0))
    throw new RangeError('counts are whole numbers, 0 or more');
  const total = pieces.reduce((sum, { count }) => sum + count, 0);
  if (total > MOST_PIECES) throw new RangeError(`more than ${MOST_PIECES} pieces are not planned at once`);
  if (stock.some(({ price }) => price * (total + 1) ** 2 > 2 ** 51))
    throw new RangeError('prices are too large for so many pieces');
  if (!stock.every(({ price }) => Number.isSafeInteger(price) && price >= 0))
    throw new RangeError('prices are whole numbers of the smallest unit of money, 0 or more');
}

/** The least power of ten, or such a fraction, that makes all whole. */
function wholeNumbers(lengths: readonly number[]): { whole: (length: number) => number; factor: number } {
  let factor = 1;
  while (factor < FINEST && !lengths.every((one) => isWhole(one * factor))) factor *= 10;
  const most = lengths.reduce((longest, one) => Math.max(longest, one), 0) * factor;
  if (most > LARGEST) throw new RangeError('lengths are too large for their finest fraction');
  return { whole: (length) => Math.round(length * factor), factor };
}

const isWhole = (x: number): boolean => Math.abs(x - Math.round(x)) < 1e-7;
