import { type Recut, recutOf } from '../../language/figures/index.ts';
import type { RunLayout } from '../../language/layout/index.ts';
import { formatLength, type Measure, type Ticks, toMm } from '../../language/units/index.ts';
import type { Request } from './arguments.ts';
import { tellBrokenRuns } from './broken-runs.ts';
import { openFiles } from './open-files.ts';
import { printable } from './printable.ts';
import { asBuiltJson, asBuiltLines } from './recut-as-built.ts';
import type { Terminal } from './run-command-line.ts';

/** Of the JSON form; raised when a field changes its meaning. */
const VERSION = 1;

/**
 * Tells what came out otherwise than planned, where slats that are cut can go and which are still to cut; 1 when a
 * run could not be worked out.
 */
export async function recut({ files, format }: Request, folder: string, terminal: Terminal): Promise<number> {
  const opened = await openFiles(files, folder);
  const all = opened.files.flatMap(({ path, work: { job, layout } }) =>
    layout.runs.flatMap((run) => {
      const lines = asBuiltLines(run, job);
      const found = recutOf(run);
      return found || lines.length > 0 ? [{ path, job, run, lines, found }] : [];
    }),
  );
  if (format === 'json') {
    const runs = all.map(({ path, run, job, found }) => ({
      ...asJson(path, found ?? nothingCut(run)),
      asBuilt: asBuiltJson(run, job),
    }));
    terminal.out(`${JSON.stringify({ version: VERSION, runs }, null, 2)}\n`);
  } else if (all.length === 0)
    terminal.out(
      "Nothing was measured, and no slat is said to be cut: `bay 1 clear 6'` and `cut bay 1` in a measured block say so.\n",
    );
  else
    for (const { lines, found, job } of all) {
      if (lines.length > 0) terminal.out(`${lines.map(printable).join('\n')}\n\n`);
      if (found) terminal.out(asText(found, job.measure.value));
    }
  return tellBrokenRuns(opened.files, terminal) > 0 ? 1 : 0;
}

const nothingCut = (run: RunLayout): Recut => ({
  run,
  labels: new Map(),
  reused: [],
  toCut: [],
  leftOver: [],
});

/** Lengths in millimeters. */
function asJson(file: string, { run, labels, reused, toCut, leftOver }: Recut) {
  const label = (key: string) => labels.get(key) ?? key;
  return {
    file,
    run: run.spec.name,
    reused: reused.map(({ piece, place, trim }) => ({
      piece: label(piece.key),
      cutTo: millimeters(piece.length),
      place: label(place.key),
      key: place.key,
      length: millimeters(place.length),
      trim: millimeters(trim),
    })),
    toCut: toCut.map(({ key, length }) => ({ place: label(key), key, length: millimeters(length) })),
    leftOver: leftOver.map(({ key, length }) => ({ piece: label(key), cutTo: millimeters(length) })),
  };
}

function asText({ run, labels, reused, toCut, leftOver }: Recut, measure: Measure): string {
  const shown = (ticks: Ticks) => formatLength(ticks, measure);
  const label = (key: string) => labels.get(key) ?? key;
  const lines = [
    `${run.spec.name}: ${reused.length + leftOver.length} slats are cut; ${reused.length} find a place, ${leftOver.length} are left over, ${toCut.length} are to cut.`,
    ...reused.map(({ piece, place, trim }) => {
      const where = piece.key === place.key ? 'stays' : `goes to ${label(place.key)}`;
      return `  ${label(piece.key)} (${shown(piece.length)}) ${where}${trim === 0 ? '' : `: saw off ${shown(trim)}, to ${shown(place.length)}`}`;
    }),
    ...leftOver.map(({ key, length }) => `  ${label(key)} (${shown(length)}) is left over`),
    ...toCut.map(({ key, length }) => `  ${label(key)}: cut to ${shown(length)}`),
  ];
  return `${lines.map(printable).join('\n')}\n\n`;
}

const millimeters = (ticks: Ticks): number => Math.round(toMm(ticks) * 1e6) / 1e6;
