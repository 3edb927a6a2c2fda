import type { Job, ThresholdMeasure } from '../model/index.ts';
import { LANGUAGE } from './define.ts';
import type { Finding, FindingKind } from './finding.ts';

const SUCH: Readonly<Record<ThresholdMeasure, string>> = {
  length: 'a length, such as 2" or 50 mm',
  percent: 'a percentage, such as 20 %',
  degrees: 'an angle, such as 5°',
  times: 'a number of times, such as 60 times',
};

/** What is wrong with the job's own thresholds and acceptances. */
export const decisionKinds: readonly FindingKind[] = [
  {
    code: 'threshold-unknown',
    severity: 'warning',
    stage: 'model',
    basis: LANGUAGE,
    message: (a) =>
      `No finding called ${a.code} has a threshold, so this changes nothing. The name of a finding stands beside it in the list of problems.`,
  },
  {
    code: 'threshold-wrong-kind',
    severity: 'warning',
    stage: 'model',
    basis: LANGUAGE,
    message: (a) =>
      `The threshold of ${a.code} is ${a.such}; what stands here is something else, and the usual one holds.`,
  },
  {
    code: 'accept-unknown',
    severity: 'warning',
    stage: 'model',
    basis: LANGUAGE,
    message: (a) =>
      a.error === 1
        ? `\`${a.code}\` tells of what cannot be built or read, so it cannot be left as it is.`
        : `No finding is called ${a.code}, so this changes nothing. The name of a finding stands beside it in the list of problems.`,
  },
];

/** Judges what the job says of findings, knowing which there are. */
export function checkDecisions(job: Job, kinds: ReadonlyMap<string, FindingKind>): readonly Finding[] {
  const found: Finding[] = [];
  for (const { code, is, named, origin } of job.thresholds) {
    const threshold = kinds.get(code)?.threshold;
    if (!threshold) found.push({ code: 'threshold-unknown', at: named, args: { code } });
    else if (threshold.is !== is)
      found.push({ code: 'threshold-wrong-kind', at: origin, args: { code, such: SUCH[threshold.is] } });
  }
  for (const { code, named } of job.accepted) {
    const kind = kinds.get(code);
    if (!kind || kind.severity === 'error')
      found.push({ code: 'accept-unknown', at: named, args: { code, error: kind ? 1 : 0 } });
  }
  return found;
}
