import type { Layout, Piece } from '../layout/index.ts';
import { type Job, type Stock, stocksOf } from '../model/index.ts';
import { ceilToStep, type Ticks } from '../units/index.ts';
import { neededAtOnce } from './used-again.ts';

/** Pieces of one stock, of one length, as they are sawn. */
export interface Wanted {
  /** Longest edge, up to the next mark of the tape: what it takes from the board. */
  readonly length: Ticks;
  readonly pieces: readonly Piece[];
}

/** Everything of one stock. */
export interface StockDemand {
  readonly stock: Stock;
  /** Longest first. */
  readonly wanted: readonly Wanted[];
  readonly count: number;
  /** What comes off again and can be used again: no part of the screen. */
  readonly temporary?: true;
  /** Sum of all lengths as laid out. */
  readonly total: Ticks;
}

/** Pieces by the stock they are cut from, in the order the stock is stated, that of used files first of all. */
export function demandOf(layout: Layout, job: Job): readonly StockDemand[] {
  const step = job.measure.value.step;
  const stocks = stockByName(layout, job);
  const screen = byStock(layout.runs.flatMap((run) => run.pieces).filter(({ role }) => !NO_STOCK.has(role)));
  const temporary = byStock(layout.runs.flatMap((run) => neededAtOnce(run, step)));
  const all = [
    ...[...screen].map(([name, pieces]) => [name, pieces, {}] as const),
    ...[...temporary].map(([name, pieces]) => [name, pieces, { temporary: true }] as const),
  ];
  return all.flatMap(([name, pieces, kind]): StockDemand[] => {
    const stock = stocks.get(name);
    if (!stock) return [];
    const byLength = new Map<Ticks, Piece[]>();
    for (const piece of pieces) {
      const length = ceilToStep(piece.cut.longPoint, step);
      const held = byLength.get(length);
      if (held) held.push(piece);
      else byLength.set(length, [piece]);
    }
    const wanted = [...byLength].map(([length, all]) => ({ length, pieces: all }));
    return [
      {
        stock,
        wanted: wanted.sort((a, b) => b.length - a.length),
        count: pieces.length,
        ...kind,
        total: pieces.reduce((sum, { cut }) => sum + cut.longPoint, 0),
      },
    ];
  });
}

function byStock(pieces: readonly Piece[]): ReadonlyMap<string, readonly Piece[]> {
  const found = new Map<string, Piece[]>();
  for (const piece of pieces) {
    const held = found.get(piece.cut.stock);
    if (held) held.push(piece);
    else found.set(piece.cut.stock, [piece]);
  }
  return found;
}

/** Demands that are cut from the same boards, together; in the order of the first of each. */
export function demandsByBought(demands: readonly StockDemand[]): readonly (readonly StockDemand[])[] {
  const byBought = new Map<string, StockDemand[]>();
  for (const demand of demands) {
    const { name } = boughtFor(demand.stock);
    const held = byBought.get(name);
    if (held) held.push(demand);
    else byBought.set(name, [demand]);
  }
  return [...byBought.values()];
}

/** What is bought for a stock: itself, or the board that it is, through others, ripped from. */
export function boughtFor(stock: Stock): Stock {
  let bought = stock;
  while (bought.kind === 'rip' && bought.parent) bought = bought.parent;
  return bought;
}

/** As wide as it is laid on the saw. */
export function widthOf(stock: Stock): Ticks {
  return stock.kind === 'post' ? stock.along.value : stock.width.value;
}

/**
 * How wide a piece is sawn: its own width where it is a strip, or ripped to close a pattern, else all of the board, however
 * it is turned. A fit may ask for more than the board has; that is told elsewhere.
 */
export function sawnWidth({ cut }: Piece, stock: Stock, bought: Stock): Ticks {
  const isStrip = stock.kind === 'rip' || cut.ripped;
  return isStrip ? Math.min(cut.width, widthOf(bought)) : widthOf(bought);
}

/** Stock by name: that of the file, and whatever its runs are made of. */
function stockByName({ runs }: Layout, { stock }: Job): ReadonlyMap<string, Stock> {
  return new Map([
    ...runs.flatMap(({ spec }) => [...stocksOf(spec)]),
    ...stock.map((each) => [each.name, each] as const),
  ]);
}

/** Made from offcuts, or bought as hardware. */
const NO_STOCK: ReadonlySet<Piece['role']> = new Set<Piece['role']>(['spacer', 'cable']);
