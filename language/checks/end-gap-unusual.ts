import { DEFAULT_LENGTHS, isMetric, type Job, type Sourced } from '../model/index.ts';
import { formatLength, inches, mm, spellLength, type Ticks } from '../units/index.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';
import type { Finding } from './finding.ts';
import { infillsOf } from './infills.ts';

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
        : `Slats of ${a.where} have ${a.gap} at each end; over ${a.limit} is seen and holds less. Write \`end gap ${a.usual}\`, or what their maker asks for.`,
  },
  check: (run, job) => {
    const limit = thresholdOf(job, endGapUnusual.kind);
    const seen = new Set<string>();
    return infillsOf(run).flatMap(({ spec: { endGap }, slats, leaf }): readonly Finding[] => {
      const { value, origin } = endGap;
      // A gate that states none has the run's, of which is told once.
      if (origin.why !== 'stated' || seen.has(origin.path) || slats.length === 0) return [];
      if (value > 0 && value <= limit) return [];
      seen.add(origin.path);
      return [toldOf(endGap, limit, leaf ? `gate ${leaf.gate}` : run.spec.name, job)];
    });
  },
};

function toldOf({ value, origin }: Sourced<Ticks>, limit: Ticks, where: string, job: Job): Finding {
  const measure = job.measure.value;
  const usual = DEFAULT_LENGTHS.endGap[isMetric(measure) ? 'metric' : 'imperial'];
  const text = spellLength(usual, measure);
  const show = (ticks: Ticks) => formatLength(ticks, measure);
  return {
    code: 'end-gap-unusual',
    at: origin,
    args: { where, none: value === 0 ? 1 : 0, gap: show(value), limit: show(limit), usual: text },
    fixes: [
      {
        title: `Leave ${text} at each end`,
        changes: [{ uri: origin.uri, path: origin.path, place: 'replace', text }],
      },
    ],
  };
}
