import { windOn } from '../figures/index.ts';
import { OPEN_FROM } from '../standards/index.ts';
import { type LimitedRunCheck, thresholdOf } from './define.ts';
import { loadText } from './loads-text.ts';

/** Gaps that look as if they let the wind through and take hardly anything off the load. */
export const opennessRelief: LimitedRunCheck = {
  kind: {
    code: 'openness-relief',
    severity: 'information',
    stage: 'layout',
    basis: {
      kind: 'published',
      source: 'ASCE 7',
      section: 'Fig. 29.3-1, walls with openings of less than 30 %',
      confirmed: 'secondary',
    },
    threshold: {
      is: 'percent',
      imperial: 15,
      metric: 15,
      says: 'open share of a face from which its small relief from wind is told',
    },
    message: (a) =>
      `${a.open} of this face is open, and under 30 % counts as solid with openings: the gaps take only ${a.relief} off the wind, which stays ${a.wind}. Reckon posts as for a closed screen.`,
  },
  check: (run, job) => {
    if (job.site.wind?.kind !== 'speed') return [];
    const { solidity, pressure } = windOn(run, job);
    const open = 1 - solidity;
    if (open >= OPEN_FROM.value || 100 * open < thresholdOf(job, opennessRelief.kind)) return [];
    const relief = open ** 1.5;
    return [
      {
        code: 'openness-relief',
        at: run.spec.infill.fill,
        args: {
          open: `${(100 * open).toFixed(0)} %`,
          relief: `${(100 * relief).toFixed(0)} %`,
          wind: loadText(pressure, 'psf', job),
        },
      },
    ];
  },
};
