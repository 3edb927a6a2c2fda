import { isMetric } from '../model/index.ts';
import { orderOf } from '../takeoff/index.ts';
import { formatLength, formatNumber } from '../units/index.ts';
import { commonPractice, type LimitedLayoutCheck, thresholdOf } from './define.ts';
import { firstTakeoff } from './planned.ts';

/** A job that is priced with fewer spare boards than one of each section and length, or than a twentieth. */
export const sparesFew: LimitedLayoutCheck = {
  kind: {
    code: 'spares-few',
    severity: 'information',
    stage: 'layout',
    basis: commonPractice(
      '5 % spares of dry stock, 10 % of knotty, 15 % of wet, never fewer than one of a section and length',
    ),
    threshold: { is: 'percent', imperial: 5, metric: 5, says: 'least share of boards bought as spares' },
    message: (a) =>
      `${a.spare === 0 ? 'No' : `Only ${a.spare}`} spare of ${a.needed} ${a.stock} in ${a.length}${a.more ? `, and ${a.more} more like it` : ''}: one board that splits stops the work. Write \`spares ${a.percent} %, at least 1\` in the job.`,
  },
  check: (layout, job) => {
    const { quote, spares } = job;
    if (!quote.origin) return [];
    const percent = thresholdOf(job, sparesFew.kind);
    const metric = isMetric(job.measure.value);
    const few = orderOf(firstTakeoff(layout, job).plans, job, metric).filter(
      ({ needed, spare }) => spare < Math.max(percent > 0 ? 1 : 0, (needed * percent) / 100),
    );
    const [first] = few;
    if (!first) return [];
    const args = {
      stock: first.stock,
      length: formatLength(first.length, job.measure.value),
      needed: first.needed,
      spare: first.spare,
      more: few.length - 1,
      percent: formatNumber(percent),
    };
    return [{ code: 'spares-few', at: spares?.origin ?? quote.origin, args }];
  },
};
