import type { CutInstance, CutStock, NoPlan, Problem } from './problem.ts';

/** Decimals are brought to whole numbers by at most this factor. */
const FINEST = 1_000_000;
/** So many pieces are planned at most. */
const MOST_PIECES = 100_000;
/** Sums of lengths stay whole numbers that a float holds. */
const LARGEST = 2 ** 42;

/**
 * The instance in whole numbers. Lengths that differ by less than a millionth of the unit are one; stock that
 * another, no shorter and no dearer and without limit, replaces is left out.
 *
 * @throws RangeError for lengths, counts or prices that are negative or no numbers
 */
export function prepare(instance: CutInstance): Problem | NoPlan {
  check(instance);
  const { kerf, trim = 0, stock } = instance;
  const pieces = instance.pieces.filter(({ count }) => count > 0);
  const longest = Math.max(0, ...stock.filter(has).map(({ length }) => length - trim));
  const tooLong = pieces.filter(({ length }) => length > longest + 1e-9);
  if (tooLong.length > 0) return { kind: 'too-long', labels: tooLong.map(({ label }) => label), longest };
  const { whole, factor } = wholeNumbers([
    kerf,
    trim,
    ...pieces.map((p) => p.length),
    ...stock.map((s) => s.length),
  ]);
  const [k, t] = [whole(kerf), whole(trim)];
  const bySize = new Map<number, string[]>();
  for (const { label, length, count } of pieces) {
    const size = whole(length) + k;
    const labels = bySize.get(size) ?? [];
    for (let i = 0; i < count; i++) labels.push(label);
    bySize.set(size, labels);
  }
  const sizes = [...bySize.keys()].sort((a, b) => b - a);
  const total = sizes.reduce((sum, size) => sum + (bySize.get(size)?.length ?? 0), 0);
  const scale = total + 1;
  const boards = stock
    .map((one, index) => ({ ...one, index, capacity: whole(one.length) - t + k }))
    .filter((one) => has(one) && one.capacity >= (sizes.at(-1) ?? 0));
  const useful = boards.filter((one) => !boards.some((other) => replaces(other, one)));
  const divisor = sizes.length === 0 ? 1 : [...sizes].reduce(greatestCommon);
  return {
    sizes: sizes.map((size) => size / divisor),
    demands: sizes.map((size) => bySize.get(size)?.length ?? 0),
    capacities: useful.map(({ capacity }) => Math.floor(capacity / divisor)),
    costs: useful.map(({ price }) => (price === 0 ? 0 : price * scale + 1)),
    available: useful
      .map(({ available }) => Math.min(available ?? Infinity, total))
      .map((n, i) => (useful[i]?.available === undefined ? Infinity : n)),
    scale,
    unit: divisor / factor,
    labels: sizes.map((size) => bySize.get(size) ?? []),
    stockOf: useful.map(({ index }) => index),
  };
}

const has = ({ available }: CutStock): boolean => available === undefined || available > 0;

type Board = CutStock & { readonly index: number; readonly capacity: number };

/** Whether one makes the other needless; of two alike the first stays. */
function replaces(one: Board, other: Board): boolean {
  if (one.index === other.index || one.available !== undefined) return false;
  if (one.capacity < other.capacity || one.price > other.price) return false;
  const alike = one.capacity === other.capacity && one.price === other.price && other.available === undefined;
  return !alike || one.index < other.index;
}

function check({ kerf, trim = 0, pieces, stock }: CutInstance): void {
  const lengths = [...pieces, ...stock].map(({ length }) => length);
  if (
    ![kerf, trim].every((one) => Number.isFinite(one) && one >= 0) ||
    !lengths.every((one) => one > 0 && one < Infinity)
  )
    throw new RangeError('lengths are greater than 0; kerf and trim are 0 or more');
  const counts = [...pieces.map(({ count }) => count), ...stock.flatMap(({ available }) => available ?? [])];
  if (!counts.every((one) => Number.isSafeInteger(one) && one >= 0))
    throw new RangeError('counts are whole numbers, 0 or more');
  const total = pieces.reduce((sum, { count }) => sum + count, 0);
  if (total > MOST_PIECES) throw new RangeError(`more than ${MOST_PIECES} pieces are not planned at once`);
  if (Math.max(0, ...stock.map(({ price }) => price)) * (total + 1) ** 2 > 2 ** 51)
    throw new RangeError('prices are too large for so many pieces');
  if (!stock.every(({ price }) => Number.isSafeInteger(price) && price >= 0))
    throw new RangeError('prices are whole numbers of the smallest unit of money, 0 or more');
}

/** The least power of ten, or such a fraction, that makes all whole. */
function wholeNumbers(lengths: readonly number[]): { whole: (length: number) => number; factor: number } {
  let factor = 1;
  while (factor < FINEST && !lengths.every((one) => isWhole(one * factor))) factor *= 10;
  const most = Math.max(...lengths) * factor;
  if (most > LARGEST) throw new RangeError('lengths are too large for their finest fraction');
  return { whole: (length) => Math.round(length * factor), factor };
}

const isWhole = (x: number): boolean => Math.abs(x - Math.round(x)) < 1e-7;

function greatestCommon(a: number, b: number): number {
  while (b !== 0) [a, b] = [b, a % b];
  return a;
}
