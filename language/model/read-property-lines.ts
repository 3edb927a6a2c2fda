import type * as ast from '../grammar/index.ts';
import type { BrokenRun, PropertyLine, RunSpec } from './job.ts';
import { readLength } from './read-length.ts';
import { follow, originOf, type Reader } from './reader.ts';

/** The same runs, each with the property lines that the job says lie along it. */
export function withPropertyLines(
  reader: Reader,
  node: ast.Job | undefined,
  runs: readonly (RunSpec | BrokenRun)[],
): readonly (RunSpec | BrokenRun)[] {
  const lines = new Map<string, PropertyLine[]>();
  for (const statement of node?.statements ?? []) {
    if (statement.$type !== 'PropertyStatement') continue;
    const run = follow(statement.run)?.name;
    const off = readLength(reader, statement.off, { what: 'property line', zero: true });
    if (run === undefined || !off) continue;
    const y = statement.front ? 0 - off.value : off.value;
    lines.set(run, [...(lines.get(run) ?? []), { y, origin: originOf(reader, statement) }]);
  }
  return runs.map((run) => {
    const own = lines.get(run.name);
    return own && !('broken' in run) ? { ...run, propertyLines: own } : run;
  });
}
