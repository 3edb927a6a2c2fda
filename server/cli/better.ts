import { changeToEdit } from '../../language/grammar/index.ts';
import type { Job } from '../../language/model/index.ts';
import {
  type Better,
  type BetterChoice,
  type ChoiceFigures,
  searchBetter,
} from '../../language/takeoff/index.ts';
import { formatLength, formatMoney, type Ticks, toMm } from '../../language/units/index.ts';
import { betterTask, verdictOf } from '../work/index.ts';
import type { Request } from './arguments.ts';
import { type OpenFile, openFiles } from './open-files.ts';
import { printable } from './printable.ts';
import type { Terminal } from './run-command-line.ts';
import { CannotRun } from './usage.ts';

/** Of the JSON form; raised when a field changes its meaning. */
const VERSION = 1;
/** For each run. */
const SECONDS = 10;

/** Prints what may be chosen for a run that nothing else beats; 1 when a run could not be worked out. */
export async function better(
  { files, format, run, seconds = SECONDS }: Request,
  folder: string,
  terminal: Terminal,
): Promise<number> {
  const { services, files: opened } = await openFiles(files, folder);
  const told: unknown[] = [];
  let [code, met] = [0, 0];
  for (const file of opened) {
    const { job } = file.work;
    for (const { name } of job.runs.filter((one) => run === undefined || one.name === run)) {
      met++;
      const task = betterTask(services.shared, file.document, job, name);
      const end = performance.now() + seconds * 1000;
      const search = task && searchBetter(task);
      search?.run(() => performance.now() > end);
      const found = search?.found();
      if (!found) {
        code = 1;
        terminal.error(`${file.path}: run ${printable(name)} cannot be worked out; check says why.\n`);
      } else if (format === 'json') {
        told.push({ file: file.path, run: name, ...asJson(found, file, search?.done() === true) });
      } else {
        terminal.out(
          `${asText(name, found, job, search?.done() === true)
            .map(printable)
            .join('\n')}\n`,
        );
      }
    }
  }
  if (met === 0 && run !== undefined) throw new CannotRun(`There is no run ${run}.`);
  if (format === 'json') terminal.out(`${JSON.stringify({ version: VERSION, runs: told }, null, 2)}\n`);
  return code;
}

function asText(run: string, found: Better, job: Job, done: boolean): string[] {
  const { now, choices, tried, kept } = found;
  const rows = [
    ['', ...headings(now)],
    ['now', ...cells(now, job)],
    ...choices.map(({ figures }, at) => [String(at + 1), ...cells(figures, job)]),
  ];
  const widths = (rows[0] ?? []).map((_, at) => Math.max(...rows.map((row) => row[at]?.length ?? 0)));
  const lines = rows.map((row) => `  ${row.map((cell, at) => cell.padStart(widths[at] ?? 0)).join('  ')}`);
  return [
    `Choices for ${run}`,
    ...lines,
    '',
    ...choices.flatMap((choice, at) => [
      `  ${at + 1}  ${choice.title}`,
      ...choice.changes.map(({ text }) => `       ${text}`),
    ]),
    ...(choices.length > 0 ? [''] : []),
    `  ${verdictOf(found)} ${tried} ways were laid out, ${kept} kept the limits${done ? '' : '; there are more, with --seconds'}.`,
    ...(now.cost ? [] : ['  Not all of its stock has prices, so the length bought stands for the cost.']),
    '',
  ];
}

function headings({ cost, seen }: ChoiceFigures): string[] {
  return [
    cost ? 'boards cost' : 'length bought',
    'waste',
    'see-through',
    ...seen.map(({ place, viewer }) => `${place} from ${viewer}`),
    'uneven by',
  ];
}

function cells({ cost, bought, waste, seeThrough, seen, uneven }: ChoiceFigures, job: Job): string[] {
  const length = (ticks: Ticks) => formatLength(ticks, job.measure.value);
  return [
    cost ? formatMoney(cost) : length(bought),
    percent(waste),
    percent(seeThrough),
    ...seen.map(({ share }) => percent(share)),
    length(uneven),
  ];
}

const percent = (share: number): string => `${(Math.round(share * 1000) / 10).toFixed(1)} %`;

/** Lengths in millimeters, money in minor units, shares from 0 to 1; edits as editors take them, from 0. */
function asJson(found: Better, file: OpenFile, done: boolean) {
  return {
    done,
    tried: found.tried,
    kept: found.kept,
    beaten: found.beaten,
    now: figuresJson(found.now),
    choices: found.choices.map((choice) => ({
      title: choice.title,
      ...figuresJson(choice.figures),
      edits: editsOf(choice, file),
    })),
  };
}

function figuresJson({ cost, bought, waste, seeThrough, seen, uneven }: ChoiceFigures) {
  const mm = (ticks: Ticks) => Math.round(toMm(ticks) * 1e4) / 1e4;
  return { cost: cost ?? null, bought: mm(bought), waste, seeThrough, seen, uneven: mm(uneven) };
}

function editsOf({ changes }: BetterChoice, { document }: OpenFile) {
  return changes.flatMap((change) => changeToEdit(document, change) ?? []);
}
