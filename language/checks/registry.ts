import { findOverlaps, type RunLayout } from '../layout/index.ts';
import type { Job, Problem } from '../model/index.ts';
import { baysUnequal } from './bays-unequal.ts';
import { boardTooLong } from './board-too-long.ts';
import type { JobCheck, RunCheck } from './define.ts';
import type { Finding, FindingKind } from './finding.ts';
import { gapTooWide } from './gap-too-wide.ts';
import { impossibleGeometry } from './impossible-geometry.ts';
import { leafTooWide } from './leaf-too-wide.ts';
import { nominalSize } from './nominal-size.ts';
import { patternOpen } from './pattern-open.ts';
import { ripTooThin } from './rip-too-thin.ts';
import { spanTooLong } from './span-too-long.ts';
import { fixesOf } from './stated-fixes.ts';
import { statedProblems } from './stated-problems.ts';
import { textProblems } from './text-problems.ts';
import { tooOpen } from './too-open.ts';

const JOB_CHECKS: readonly JobCheck[] = [nominalSize];

const RUN_CHECKS: readonly RunCheck[] = [
  baysUnequal,
  boardTooLong,
  gapTooWide,
  leafTooWide,
  patternOpen,
  ripTooThin,
  spanTooLong,
  tooOpen,
];

/** Every kind of finding there is: the one registry of code, severity, message and basis. */
export const FINDING_KINDS: readonly FindingKind[] = [
  ...textProblems,
  ...statedProblems,
  ...impossibleGeometry,
  ...JOB_CHECKS.map((check) => check.kind),
  ...RUN_CHECKS.map((check) => check.kind),
];

const BY_CODE = new Map(FINDING_KINDS.map((kind) => [kind.code, kind]));

/** The kind a code stands for. A code that is not registered is a defect and throws. */
export function findingKind(code: string): FindingKind {
  const kind = BY_CODE.get(code);
  if (!kind) throw new Error(`no finding is registered as ${code}`);
  return kind;
}

/** What the text says, in the language of the registry. */
export function messageOf(finding: Pick<Finding, 'code' | 'args'>): string {
  return findingKind(finding.code).message(finding.args);
}

/** Findings on the job as stated: problems of reading it, then the checks that need no piece. */
export function checkJob(job: Job): readonly Finding[] {
  return [...job.problems.map(toldOf), ...JOB_CHECKS.flatMap((check) => check.check(job))];
}

/** Findings on one run's pieces: impossible geometry, then every check. Pure, so it can be remembered with the run. */
export function checkRun(run: RunLayout, job: Job): readonly Finding[] {
  return [...run.problems, ...findOverlaps(run)]
    .map(toldOf)
    .concat(RUN_CHECKS.flatMap((check) => check.check(run, job)));
}

function toldOf(problem: Problem): Finding {
  const { code, origin, args, related } = problem;
  return {
    code,
    at: origin,
    args,
    related: related?.map((r) => ({ at: r.origin, note: r.note })) ?? [],
    fixes: fixesOf(problem),
  };
}
