import { wallGaps } from '../figures/index.ts';
import { formatLength } from '../units/index.ts';
import { commonPractice, type RunCheck } from './define.ts';
import type { Finding } from './finding.ts';

/** A wall that was not measured over all of the height that stands beside it. */
export const wallUnmeasured: RunCheck = {
  kind: {
    code: 'wall-unmeasured',
    severity: 'information',
    stage: 'layout',
    basis: commonPractice(
      'a wall is measured at the bottom, the middle and the top of what stands beside it',
    ),
    message: (a) =>
      `The wall is measured from ${a.from} to ${a.to} up, and what stands beside it goes from ${a.bottom} to ${a.top}. ` +
      'Beyond what is measured it is taken to be plumb: measure it there too.',
  },
  check: (run, job) => {
    const measure = job.measure.value;
    return wallGaps(run).flatMap(({ face, reach, post }): Finding[] => {
      const { profile } = face.spec;
      if (profile?.kind !== 'points') return [];
      const [first, last] = [profile.points[0], profile.points.at(-1)];
      const [bottom, top] = reach.map((z) => Math.round(z - face.ground)) as [number, number];
      if (!first || !last) return [];
      if (first.height <= bottom + measure.step && last.height >= top - measure.step) return [];
      const shown = (ticks: number) => formatLength(Math.max(0, ticks), measure);
      return [
        {
          code: 'wall-unmeasured',
          at: face.spec.origin,
          args: {
            from: shown(first.height),
            to: shown(last.height),
            bottom: shown(bottom),
            top: shown(top),
          },
          pieces: [post.key],
        },
      ];
    });
  },
};
