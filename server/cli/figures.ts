import { keepsWithin, type Working, workingLines, workingsOf } from '../../language/figures/index.ts';
import { isMetric, type Job } from '../../language/model/index.ts';
import { type Amount, inSystem, type System } from '../../language/units/index.ts';
import type { Request } from './arguments.ts';
import { tellBrokenRuns } from './broken-runs.ts';
import { openFiles } from './open-files.ts';
import { printable } from './printable.ts';
import type { Terminal } from './run-command-line.ts';

/** Of the JSON form; raised when a field changes its meaning. */
const VERSION = 1;

/** Prints every calculation of the jobs with its working; 1 when a run could not be worked out. */
export async function figures(
  { files, format }: Request,
  folder: string,
  terminal: Terminal,
): Promise<number> {
  const opened = await openFiles(files, folder);
  const all = opened.files.flatMap(({ path, work: { job, layout } }) =>
    workingsOf(layout, job).map((working) => ({ path, working, system: systemOf(job) })),
  );
  if (format === 'json') {
    const told = all.map(({ path, working, system }) => asJson(path, working, system));
    terminal.out(`${JSON.stringify({ version: VERSION, figures: told }, null, 2)}\n`);
  } else {
    for (const { working, system } of all) {
      const lines = workingLines(working, system).map((line) => `  ${printable(line)}\n`);
      terminal.out(`${printable(`${working.where.label}: ${working.title}`)}\n${lines.join('')}\n`);
    }
    terminal.out(
      'Worked out, and no more than that: ask your local authority, and someone licensed to judge it.\n',
    );
  }
  return tellBrokenRuns(opened.files, terminal) > 0 ? 1 : 0;
}

const systemOf = (job: Job): System => (isMetric(job.measure.value) ? 'metric' : 'imperial');

/** Amounts in the job's system; `keeps` is null where nothing limits the figure. */
function asJson(file: string, working: Working, system: System) {
  const { code, title, where, formula, inputs, steps, figure, limit, basis, notes } = working;
  const shown = (amount: Amount) => inSystem(amount, system);
  return {
    file,
    code,
    title,
    where: where.label,
    run: where.run ?? null,
    pieces: where.pieces ?? [],
    statement: where.origin.path,
    formula,
    inputs: inputs.map(({ name, symbol, value, from }) => ({
      name,
      symbol,
      ...(typeof value === 'string' ? { value, unit: null } : shown(value)),
      from,
    })),
    steps: steps.map(({ says, value }) => ({
      says,
      ...(value ? shown(value) : { value: null, unit: null }),
    })),
    figure: shown(figure),
    limit: limit ? { ...shown(limit), name: limit.name, is: limit.is } : null,
    keeps: keepsWithin(working) ?? null,
    basis: basis.map(({ source, section, confirmed }) => ({ source, section, confirmed })),
    notes,
  };
}
