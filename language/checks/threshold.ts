import { type Job, limitOf } from '../model/index.ts';
import type { FindingKind, Threshold } from './finding.ts';

/** A kind that has a limit. */
export type LimitedKind = FindingKind & { readonly threshold: Threshold };

/** Where a finding begins to be told in this job: its own limit, or the habit of the trade in its system. */
export function thresholdOf(job: Job, kind: LimitedKind): number {
  const { code, threshold } = kind;
  return limitOf(job, code, threshold.is, threshold);
}
