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
    const { plans } = firstTakeoff(layout, job);
    const wanted = new Set(
      plans.flatMap((plan) => [plan.bought, ...plan.demands.map((one) => one.stock)]).map(({ name }) => name),
    );
    const used = new Set(
      plans.flatMap(({ boards }) =>
        boards.flatMap(({ onHand }) => (onHand ? `${onHand.stock} ${onHand.length}` : [])),
      ),
    );
    return job.onHand.flatMap(({ stock, length, count, origin }): Finding[] => {
      if (used.has(`${stock} ${length}`)) return [];
      const shown = formatLength(length, job.measure.value);
      return [
        {
          code: 'bought-unused',
          at: origin,
          args: { stock, length: shown, count, wanted: wanted.has(stock) ? 1 : 0 },
        },
      ];
    });
  },
};
