import { demandOf } from '../takeoff/index.ts';
import { JOB, type LayoutCheck } from './define.ts';
import type { Finding } from './finding.ts';

/** Stock that is bought without a price where other stock of the job has one, so that the sum lacks it. */
export const noPrice: LayoutCheck = {
  kind: {
    code: 'no-price',
    severity: 'warning',
    stage: 'layout',
    basis: JOB,
    message: (a) =>
      `The ${a.kind} ${a.stock} has no price${a.some ? ' for every length' : ''}, so what it costs is in no sum. Write it behind each length: \`lengths 8' $19.20 each\`.`,
  },
  check: (layout, job) => {
    const bought = new Map(
      demandOf(layout, job).map(({ stock }) => {
        const from = stock.kind === 'rip' && stock.parent ? stock.parent : stock;
        return [from.name, from] as const;
      }),
    );
    const stocks = [...bought.values()].filter(({ lengths }) => lengths.length > 0);
    if (!stocks.some(({ prices }) => prices && prices.size > 0)) return [];
    return stocks.flatMap((stock): Finding[] => {
      if (stock.lengths.every(({ value }) => stock.prices?.has(value))) return [];
      const some = stock.prices && stock.prices.size > 0 ? 1 : 0;
      return [{ code: 'no-price', at: stock.origin, args: { stock: stock.name, kind: stock.kind, some } }];
    });
  },
};
