import type { RunSpec } from '../../language/model/index.ts';
import { formatLength, toMm } from '../../language/units/index.ts';
import { type PileWay, pileWays } from '../work/index.ts';
import type { Request } from './arguments.ts';
import { openFiles } from './open-files.ts';
import { printable } from './printable.ts';
import type { Terminal } from './run-command-line.ts';

/** Of the JSON form; raised when a field changes its meaning. */
const VERSION = 1;

/** Prints what the boards on hand give of each run, by pattern, the one they give most of first. */
export async function pile({ files, format }: Request, folder: string, terminal: Terminal): Promise<number> {
  const { services, files: opened } = await openFiles(files, folder);
  const told: unknown[] = [];
  for (const { path, document, work } of opened) {
    const { job } = work;
    if (job.onHand.length === 0) terminal.error(`${path}: nothing is stated to be \`on hand\`.\n`);
    const length = (ticks: number) => formatLength(ticks, job.measure.value);
    for (const run of job.runs.filter((one): one is RunSpec => !('broken' in one))) {
      const found = pileWays(services.shared, document, job, run);
      if (format === 'json') {
        told.push({ file: path, run: run.name, patterns: found.map(asJson) });
        continue;
      }
      terminal.out(`${printable(run.name)}\n`);
      for (const {
        name,
        own,
        pile: { bays, courses, missing },
      } of found) {
        const lacks = missing.map(({ stock, length: each, count }) => `${count} of ${stock} ${length(each)}`);
        const rest = missing.length > 0 ? `; missing for all: ${lacks.join(', ')}` : '';
        terminal.out(
          `  ${printable(`${name}${own ? ' (as it stands)' : ''}: slats for ${bays.can} of ${bays.of} bays, or ${courses.can} of ${courses.of} courses${rest}`)}\n`,
        );
      }
    }
  }
  if (format === 'json') terminal.out(`${JSON.stringify({ version: VERSION, runs: told }, null, 2)}\n`);
  return 0;
}

/** Lengths in millimeters. */
function asJson({ name, fill, own, pile: { bays, courses, missing } }: PileWay) {
  const mm = (ticks: number) => Math.round(toMm(ticks) * 1e4) / 1e4;
  return {
    pattern: name,
    fill,
    own,
    bays,
    courses,
    missing: missing.map((one) => ({ ...one, length: mm(one.length) })),
  };
}
