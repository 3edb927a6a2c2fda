import { formatLength, inches, mm, type Ticks } from '../units/index.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';
import { infillsOf } from './infills.ts';

/** A slat ripped for the fit that comes out narrower than 1-1/2" (40 mm) or than half its width. */
export const ripTooThin: LimitedRunCheck = {
  kind: {
    code: 'rip-too-thin',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('a ripped last slat is no narrower than 1-1/2" (40 mm), nor than half its width'),
    threshold: {
      is: 'length',
      imperial: inches(1.5),
      metric: mm(40),
      says: 'narrowest strip, which splits when fastened and looks like a mistake below',
    },
    message: (a) =>
      `The ripped ${a.slat} comes out ${a.width} wide; under ${a.least} it splits easily and looks like a mistake. ` +
      'Close the pattern another way, or start with fewer slats.',
  },
  check: (run, job) => {
    const narrowest = thresholdOf(job, ripTooThin.kind);
    return infillsOf(run).flatMap((infill) => {
      const full = new Map(infill.spec.pattern.repeat.map(({ value }) => [value.name, value.width.value]));
      const thin = infill.slats.filter((slat) => {
        return slat.cut.ripped && slat.cut.width < leastOf(full.get(slat.cut.stock), narrowest);
      });
      const [first] = thin;
      if (!first) return [];
      return [
        {
          code: 'rip-too-thin',
          at: infill.spec.fit.remedies[0] ? infill.spec.fit.origin : infill.spec.fill,
          args: {
            slat: first.cut.stock,
            width: formatLength(first.cut.width, job.measure.value),
            least: formatLength(leastOf(full.get(first.cut.stock), narrowest), job.measure.value),
          },
          pieces: thin.map((slat) => slat.key),
        },
      ];
    });
  },
};

function leastOf(full: Ticks | undefined, narrowest: Ticks): Ticks {
  return Math.max(narrowest, (full ?? 0) / 2);
}
