import { demandOf } from '../takeoff/index.ts';
import { commonPractice, type LayoutCheck } from './define.ts';
import type { Finding } from './finding.ts';

/** Treated stock is cut, and no sealer for its ends is on the list of what is bought. */
export const treatedEnds: LayoutCheck = {
  kind: {
    code: 'treated-ends',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('cut ends and holes of treated wood are brushed with preservative'),
    message: (a) =>
      `${a.ends} ends of treated ${a.stock} are cut, and the quote has no sealer for them. Untreated wood shows at each: write \`price sealer $22 each\`.`,
  },
  check: (layout, job) => {
    if (!job.quote.origin || job.quote.prices.some(({ item }) => item === 'sealer')) return [];
    return demandOf(layout, job).flatMap(({ stock, count, temporary }): Finding[] => {
      const treated = stock.material?.treated;
      if (!treated || temporary) return [];
      const args = { stock: stock.name, ends: 2 * count };
      return [{ code: 'treated-ends', at: treated.origin, args }];
    });
  },
};
