import { pocketOf } from '../layout/index.ts';
import { DEFAULT_LENGTHS, type InfillSpec, isMetric, type Job, usualEndGap } from '../model/index.ts';
import { formatLength, inches, mm, spellLength, type Ticks } from '../units/index.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';
import type { Finding } from './finding.ts';
import { infillsOf } from './infills.ts';
import { replaceAt } from './written-change.ts';

/** Slats with no gap at their ends, which have no room to swell, or with one that shows. */
export const endGapUnusual: LimitedRunCheck = {
  kind: {
    code: 'end-gap-unusual',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('1/8" (3 mm) at each end of a slat, 1/4" (6 mm) at most'),
    threshold: {
      is: 'length',
      imperial: inches(1 / 4),
      metric: mm(6),
      says: 'widest gap at the end of a slat that is not seen',
    },
    message: (a) =>
      a.none
        ? `Slats of ${a.where} have no gap at their ends: they buckle when they swell, or push the posts apart. Write \`end gap ${a.usual}\`, or what their maker asks for.`
        : `Slats of ${a.where} have ${a.gap} at each end; over ${a.limit} ${a.hidden ? 'leaves less of them held' : 'is seen and holds less'}. Write \`end gap ${a.usual}\`, or what their maker asks for.`,
  },
  check: (run, job) => {
    const limit = thresholdOf(job, endGapUnusual.kind);
    const seen = new Set<string>();
    return infillsOf(run).flatMap(({ spec, slats, leaf }): readonly Finding[] => {
      const { value, origin } = spec.endGap;
      // In channels more is usual, and is not seen.
      const most = Math.max(limit, usualGap(spec, job));
      // A gate that states none has the run's, of which is told once.
      if (origin.why !== 'stated' || seen.has(origin.path) || slats.length === 0) return [];
      if (value > 0 && value <= most) return [];
      seen.add(origin.path);
      return [toldOf(spec, most, leaf ? `gate ${leaf.gate}` : run.spec.name, job)];
    });
  },
};

function usualGap({ mounting }: InfillSpec, { measure }: Job): Ticks {
  return DEFAULT_LENGTHS[usualEndGap(mounting.value)][isMetric(measure.value) ? 'metric' : 'imperial'];
}

function toldOf(spec: InfillSpec, limit: Ticks, where: string, job: Job): Finding {
  const { value, origin } = spec.endGap;
  const measure = job.measure.value;
  const text = spellLength(usualGap(spec, job), measure);
  const hidden = pocketOf(spec.mounting.value, 0) ? 1 : 0;
  const show = (ticks: Ticks) => formatLength(ticks, measure);
  return {
    code: 'end-gap-unusual',
    at: origin,
    args: { where, none: value === 0 ? 1 : 0, hidden, gap: show(value), limit: show(limit), usual: text },
    fixes: [
      {
        title: `Leave ${text} at each end`,
        changes: [replaceAt(origin, text)],
      },
    ],
  };
}
