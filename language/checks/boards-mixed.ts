import { formatLength, inches, mm } from '../units/index.ts';
import { commonPractice, type LimitedJobCheck, thresholdOf } from './define.ts';

/** Boards of one stock that were measured to be so unlike in width that their gaps show it. */
export const boardsMixed: LimitedJobCheck = {
  kind: {
    code: 'boards-mixed',
    severity: 'warning',
    stage: 'model',
    basis: commonPractice(
      'boards of mixed widths are sorted: the narrow ones into one bay or into rows that mirror',
    ),
    threshold: {
      is: 'length',
      imperial: inches(1 / 16),
      metric: mm(1.5),
      says: 'how far widths of one stock may differ before they are sorted',
    },
    message: (a) =>
      `${a.stock} measures ${a.least} to ${a.most} wide, ${a.spread} apart; over ${a.limit} is seen from gap to gap. ` +
      'Sort them by width: the narrow ones into one bay, or into rows that mirror each other. Gaps are worked out with the mean.',
  },
  check: (job) =>
    job.measuredStock.flatMap(({ name, measured }) => {
      const { widths = [], origin } = measured ?? {};
      const [least, most] = [Math.min(...widths), Math.max(...widths)];
      const limit = thresholdOf(job, boardsMixed.kind);
      if (!origin || widths.length < 2 || most - least <= limit) return [];
      const show = (ticks: number) => formatLength(ticks, job.measure.value);
      const args = {
        stock: name,
        least: show(least),
        most: show(most),
        spread: show(most - least),
        limit: show(limit),
      };
      return [{ code: 'boards-mixed', at: origin, args }];
    }),
};
