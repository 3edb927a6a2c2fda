import type { RunLayout } from '../../layout/index.ts';
import type { Job } from '../../model/index.ts';

/** A calculation asked for by several checks of the same run: worked out once for a run in a job. */
export function oncePerRun<T>(calculate: (run: RunLayout, job: Job) => T): (run: RunLayout, job: Job) => T {
  const known = new WeakMap<RunLayout, { readonly job: Job; readonly value: T }>();
  return (run, job) => {
    const held = known.get(run);
    if (held?.job === job) return held.value;
    const value = calculate(run, job);
    known.set(run, { job, value });
    return value;
  };
}
