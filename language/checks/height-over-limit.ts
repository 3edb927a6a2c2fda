import { formatLength, spellLength, type Ticks } from '../units/index.ts';
import { heightOfBay } from './bay-height.ts';
import { JOB, type RunCheck } from './define.ts';
import { replaceAt } from './written-change.ts';

/**
 * Higher than the job allows, from the lowest ground within each bay to the top of its posts and their caps; along a
 * top that slopes, from the ground right below.
 */
export const heightOverLimit: RunCheck = {
  kind: {
    code: 'height-over-limit',
    severity: 'error',
    stage: 'layout',
    basis: JOB,
    message: (a) =>
      `Bay ${a.bay} is ${a.height} above the lowest ground within it; this job allows ${a.limit}. Lower the height, or step down with the ground. Local rules decide.`,
  },
  check: (run, job) => {
    const limit = job.heightLimit;
    if (!limit) return [];
    const measure = job.measure.value;
    let worst: { bay: number; height: Ticks } | undefined;
    for (const bay of run.bays) {
      const height = heightOfBay(run, bay)?.most ?? 0;
      if (height > limit.value && (!worst || height > worst.height)) worst = { bay: bay.number, height };
    }
    if (!worst) return [];
    const { origin, value } = run.spec.height;
    const lower = value.high - (worst.height - limit.value);
    const fix = {
      title: `Lower the height to ${formatLength(lower, measure)}`,
      changes: [replaceAt(origin, `height ${spellLength(lower, measure)}`)],
    };
    const fixes = lower > run.spec.bottom.value.high ? [fix] : [];
    const args = {
      bay: worst.bay,
      height: formatLength(worst.height, measure),
      limit: formatLength(limit.value, measure),
    };
    const related = [{ at: limit.origin, note: 'the limit stands here' }];
    return [{ code: 'height-over-limit', at: origin, args, related, fixes }];
  },
};
