import { mkdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { CutAim, Job } from '../../language/model/index.ts';
import { takeoffOf } from '../../language/takeoff/index.ts';
import type { SheetFile } from '../protocol.ts';
import { asCsv, orderRows, settingSheets, ticketsOf, whyNoPlan } from '../sheets/index.ts';
import type { Request } from './arguments.ts';
import { tellBrokenRuns } from './broken-runs.ts';
import { openFiles } from './open-files.ts';
import { printable } from './printable.ts';
import type { Terminal } from './run-command-line.ts';
import { takeoffAsJson, VERSION } from './takeoff-json.ts';
import { takeoffAsText } from './takeoff-text.ts';

const SECONDS = 10;

/** Prints what is bought and cut, and what it costs; 1 when a run or a stock could not be worked out. */
export async function takeoff(
  { files, format, seconds = SECONDS, out, by, more }: Request,
  folder: string,
  terminal: Terminal,
): Promise<number> {
  const opened = await openFiles(files, folder);
  let code = 0;
  const told: unknown[] = [];
  for (const { path, work } of opened.files) {
    const { layout } = work;
    const job = by ? cutFor(work.job, by, more) : work.job;
    const end = performance.now() + seconds * 1000;
    const found = takeoffOf(layout, job, () => performance.now() > end);
    if (format === 'json') told.push({ file: path, ...takeoffAsJson(found, job) });
    else if (format === 'csv') terminal.out(asCsv(orderRows(found, job)));
    else terminal.out(`${takeoffAsText(found, job).map(printable).join('\n')}\n`);
    if (out)
      writeSheets([...ticketsOf(found, job), ...settingSheets(layout, job)], resolve(folder, out), terminal);
    for (const plan of found.plans) {
      if (!plan.none) continue;
      code = 1;
      terminal.error(`${path}: ${printable(`${plan.bought.name}: ${whyNoPlan(plan, job)}.`)}\n`);
    }
  }
  if (tellBrokenRuns(opened.files, terminal) > 0) code = 1;
  if (format === 'json') terminal.out(`${JSON.stringify({ version: VERSION, takeoffs: told }, null, 2)}\n`);
  return code;
}

function cutFor({ settingsWithin: _, ...job }: Job, by: CutAim, more: number | undefined): Job {
  const { origin } = job;
  const within = more === undefined ? {} : { settingsWithin: { value: more, origin } };
  return { ...job, cutFor: { value: by, origin }, ...within };
}

function writeSheets(sheets: readonly SheetFile[], out: string, terminal: Terminal): void {
  mkdirSync(out, { recursive: true });
  for (const { name, text } of sheets) {
    const file = join(out, name);
    writeFileSync(file, text);
    terminal.error(`${file}\n`);
  }
}
