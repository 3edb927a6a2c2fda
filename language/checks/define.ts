import type { Layout, RunLayout } from '../layout/index.ts';
import type { Job } from '../model/index.ts';
import type { Basis, Finding, FindingKind } from './finding.ts';
import type { LimitedKind } from './threshold.ts';

/** A check of one run's pieces. Reads only what it is given, so its findings can be remembered with the run. */
export interface RunCheck {
  readonly kind: FindingKind;
  readonly check: (run: RunLayout, job: Job) => readonly Finding[];
}

/** A check whose limit a job may set otherwise. */
export type LimitedRunCheck = RunCheck & { readonly kind: LimitedKind };

/** A check of how runs stand to one another. */
export interface LayoutCheck {
  readonly kind: FindingKind;
  readonly check: (layout: Layout, job: Job) => readonly Finding[];
}

export type LimitedLayoutCheck = LayoutCheck & { readonly kind: LimitedKind };

/** A check of the job as stated, before any piece. */
export interface JobCheck {
  readonly kind: FindingKind;
  readonly check: (job: Job) => readonly Finding[];
}

export type LimitedJobCheck = JobCheck & { readonly kind: LimitedKind };

export { thresholdOf } from './threshold.ts';

/** Basis of what no table decides: the thing cannot be built as written. */
export const GEOMETRY: Basis = { kind: 'geometry', source: 'the pieces as laid out' };

/** Basis of what the language asks for. */
export const LANGUAGE: Basis = { kind: 'language', source: 'the language of .slat files' };

/** Basis of what the job itself demands. */
export const JOB: Basis = { kind: 'job', source: "the job's own statement" };

/** Basis of a habit of the trade; `source` says which. */
export function commonPractice(source: string): Basis {
  return { kind: 'common practice', source };
}
