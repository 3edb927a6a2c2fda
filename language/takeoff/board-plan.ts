import type { Piece } from '../layout/index.ts';
import { type FlatStock, type HandStock, isMetric, type Job, type Stock } from '../model/index.ts';
import { inches, type Money, mm, type Ticks } from '../units/index.ts';
import { type CutBoard, type CutInstance, type CutSearch, type NoPlan, searchCuts } from './cutting/index.ts';
import type { StockDemand } from './demand.ts';

/** A board, or a strip of one, and the pieces cut from it, longest first. */
export interface PlannedBoard {
  readonly length: Ticks;
  /** From the yard, at no cost. */
  readonly onHand: boolean;
  /** Each with the length it is sawn to. */
  readonly pieces: readonly { readonly piece: Piece; readonly length: Ticks }[];
  /** Left behind the last cut. */
  readonly offcut: Ticks;
}

/** Boards bought, or taken from the yard, of one stock; cut as planned. */
export interface BoardPlan {
  readonly demand: StockDemand;
  /** What is bought: the stock itself, or the board its strips are ripped from. */
  readonly bought: Stock;
  /** Strips of this stock that a board gives side by side; 1 for what is not ripped. */
  readonly strips: number;
  readonly kerf: Ticks;
  readonly trim: Ticks;
  /** Each board or strip with its pieces. Empty where there is no plan. */
  readonly boards: readonly PlannedBoard[];
  /** Why there is no plan. */
  readonly none?: NoPlan | { readonly kind: 'no-lengths' };
  /** Whole boards bought, by length. */
  readonly buy: ReadonlyMap<Ticks, number>;
  /** From the yard, by length. */
  readonly used: ReadonlyMap<Ticks, number>;
  /** Of all bought; undefined where a length has no price. */
  readonly cost?: Money;
  /** No plan for these pieces costs less; with strips, none that rips every board into them. */
  readonly bound?: Money;
  /** Whether no plan is cheaper, or shorter where there are no prices. */
  readonly proven: boolean;
  /** Share of the length bought that is neither pieces nor offcuts long enough to keep. */
  readonly waste: number;
}

/** A saw cuts so much away unless the job says otherwise (common practice: 1/8 in, 3 mm). */
const KERF = { imperial: inches(1 / 8), metric: mm(3) };
/** What a cut takes away. */
export function kerfOf({ saw, measure }: Job): Ticks {
  return saw.kerf?.value ?? KERF[isMetric(measure.value) ? 'metric' : 'imperial'];
}

/** Shorter offcuts are waste (common practice: about a foot). */
const LEAST_OFFCUT = { imperial: inches(12), metric: mm(300) };

/** A plan for a stock that can be improved step by step. */
export interface BoardSearch {
  readonly plan: () => BoardPlan;
  readonly search?: CutSearch;
}

export function searchBoards(demand: StockDemand, job: Job): BoardSearch {
  const { stock } = demand;
  const system = isMetric(job.measure.value) ? 'metric' : 'imperial';
  const kerf = kerfOf(job);
  const trim = job.saw.trim?.value ?? 0;
  const bought = stock.kind === 'rip' && stock.parent ? stock.parent : stock;
  const strips = stock.kind === 'rip' && stock.parent ? stripsOf(widestOf(demand), stock.parent, kerf) : 1;
  const about = { demand, bought, strips, kerf, trim };
  const hand = job.onHand.filter((one) => one.stock === stock.name);
  if (bought.lengths.length === 0 && hand.length === 0)
    return { plan: () => ({ ...about, ...NOTHING, none: { kind: 'no-lengths' } }) };
  const priced = bought.lengths.every(({ value }) => bought.prices?.has(value));
  const instance = instanceOf(demand, bought, hand, kerf, trim, priced);
  const search = searchCuts(instance);
  return {
    search,
    plan: () => planOf(search, about, bought.lengths.length, priced, LEAST_OFFCUT[system]),
  };
}

const NOTHING = { boards: [], buy: new Map(), used: new Map(), proven: false, waste: 0 } as const;

/** A fit may have made a strip wider than its stock states. */
function widestOf({ wanted }: StockDemand): Ticks {
  let widest = 0;
  for (const { pieces } of wanted) for (const { cut } of pieces) widest = Math.max(widest, cut.width);
  return widest;
}

/** As many as lie side by side with a cut between any two. */
export function stripsOf(width: Ticks, board: FlatStock, kerf: Ticks): number {
  return Math.max(1, Math.floor((board.width.value + kerf) / (width + kerf)));
}

/** What a board counts for: its price, or without prices its length in tenths of a millimeter. */
function worthOf(bought: Stock, length: Ticks, priced: boolean): number {
  return priced ? (bought.prices?.get(length)?.value.minor ?? 0) : Math.round(length / 800);
}

/**
 * What whole boards cost at least when their strips, each at the price of a board, cost so much: that over the strips of
 * a board; and where all boards cost the same, whole times that price.
 */
function wholeBoards(bound: number, strips: number, worths: ReadonlySet<number>): number {
  const least = bound / strips - 1e-9;
  const [only] = worths;
  return worths.size === 1 && only ? Math.ceil(least / only) * only : Math.ceil(least);
}

function instanceOf(
  { wanted }: StockDemand,
  bought: Stock,
  hand: readonly HandStock[],
  kerf: Ticks,
  trim: Ticks,
  priced: boolean,
): CutInstance {
  const price = (length: Ticks) => worthOf(bought, length, priced);
  return {
    kerf,
    trim,
    pieces: wanted.map(({ length, pieces }) => ({ label: String(length), length, count: pieces.length })),
    stock: [
      ...bought.lengths.map(({ value }) => ({ length: value, price: price(value) })),
      ...hand.map(({ length, count }) => ({ length, price: 0, available: count })),
    ],
  };
}

function planOf(
  search: CutSearch,
  about: Pick<BoardPlan, 'demand' | 'bought' | 'strips' | 'kerf' | 'trim'>,
  sold: number,
  priced: boolean,
  leastOffcut: Ticks,
): BoardPlan {
  const plan = search.plan();
  if ('kind' in plan) return { ...about, ...NOTHING, none: plan };
  const { strips, demand, bought } = about;
  const boards = withPieces(plan.boards, demand, sold);
  const [buy, used] = [new Map<Ticks, number>(), new Map<Ticks, number>()];
  for (const { stock, length } of plan.boards) {
    const map = stock < sold ? buy : used;
    map.set(length, (map.get(length) ?? 0) + 1);
  }
  // Strips come side by side, whole boards at a time.
  for (const [length, count] of buy) buy.set(length, Math.ceil(count / strips));
  const price = (length: Ticks) => bought.prices?.get(length)?.value;
  const currency = [...(bought.prices?.values() ?? [])][0]?.value.currency ?? '';
  const minor = [...buy].reduce((sum, [length, count]) => sum + count * (price(length)?.minor ?? 0), 0);
  const worths = new Set(bought.lengths.map(({ value }) => worthOf(bought, value, priced)));
  const worth = [...buy].reduce((sum, [length, count]) => sum + count * worthOf(bought, length, priced), 0);
  const bound = Math.min(worth, wholeBoards(plan.bound, strips, worths));
  const length = plan.boards.reduce((sum, board) => sum + board.length, 0);
  const kept = plan.boards.reduce((sum, { offcut }) => sum + (offcut >= leastOffcut ? offcut : 0), 0);
  const cut = demand.wanted.reduce((sum, one) => sum + one.length * one.pieces.length, 0);
  return {
    ...about,
    boards,
    buy,
    used,
    ...(priced ? { cost: { minor, currency }, bound: { minor: bound, currency } } : {}),
    proven: bound >= worth,
    waste: length > 0 ? Math.max(0, (length - cut - kept) / length) : 0,
  };
}

/** The planner knows pieces by their length; here each gets one that is of it. */
function withPieces(boards: readonly CutBoard[], { wanted }: StockDemand, sold: number): PlannedBoard[] {
  const left = new Map(wanted.map(({ length, pieces }) => [String(length), { length, pieces: [...pieces] }]));
  return boards.map(({ length, offcut, stock, pieces }) => ({
    length,
    offcut,
    onHand: stock >= sold,
    pieces: pieces.flatMap((label) => {
      const held = left.get(label);
      const piece = held?.pieces.shift();
      return held && piece ? [{ piece, length: held.length }] : [];
    }),
  }));
}
