import type { Sourced, Stock } from './job.ts';

/** Lengths that stock is sold in, shortest first: a rip is as long as the board it comes from. */
export function soldLengths(stock: Stock): readonly Sourced<number>[] {
  if (stock.lengths.length > 0) return stock.lengths;
  return stock.kind === 'rip' && stock.parent ? soldLengths(stock.parent) : [];
}
