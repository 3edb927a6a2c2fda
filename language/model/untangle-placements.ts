import type { BrokenRun, RunSpec } from './job.ts';
import { type Reader, tell } from './reader.ts';

type Run = RunSpec | BrokenRun;

/**
 * Runs whose places follow from one another without coming back to where they began, no two of them after the
 * same one. Those that do otherwise are told and stand for themselves.
 */
export function untangled(reader: Reader, runs: readonly Run[]): readonly Run[] {
  const byName = new Map(runs.map((run) => [run.name, run]));
  const taken = new Map<string, RunSpec>();
  return runs.map((run) => {
    const after = afterOf(run);
    if (!after || 'broken' in run) return run;
    const way = wayBack(run, byName);
    const first = taken.get(after.run);
    if (way) {
      tell(reader, 'placement-circular', after.origin, { run: run.name, way: way.join(', ') });
    } else if (first) {
      const args = { run: run.name, other: after.run, reason: 'taken' } as const;
      const related = [{ origin: first.origin, note: first.name }];
      tell(reader, 'placement-unclear', after.origin, args, related);
    } else {
      taken.set(after.run, run);
      return run;
    }
    const { placement: _, ...alone } = run;
    return alone;
  });
}

function afterOf(run: Run | undefined) {
  if (!run || 'broken' in run || !run.placement || run.placement.kind === 'at') return undefined;
  return run.placement;
}

/** Names on the way from a run back to itself; undefined when it leads elsewhere. */
function wayBack(run: RunSpec, byName: ReadonlyMap<string, Run>): string[] | undefined {
  const way = [run.name];
  for (let after = afterOf(run); after; after = afterOf(byName.get(after.run))) {
    way.push(after.run);
    if (after.run === run.name) return way;
    if (way.length > byName.size) return undefined;
  }
  return undefined;
}
