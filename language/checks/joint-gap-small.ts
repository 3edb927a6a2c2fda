import { slatJointsOf } from '../figures/index.ts';
import { jointGapOf } from '../layout/index.ts';
import { isMetric } from '../model/index.ts';
import { feet, formatLength, inches, mm } from '../units/index.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';
import { writeJointGap } from './write-joint-gap.ts';

/** Longer runs are so long that what slats grow adds up along them (common practice: 16 ft). */
const LONG_RUN = { imperial: feet(16), metric: mm(4_900) } as const;

/** Slats that meet end to end without room to grow, in a long run. */
export const jointGapSmall: LimitedRunCheck = {
  kind: {
    code: 'joint-gap-small',
    severity: 'information',
    stage: 'layout',
    basis: commonPractice('1/8" (3 mm) between ends that meet, in runs over 16\' (4.9 m)'),
    threshold: {
      is: 'length',
      imperial: inches(1 / 8),
      metric: mm(3),
      says: 'least space between slats that meet end to end, in a long run',
    },
    message: (a) =>
      `Slats meet end to end with ${a.gap} between them in a run ${a.length} long; with less than ${a.least} they push one another when they are wet. Write \`joint gap\` with ${a.least}.`,
  },
  check: (run, job) => {
    const { spec } = run;
    const least = thresholdOf(job, jointGapSmall.kind);
    const gap = jointGapOf(spec);
    const { origin } = spec.slatJoints?.gap ?? spec.infill.endGap;
    const long = spec.length.value > LONG_RUN[isMetric(job.measure.value) ? 'metric' : 'imperial'];
    // Where nothing is stated, the habit of the trade is taken, which is not told again.
    if (!long || gap >= least || origin.why !== 'stated') return [];
    const slats = slatJointsOf(run).map(({ slat }) => slat.key);
    if (slats.length === 0) return [];
    const length = (ticks: number) => formatLength(ticks, job.measure.value);
    return [
      {
        code: 'joint-gap-small',
        at: origin,
        args: {
          gap: gap === 0 ? 'nothing' : length(gap),
          length: length(spec.length.value),
          least: length(least),
        },
        pieces: [...new Set(slats)],
        fixes: [writeJointGap(spec, least)],
      },
    ];
  },
};
