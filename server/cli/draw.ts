import { mkdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import {
  elevationOf,
  eyeViews,
  leafElevation,
  leafLetter,
  planLetter,
  plansOf,
  runLetter,
  sectionLetter,
  sectionOf,
  type View,
  writeSvg,
} from '../../language/drawing/index.ts';
import { fileNameOf } from '../sheets/index.ts';
import type { Request } from './arguments.ts';
import { tellBrokenRuns } from './broken-runs.ts';
import { type OpenFile, openFiles } from './open-files.ts';
import type { Terminal } from './run-command-line.ts';
import { CannotRun } from './usage.ts';

/** Writes plans, each run and each gate from both sides, and a section of each run, and each place as each viewer sees it; 1 when a run could not be worked out. */
export async function draw({ files, out }: Request, folder: string, terminal: Terminal): Promise<number> {
  const opened = await openFiles(files, folder);
  const target = resolve(folder, out ?? '.');
  const taken = new Set<string>();
  try {
    mkdirSync(target, { recursive: true });
    for (const file of opened.files) {
      for (const view of viewsOf(file)) {
        const name = fileNameOf(view.key, '.svg', taken);
        writeFileSync(join(target, name), writeSvg(view));
        terminal.out(`${join(out ?? '.', name)}\n`);
      }
    }
  } catch (error) {
    throw new CannotRun(
      `${out} cannot be written: ${error instanceof Error ? error.message : String(error)}`,
    );
  }
  return tellBrokenRuns(opened.files, terminal) > 0 ? 1 : 0;
}

function viewsOf({ work }: OpenFile): View[] {
  const measure = work.job.measure.value;
  const { runs } = work.layout;
  const widest = Math.max(0, ...runs.map((run) => runLetter(run, 'paper')));
  const plans = plansOf(runs, measure, planLetter(runs, 'paper') ?? widest);
  const elevations = (['front', 'back'] as const).flatMap((from) =>
    runs.flatMap((run) => [
      elevationOf(run, measure, runLetter(run, 'paper'), from),
      ...run.leaves.map((leaf) => leafElevation(run, leaf, measure, leafLetter(leaf, 'paper'), from)),
    ]),
  );
  const sections = runs.flatMap((run) => sectionOf(run, measure, sectionLetter(run, 'paper')) ?? []);
  return [...plans, ...elevations, ...sections, ...eyeViews(runs, work.job, measure)];
}
