import type * as ast from '../grammar/index.ts';
import type { BrokenRun, RunSpec } from './job.ts';
import { statementsOf } from './option-statements.ts';
import type { Picked } from './pick-statements.ts';
import { follow, originOf, type Reader, tell } from './reader.ts';

type Statements = Picked<ast.RunStatement>;
type Run = RunSpec | BrokenRun;

/** The run whose slat lines are gone on with. */
export function readLinesAs(reader: Reader, pick: Statements): Pick<RunSpec, 'linesAs'> {
  const statement = pick('LinesStatement');
  const other = statement && follow(statement.run);
  if (!statement || !other?.name) return {};
  return { linesAs: { value: other.name, origin: originOf(reader, statement) } };
}

/** A run that goes on with the lines of another is filled as that one is, where it says nothing else. */
export function fillOfLines(reader: Reader, pick: Statements): ast.FillStatement | undefined {
  const other = follow(pick('LinesStatement')?.run);
  return other && statementsOf(reader, other).find((statement) => statement.$type === 'FillStatement');
}

/**
 * Runs none of which waits for its own lines, be it by way of others or of what comes after it. Those that do
 * are told and fitted for themselves.
 */
export function withoutLineCircles(reader: Reader, runs: readonly Run[]): readonly Run[] {
  const left = new Map(runs.map((run) => [run.name, run]));
  return runs.map((run) => {
    if ('broken' in run || !run.linesAs) return run;
    const way = wayBack(run, run.linesAs.value, left);
    if (!way) return run;
    tell(reader, 'lines-circular', run.linesAs.origin, { run: run.name, way: way.join(', ') });
    const { linesAs: _, ...alone } = run;
    left.set(run.name, alone);
    return alone;
  });
}

/** Names on the way from a run back to itself; undefined when it leads elsewhere. */
function wayBack(run: Run, from: string, runs: ReadonlyMap<string, Run>): readonly string[] | undefined {
  const seen = new Set<string>();
  const open: (readonly string[])[] = [[run.name, from]];
  for (let way = open.pop(); way; way = open.pop()) {
    const last = way.at(-1) ?? '';
    if (last === run.name) return way;
    const next = runs.get(last);
    if (!next || 'broken' in next || seen.has(last)) continue;
    seen.add(last);
    const { placement } = next;
    if (placement?.kind === 'after' || (placement?.kind === 'on' && placement.bridge))
      open.push([...way, placement.run]);
    if (next.linesAs) open.push([...way, next.linesAs.value]);
  }
  return undefined;
}
