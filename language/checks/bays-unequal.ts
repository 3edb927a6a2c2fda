import type { Bay } from '../layout/index.ts';
import { formatLength, inches, mm } from '../units/index.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';

/** Bays of one run that differ enough to be seen. The bay a gate hangs in does not count. */
export const baysUnequal: LimitedRunCheck = {
  kind: {
    code: 'bays-unequal',
    severity: 'information',
    stage: 'layout',
    basis: commonPractice('bays of a run are alike within 1/4", and none is a short leftover'),
    threshold: {
      is: 'length',
      imperial: inches(0.25),
      metric: mm(6),
      says: 'how far bays may differ and still look alike',
    },
    message: (a) =>
      `Bays differ: bay ${a.narrow} is ${a.least} clear, bay ${a.wide} is ${a.most}. ` +
      'Unless that is meant, move a post or the gate, or give a number of bays.',
  },
  check: (run, job) => {
    const bays = run.bays.filter((bay) => bay.gate === undefined);
    const narrow = pick(bays, (a, b) => a.clear < b.clear);
    const wide = pick(bays, (a, b) => a.clear > b.clear);
    if (!narrow || !wide || wide.clear - narrow.clear <= thresholdOf(job, baysUnequal.kind)) return [];
    return [
      {
        code: 'bays-unequal',
        at: run.spec.spacing.origin,
        args: {
          narrow: narrow.number,
          wide: wide.number,
          least: formatLength(narrow.clear, job.measure.value),
          most: formatLength(wide.clear, job.measure.value),
        },
      },
    ];
  },
};

function pick(bays: readonly Bay[], better: (a: Bay, b: Bay) => boolean): Bay | undefined {
  return bays.reduce<Bay | undefined>((best, bay) => (!best || better(bay, best) ? bay : best), undefined);
}
