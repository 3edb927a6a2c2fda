import { cutOffAngle, seeThrough } from '../figures/index.ts';
import { formatDegrees } from '../units/index.ts';
import { JOB, type RunCheck } from './define.ts';
import { infillsOf, openingSize } from './infills.ts';

/** More open area, straight on, than the job's `see-through at most`: for a run's bays and each gate. */
export const tooOpen: RunCheck = {
  kind: {
    code: 'too-open',
    severity: 'warning',
    stage: 'layout',
    basis: JOB,
    message: (a) =>
      `${a.open} % of it is open straight on; this job allows ${a.limit} %. The gaps close to the eye ` +
      `from ${a.angle} off square. Narrower gaps or wider slats bring it down.`,
  },
  check: (run, job) => {
    const limit = job.privacy.seeThrough;
    if (!limit) return [];
    return infillsOf(run).flatMap((infill) => {
      const share = seeThrough(infill.openings, infill.slats);
      if (share <= limit.value) return [];
      const steepest = Math.max(...infill.openings.map((o) => cutOffAngle(openingSize(infill, o), o.depth)));
      return [
        {
          code: 'too-open',
          at: infill.spec.fill,
          args: {
            open: Math.round(share * 1000) / 10,
            limit: Math.round(limit.value * 1000) / 10,
            angle: formatDegrees(steepest),
          },
          related: [{ at: limit.origin, note: 'the limit stands here' }],
        },
      ];
    });
  },
};
