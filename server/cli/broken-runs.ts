import type { OpenFile } from './open-files.ts';
import type { Terminal } from './run-command-line.ts';

/** Tells of runs that could not be worked out; how many there are. */
export function tellBrokenRuns(files: readonly OpenFile[], terminal: Terminal): number {
  let count = 0;
  for (const { path, work } of files) {
    for (const run of work.job.runs) {
      if (!('broken' in run)) continue;
      count++;
      terminal.error(`${path}: run ${run.name} cannot be worked out; check says why.\n`);
    }
  }
  return count;
}
