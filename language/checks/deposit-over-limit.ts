import { formatMoney } from '../units/index.ts';
import { JOB, type LayoutCheck } from './define.ts';
import { firstTakeoff } from './planned.ts';

/** A deposit whose share comes to more than the limit that the job states beside it. */
export const depositOverLimit: LayoutCheck = {
  kind: {
    code: 'deposit-over-limit',
    severity: 'warning',
    stage: 'layout',
    basis: JOB,
    message: (a) =>
      `${a.percent} % of ${a.gross} is ${a.share}, which is over the ${a.most} stated; the price asks for ${a.most}. Caps on deposits differ by place: ask yours.`,
  },
  check: (layout, job) => {
    const { deposit } = job.quote;
    const price = deposit?.most && firstTakeoff(layout, job).price;
    if (!deposit?.most || !price) return [];
    const share = Math.round(price.gross * deposit.share.value);
    if (share <= deposit.most.value.minor) return [];
    const money = (minor: number) => formatMoney({ minor, currency: price.currency });
    const args = {
      percent: Math.round(1e4 * deposit.share.value) / 100,
      gross: money(price.gross),
      share: money(share),
      most: money(deposit.most.value.minor),
    };
    return [{ code: 'deposit-over-limit', at: deposit.share.origin, args }];
  },
};
