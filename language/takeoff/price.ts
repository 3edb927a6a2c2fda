import { isBackHalf, type Layout } from '../layout/index.ts';
import { isMetric, type Job, type Quote, type TaskCount } from '../model/index.ts';
import type { Money } from '../units/index.ts';
import type { BoardPlan } from './board-plan.ts';
import type { Item } from './hardware.ts';
import { orderOf } from './order.ts';
import { cutsOf } from './planned-board.ts';

/** A line of a price. Without a rate or a price it says what is missing, and counts for nothing. */
export interface PriceLine {
  readonly group: 'boards' | 'hardware' | 'labor' | 'extra';
  readonly what: string;
  readonly count: number;
  readonly unit: string;
  readonly minor?: number;
  /** What is missing to price it. */
  readonly lacks?: string;
}

/** What a job costs and what is asked for it, as far as rates and prices are given; money in minor units. */
export interface Price {
  readonly currency: string;
  readonly lines: readonly PriceLine[];
  readonly material: number;
  readonly labor: number;
  readonly minutes: number;
  readonly overhead: number;
  /** By markup on cost, or by margin of what is asked. */
  readonly profit: number;
  readonly net: number;
  readonly tax: number;
  readonly gross: number;
  readonly deposit?: number;
  /** Whether every line has its price. */
  readonly whole: boolean;
}

/** Prices boards, hardware and work by what the job states; undefined where it states no money at all. */
export function priceOf(
  layout: Layout,
  job: Job,
  plans: readonly BoardPlan[],
  items: readonly Item[],
): Price | undefined {
  const { quote } = job;
  const lines: PriceLine[] = [
    ...boardLines(plans, job),
    ...items.map((item) => itemLine(item, quote)),
    ...laborLines(layout, plans, quote),
    ...quote.extras.map(({ what, count, price }) => ({
      group: 'extra' as const,
      what,
      count,
      unit: '',
      minor: count * price.minor,
    })),
  ];
  const currency = currencyOf(job, plans);
  if (currency === undefined) return undefined;
  const sum = (group: PriceLine['group']) =>
    lines.reduce((total, line) => total + (line.group === group ? (line.minor ?? 0) : 0), 0);
  const [material, labor] = [sum('boards') + sum('hardware') + sum('extra'), sum('labor')];
  const direct = material + labor;
  const overhead = Math.round(direct * (quote.overhead?.value ?? 0));
  const cost = direct + overhead;
  // Markup is a share of what it costs; margin a share of what is asked.
  const markup = Math.round(cost * (quote.markup?.value ?? 0));
  const margin = quote.margin ? Math.round(cost / (1 - quote.margin.value)) - cost : 0;
  const net = cost + (quote.margin ? margin : markup);
  const tax = Math.round(net * (quote.tax?.value ?? 0));
  const gross = net + tax;
  return {
    currency,
    lines,
    material,
    labor,
    minutes: lines.reduce((total, line) => total + (line.unit === 'minutes' ? line.count : 0), 0),
    overhead,
    profit: net - cost,
    net,
    tax,
    gross,
    ...(quote.deposit ? { deposit: depositOf(gross, quote.deposit) } : {}),
    whole: lines.every(({ lacks }) => lacks === undefined),
  };
}

/** The share asked for, or as much as may be. */
function depositOf(gross: number, { share, most }: NonNullable<Quote['deposit']>): number {
  return Math.min(Math.round(gross * share.value), most?.value.minor ?? Infinity);
}

function currencyOf(job: Job, plans: readonly BoardPlan[]): string | undefined {
  const stated: (Money | undefined)[] = [
    ...plans.map(({ cost }) => cost),
    job.quote.labor?.value,
    ...job.quote.prices.map(({ price }) => price),
    ...job.quote.extras.map(({ price }) => price),
  ];
  return job.currency ?? stated.find((money) => money && money.currency !== '')?.currency;
}

/** Boards as ordered, then those ordered besides. */
function boardLines(plans: readonly BoardPlan[], job: Job): PriceLine[] {
  const stocks = new Map(plans.map(({ bought }) => [bought.name, bought]));
  const order = orderOf(plans, job, isMetric(job.measure.value));
  return (['needed', 'spare'] as const).flatMap((which) =>
    order.flatMap((line): PriceLine[] => {
      const bought = stocks.get(line.stock);
      if (!bought || line[which] === 0) return [];
      const what =
        which === 'spare' ? `${line.stock}, spare` : line.temporary ? `${line.stock}, temporary` : line.stock;
      return [boardLine(bought, line.length, line[which], what)];
    }),
  );
}

function boardLine(bought: BoardPlan['bought'], length: number, count: number, what: string): PriceLine {
  const price = bought.prices?.get(length)?.value;
  const line = { group: 'boards' as const, what, count, unit: String(length) };
  return price ? { ...line, minor: count * price.minor } : { ...line, lacks: `price of ${bought.name}` };
}

function itemLine({ name, what, count, unit }: Item, { prices }: Quote): PriceLine {
  const price = prices.find((one) => one.item === name)?.price;
  const line = { group: 'hardware' as const, what, count, unit };
  return price ? { ...line, minor: Math.round(count * price.minor) } : { ...line, lacks: `price ${name}` };
}

function laborLines(layout: Layout, plans: readonly BoardPlan[], { tasks, labor }: Quote): PriceLine[] {
  return tasks.map(({ name, minutes, per }) => {
    const spent = minutes * countOf(per, layout, plans);
    const line = { group: 'labor' as const, what: name, count: spent, unit: 'minutes' };
    return labor
      ? { ...line, minor: Math.round((spent / 60) * labor.value.minor) }
      : { ...line, lacks: 'labor' };
  });
}

function countOf(per: TaskCount, { runs }: Layout, plans: readonly BoardPlan[]): number {
  const pieces = runs.flatMap((run) => run.pieces);
  const boards = plans.flatMap((plan) => plan.boards);
  switch (per) {
    case 'job':
      return 1;
    case 'run':
      return runs.length;
    case 'bay':
      return runs.reduce((sum, { bays }) => sum + bays.filter(({ gate }) => gate === undefined).length, 0);
    case 'post':
    case 'hole':
      return pieces.filter((piece) => piece.role === 'post' && !isBackHalf(piece)).length;
    case 'slat':
      return pieces.filter(({ role }) => role === 'slat').length;
    case 'piece':
      return pieces.length;
    case 'gate':
      return runs.reduce((sum, { leaves }) => sum + leaves.length, 0);
    case 'board':
      return boards.length;
    case 'cut':
      return boards.reduce((sum, board) => sum + cutsOf(board), 0);
  }
}
