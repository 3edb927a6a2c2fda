import type { Acceptance, Job, RunSpec } from '../model/index.ts';
import type { Finding, FindingKind } from './finding.ts';

/**
 * What the job says of a finding it accepts; undefined for one it does not. A finding lies in a run when
 * it was found there, or else when it is told at one of the run's statements. Errors are never accepted.
 */
export function acceptanceOf(
  finding: Finding,
  kind: FindingKind,
  job: Job,
  run?: RunSpec,
): Acceptance | undefined {
  if (kind.severity === 'error') return undefined;
  return job.accepted.find(
    (one) => one.code === finding.code && (one.run === undefined || one.run === runNameOf(finding, job, run)),
  );
}

function runNameOf({ at }: Finding, job: Job, run: RunSpec | undefined): string | undefined {
  if (run) return run.name;
  return job.runs.find(
    ({ origin }) =>
      origin.uri === at.uri &&
      (at.path === origin.path ||
        (/^[/.]/.test(at.path.slice(origin.path.length)) && at.path.startsWith(origin.path))),
  )?.name;
}
