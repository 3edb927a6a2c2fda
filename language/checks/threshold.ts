import { isMetric, type Job } from '../model/index.ts';
import type { FindingKind, Threshold } from './finding.ts';

/** A kind that has a limit. */
export type LimitedKind = FindingKind & { readonly threshold: Threshold };

/** Where a finding begins to be told in this job: its own limit, or the habit of the trade in its system. */
export function thresholdOf(job: Job, kind: LimitedKind): number {
  const { code, threshold } = kind;
  const stated = job.thresholds.find((one) => one.code === code && one.is === threshold.is);
  if (stated) return stated.value;
  return isMetric(job.measure.value) ? threshold.metric : threshold.imperial;
}
