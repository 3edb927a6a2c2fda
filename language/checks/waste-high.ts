import { statedLimit } from '../model/index.ts';
import { formatNumber } from '../units/index.ts';
import { commonPractice, type LimitedLayoutCheck, thresholdOf } from './define.ts';
import type { Finding } from './finding.ts';
import { firstTakeoff } from './planned.ts';

/** Stock of which more is wasted than the job allows; told only where the job states how much. */
export const wasteHigh: LimitedLayoutCheck = {
  kind: {
    code: 'waste-high',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('boards cut to length lose 5 to 10 %; the job states how much is too much'),
    threshold: {
      is: 'percent',
      imperial: 10,
      metric: 10,
      says: 'greatest share of a stock lost to kerf, rips and short offcuts; told only where it is stated',
    },
    message: (a) =>
      `Of ${a.stock}, ${a.waste} % is lost to the saw, to rips and to short offcuts as first planned; ${a.most} % is what the job allows. Another length of board, or bays a little narrower, may fit better.`,
  },
  check: (layout, job) => {
    const stated = statedLimit(job, 'waste-high', 'percent');
    if (!stated) return [];
    const most = thresholdOf(job, wasteHigh.kind);
    return firstTakeoff(layout, job).plans.flatMap(({ bought, waste, none }): Finding[] => {
      if (none || 100 * waste <= most) return [];
      const args = { stock: bought.name, waste: formatNumber(100 * waste), most: formatNumber(most) };
      return [
        { code: 'waste-high', at: stated.origin, args, related: [{ at: bought.origin, note: bought.name }] },
      ];
    });
  },
};
