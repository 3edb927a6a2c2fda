import { formatLength } from '../units/index.ts';
import type { LayoutCheck } from './define.ts';
import { JOB } from './define.ts';
import type { Finding } from './finding.ts';
import { firstTakeoff } from './planned.ts';

/** Boards on hand of which the plan takes none. */
export const boughtUnused: LayoutCheck = {
  kind: {
    code: 'bought-unused',
    severity: 'information',
    stage: 'layout',
    basis: JOB,
    message: (a) =>
      a.wanted
        ? `None of the ${a.count} ${a.stock} of ${a.length} on hand is used as first planned: no piece fits it, or longer ones do. \`slatwright takeoff\` looks for longer.`
        : `Nothing in this job is cut from ${a.stock}, so the ${a.count} of ${a.length} on hand lie unused.`,
  },
  check: (layout, job) => {
    if (job.onHand.length === 0) return [];
    const plans = new Map(firstTakeoff(layout, job).plans.map((plan) => [plan.demand.stock.name, plan]));
    return job.onHand.flatMap(({ stock, length, count, origin }): Finding[] => {
      const plan = plans.get(stock);
      if (plan?.used.get(length)) return [];
      const shown = formatLength(length, job.measure.value);
      return [
        { code: 'bought-unused', at: origin, args: { stock, length: shown, count, wanted: plan ? 1 : 0 } },
      ];
    });
  },
};
