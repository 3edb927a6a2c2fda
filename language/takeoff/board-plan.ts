import { type HandStock, isMetric, type Job, type Stock } from '../model/index.ts';
import { inches, type Money, mm, type Ticks } from '../units/index.ts';
import { type CutInstance, type CutSearch, type NoPlan, searchCuts } from './cutting/index.ts';
import { boughtFor, type StockDemand, sawnWidth, widthOf } from './demand.ts';
import { type PlannedBoard, plannedBoard, type SawnPiece } from './planned-board.ts';

/**
 * Boards bought, or taken from the yard, of one stock, for all that is cut from it: pieces as wide as it is, and those
 * ripped from it.
 */
export interface BoardPlan {
  /** What is bought. */
  readonly bought: Stock;
  /** What is cut from it: of the stock itself, and of strips ripped from it. */
  readonly demands: readonly StockDemand[];
  readonly kerf: Ticks;
  readonly trim: Ticks;
  /** Each board with its pieces. Empty where there is no plan. */
  readonly boards: readonly PlannedBoard[];
  /** Why there is no plan. */
  readonly none?: NoPlan | { readonly kind: 'no-lengths' };
  /** Boards bought, by length. */
  readonly buy: ReadonlyMap<Ticks, number>;
  /** Of all bought; undefined where a length has no price. */
  readonly cost?: Money;
  /**
   * No plan for these pieces costs less that crosscuts boards into parts, rips parts into strips over their length, and
   * crosscuts strips into pieces.
   */
  readonly bound?: Money;
  /** Whether no such plan is cheaper, or shorter where there are no prices. */
  readonly proven: boolean;
  /** Share of the area bought or taken that is neither pieces nor offcuts long enough to keep. */
  readonly waste: number;
}

/** A saw cuts so much away unless the job says otherwise (common practice: 1/8 in, 3 mm). */
const KERF = { imperial: inches(1 / 8), metric: mm(3) };
/** What a cut takes away. */
export function kerfOf({ saw, measure }: Job): Ticks {
  return saw.kerf?.value ?? KERF[isMetric(measure.value) ? 'metric' : 'imperial'];
}

/** Shorter offcuts are waste unless the job says otherwise (common practice: about a foot). */
const LEAST_OFFCUT = { imperial: inches(12), metric: mm(300) };

/** From what length on an offcut is worth keeping. */
export function keptFrom({ measure }: Job): Ticks {
  return LEAST_OFFCUT[isMetric(measure.value) ? 'metric' : 'imperial'];
}

/** A plan for a stock that can be improved step by step. */
export interface BoardSearch {
  readonly plan: () => BoardPlan;
  readonly search?: CutSearch;
}

/** A stock's lengths as the planner knows them: what is sold, then what lies in the yard. */
interface Sources {
  readonly bought: Stock;
  readonly hand: readonly { readonly stock: string; readonly width: Ticks; readonly of: HandStock }[];
  readonly priced: boolean;
}

/** Begins a plan for all that is cut from one stock: demands whose `boughtFor` is the same. */
export function searchBoards(demands: readonly StockDemand[], job: Job): BoardSearch {
  const [first] = demands;
  if (!first) throw new RangeError('a plan is of something');
  const bought = boughtFor(first.stock);
  const about = { demands, bought, kerf: kerfOf(job), trim: job.saw.trim?.value ?? 0 };
  const stocks = new Map([bought, ...demands.map(({ stock }) => stock)].map((stock) => [stock.name, stock]));
  const hand = job.onHand.flatMap((of) => {
    const stock = stocks.get(of.stock);
    return stock ? [{ stock: of.stock, width: widthOf(stock), of }] : [];
  });
  if (bought.lengths.length === 0 && hand.length === 0)
    return { plan: () => ({ ...about, ...NOTHING, none: { kind: 'no-lengths' } }) };
  const priced = bought.lengths.every(({ value }) => bought.prices?.has(value));
  const sources = { bought, hand, priced };
  const search = searchCuts(instanceOf(about, sources));
  return { search, plan: () => planOf(search, about, sources, keptFrom(job)) };
}

type About = Pick<BoardPlan, 'demands' | 'bought' | 'kerf' | 'trim'>;

const NOTHING = { boards: [], buy: new Map(), proven: false, waste: 0 } as const;

/** What a board counts for: its price, or without prices its length in tenths of a millimeter. */
function worthOf(bought: Stock, length: Ticks, priced: boolean): number {
  return priced ? (bought.prices?.get(length)?.value.minor ?? 0) : Math.round(length / 800);
}

/** Pieces by what the planner calls them: those of one length and width are alike. */
function piecesByLabel({ demands, bought }: About) {
  const byLabel = new Map<string, { length: Ticks; width: Ticks; pieces: SawnPiece[] }>();
  for (const { stock, wanted } of demands)
    for (const { length, pieces } of wanted)
      for (const piece of pieces) {
        const width = sawnWidth(piece, stock, bought);
        const held = byLabel.get(`${length} ${width}`) ?? { length, width, pieces: [] };
        held.pieces.push({ piece, length });
        byLabel.set(`${length} ${width}`, held);
      }
  return byLabel;
}

function instanceOf(about: About, { bought, hand, priced }: Sources): CutInstance {
  const { kerf, trim } = about;
  return {
    kerf,
    trim,
    pieces: [...piecesByLabel(about)].map(([label, { length, width, pieces }]) => ({
      label,
      length,
      width,
      count: pieces.length,
    })),
    stock: [
      ...bought.lengths.map(({ value }) => ({
        length: value,
        width: widthOf(bought),
        price: worthOf(bought, value, priced),
      })),
      ...hand.map(({ width, of }) => ({ length: of.length, width, price: 0, available: of.count })),
    ],
  };
}

function planOf(
  search: CutSearch,
  about: About,
  { bought, hand, priced }: Sources,
  leastOffcut: Ticks,
): BoardPlan {
  const plan = search.plan();
  if ('kind' in plan) return { ...about, ...NOTHING, none: plan };
  const left = piecesByLabel(about);
  const take = (label: string) => left.get(label)?.pieces.shift();
  const sold = bought.lengths.length;
  const boards = plan.boards.map((board) => {
    const own = hand[board.stock - sold];
    const { stock, width } = own ?? { stock: bought.name, width: widthOf(bought) };
    return plannedBoard(board, { stock, width, onHand: own !== undefined }, take);
  });
  const buy = new Map<Ticks, number>();
  for (const { length, onHand } of boards) if (!onHand) buy.set(length, (buy.get(length) ?? 0) + 1);
  const currency = [...(bought.prices?.values() ?? [])][0]?.value.currency ?? '';
  return {
    ...about,
    boards,
    buy,
    ...(priced ? { cost: { minor: plan.cost, currency }, bound: { minor: plan.bound, currency } } : {}),
    proven: plan.proven,
    waste: wasteOf(boards, leastOffcut),
  };
}

function wasteOf(boards: readonly PlannedBoard[], leastOffcut: Ticks): number {
  let [all, used] = [0, 0];
  const kept = (offcut: Ticks) => (offcut >= leastOffcut ? offcut : 0);
  for (const { length, width, offcut, parts } of boards) {
    all += length * width;
    used += kept(offcut) * width;
    for (const { strips } of parts)
      for (const strip of strips)
        used += (strip.pieces.reduce((sum, one) => sum + one.length, 0) + kept(strip.offcut)) * strip.width;
  }
  return all > 0 ? Math.max(0, (all - used) / all) : 0;
}
