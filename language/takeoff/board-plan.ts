import { type CutAim, isMetric, type Job, type Stock } from '../model/index.ts';
import { inches, type Money, mm, type Ticks } from '../units/index.ts';
import { type CutEnd, type CutInstance, type CutSearch, type NoPlan, searchCuts } from './cutting/index.ts';
import { boughtFor, type StockDemand, sawnWidth, widthOf } from './demand.ts';
import { middleOf, type PlannedBoard, plannedBoard, type TakenPiece } from './planned-board.ts';
import { sawnEnds, thicknessOf, turnsOver } from './sawn-ends.ts';
import { type YardBoard, yardOf } from './yard.ts';

/**
 * Boards bought, or taken from the yard, of one stock, for all that is cut from it: pieces as wide as it is, and those
 * ripped from it.
 */
export interface BoardPlan {
  /** What is bought. */
  readonly bought: Stock;
  /** What is cut from it: of the stock itself, and of strips ripped from it. */
  readonly demands: readonly StockDemand[];
  /**
   * What it is planned for: least cost (least length, where prices are missing), least length bought, or fewest settings
   * of the saw at the least cost or a stated share more.
   */
  readonly aim: CutAim;
  /** With fewest settings: that share. */
  readonly settingsWithin?: number;
  readonly kerf: Ticks;
  readonly trim: Ticks;
  /** Offcuts at least so long are kept. */
  readonly keptFrom: Ticks;
  /** The finest mark of the tape. */
  readonly step: Ticks;
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
   * crosscuts strips into pieces. Missing where it is not planned by price.
   */
  readonly bound?: Money;
  /**
   * Whether no such plan is cheaper, or buys less length where it is planned by that; nor, where fewest settings are asked
   * for, takes fewer of them for so much.
   */
  readonly proven: boolean;
  /** How often the stop is set where boards cut alike are cut together (see `CutPlan.settings`). */
  readonly settings: number;
  /** Where fewest were asked for: no plan for so much takes fewer. */
  readonly settingsBound?: number;
  /** Share of the area bought or taken that is neither pieces nor offcuts long enough to keep. */
  readonly waste: number;
}

/** Whether all that is cut from it comes off again. */
export function isTemporary({ demands }: Pick<BoardPlan, 'demands'>): boolean {
  return demands.every(({ temporary }) => temporary === true);
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
export function keptFrom({ measure, saw }: Job): Ticks {
  return saw.keep?.value ?? LEAST_OFFCUT[isMetric(measure.value) ? 'metric' : 'imperial'];
}

/** A plan for a stock that can be improved step by step. */
export interface BoardSearch {
  readonly plan: () => BoardPlan;
  readonly search?: CutSearch;
}

/** A stock's lengths as the planner knows them: what is sold, then what lies in the yard. */
interface Sources {
  readonly bought: Stock;
  readonly yard: readonly (YardBoard & { readonly width: Ticks })[];
  readonly priced: boolean;
  /** Planned by price, else by length. */
  readonly byPrice: boolean;
}

/** Begins a plan for all that is cut from one stock: demands whose `boughtFor` is the same. */
export function searchBoards(demands: readonly StockDemand[], job: Job): BoardSearch {
  const [first] = demands;
  if (!first) throw new RangeError('a plan is of something');
  const bought = boughtFor(first.stock);
  const aim = job.cutFor?.value ?? 'cost';
  const settingsWithin = aim === 'settings' ? (job.settingsWithin?.value ?? 0) : undefined;
  const trim = job.saw.trim?.value ?? 0;
  const about = {
    demands,
    bought,
    aim,
    ...(settingsWithin === undefined ? {} : { settingsWithin }),
    kerf: kerfOf(job),
    trim,
    keptFrom: keptFrom(job),
    step: job.measure.value.step,
  };
  const stocks = new Map([bought, ...demands.map(({ stock }) => stock)].map((stock) => [stock.name, stock]));
  const yard = yardOf(job, new Set(stocks.keys())).flatMap((board) => {
    const stock = stocks.get(board.stock);
    return stock ? [{ ...board, width: widthOf(stock) }] : [];
  });
  if (bought.lengths.length === 0 && yard.length === 0)
    return { plan: () => ({ ...about, ...NOTHING, none: { kind: 'no-lengths' } }) };
  const priced = bought.lengths.every(({ value }) => bought.prices?.has(value));
  const sources = { bought, yard, priced, byPrice: priced && aim !== 'waste' };
  const search = searchCuts(instanceOf(about, sources));
  return { search, plan: () => planOf(search, about, sources) };
}

type About = Pick<
  BoardPlan,
  'demands' | 'bought' | 'aim' | 'settingsWithin' | 'kerf' | 'trim' | 'keptFrom' | 'step'
>;

const NOTHING = { boards: [], buy: new Map(), proven: false, settings: 0, waste: 0 } as const;

/** What a board counts for: its price, or without prices its length in tenths of a millimeter. */
function worthOf(bought: Stock, length: Ticks, byPrice: boolean): number {
  return byPrice ? (bought.prices?.get(length)?.value.minor ?? 0) : Math.round(length / 800);
}

interface Labelled {
  readonly length: Ticks;
  readonly width: Ticks;
  readonly ends?: readonly [CutEnd, CutEnd];
  readonly pieces: TakenPiece[];
}

/** Pieces by what the planner calls them: those of one length and width and with the same ends are alike. */
function piecesByLabel({ demands, bought, kerf }: About): ReadonlyMap<string, Labelled> {
  const thickness = thicknessOf(bought);
  const byLabel = new Map<string, Labelled>();
  for (const { stock, wanted } of demands)
    for (const { length, pieces } of wanted)
      for (const piece of pieces) {
        const width = sawnWidth(piece, stock, bought);
        const ends = sawnEnds(piece, { width, thickness, kerf });
        const label = `${length} ${width}${ends ? ` ${JSON.stringify(ends)}` : ''}`;
        const held = byLabel.get(label) ?? { length, width, ...(ends ? { ends } : {}), pieces: [] };
        held.pieces.push({ piece, length, ...(ends ? { ends } : {}) });
        byLabel.set(label, held);
      }
  return byLabel;
}

function instanceOf(about: About, { bought, yard, byPrice }: Sources): CutInstance {
  const { kerf, trim, keptFrom: keep, settingsWithin } = about;
  return {
    ...(settingsWithin === undefined ? {} : { settingsWithin }),
    kerf,
    trim,
    keep,
    turnsOver: turnsOver(bought),
    mark: about.step,
    pieces: [...piecesByLabel(about)].map(([label, { pieces, ...one }]) => ({
      label,
      ...one,
      count: pieces.length,
    })),
    stock: [
      ...bought.lengths.map(({ value }) => ({
        length: value,
        width: widthOf(bought),
        price: worthOf(bought, value, byPrice),
      })),
      // The planner trims every board; what needs none is that much longer for it.
      ...yard.map((one) => ({
        length: one.length + trim - one.trim,
        width: one.width,
        price: 0,
        available: one.count,
      })),
    ],
  };
}

function planOf(search: CutSearch, about: About, { bought, yard, priced, byPrice }: Sources): BoardPlan {
  const plan = search.plan();
  if ('kind' in plan) return { ...about, ...NOTHING, none: plan };
  const left = piecesByLabel(about);
  const taken = new Map<string, number>();
  const take = (label: string) => {
    const at = taken.get(label) ?? 0;
    taken.set(label, at + 1);
    return left.get(label)?.pieces[at];
  };
  const sold = bought.lengths.length;
  const { kerf } = about;
  const boards = plan.boards.map((board) => {
    const own = yard[board.stock - sold];
    if (!own)
      return plannedBoard(
        board,
        { stock: bought.name, width: widthOf(bought), length: board.length },
        kerf,
        take,
      );
    const { stock, width, length, of } = own;
    return plannedBoard(board, { stock, width, length, onHand: of }, kerf, take);
  });
  const buy = new Map<Ticks, number>();
  for (const { length, onHand } of boards) if (!onHand) buy.set(length, (buy.get(length) ?? 0) + 1);
  const currency = [...(bought.prices?.values() ?? [])][0]?.value.currency ?? '';
  const cost = [...buy].reduce((sum, [length, count]) => sum + count * worthOf(bought, length, true), 0);
  return {
    ...about,
    boards,
    buy,
    ...(priced ? { cost: { minor: cost, currency } } : {}),
    ...(byPrice ? { bound: { minor: plan.bound, currency } } : {}),
    proven: plan.proven,
    settings: plan.settings,
    ...(plan.settingsBound === undefined ? {} : { settingsBound: plan.settingsBound }),
    waste: wasteOf(boards, about.keptFrom),
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
        used +=
          (strip.pieces.reduce((sum, one) => sum + middleOf(one), 0) + kept(strip.offcut)) * strip.width;
  }
  return all > 0 ? Math.max(0, (all - used) / all) : 0;
}
