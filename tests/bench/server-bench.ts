import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { largeJob, type MadeJob, neighborFile, smallJob } from './made-jobs.ts';
import { type ServerProcess, startServer } from './server-process.ts';
import { printTable, type Row } from './statistics.ts';
import { wholeTimes } from './whole-baseline.ts';

/** One key each so many milliseconds, as a quick typist. */
const KEY_EVERY = 80;
const COLD = 10;

/** What is typed and taken back after the marker, key by key: most states on the way are half-typed. */
const HALF_TYPED = '; end gap 3/16"';

interface Hop {
  readonly picture: number[];
  readonly findings: number[];
  readonly bytes: number[];
}

const emptyHop = (): Hop => ({ picture: [], findings: [], bytes: [] });

/** Keystroke to picture data and to findings over a real connection, cold and warm, alone and among faulty files. */
export async function benchServer(): Promise<void> {
  const aims = { small: { picture: 16, findings: 50 }, large: { picture: 50, findings: 150 } };
  for (const neighbors of [0, 100]) {
    const among = neighbors === 0 ? 'alone' : `among ${neighbors} files, half with an unknown name`;
    for (const [size, job] of [
      ['small', smallJob()],
      ['large', largeJob()],
    ] as const) {
      const valid = await measure(job, neighbors, typeValid);
      const half = await measure(job, neighbors, typeHalf);
      const whole = (await wholeTimes(movedTexts(job))).slice(COLD);
      printTable(`Server, ${job.name}, ${among} (ms); base: all of it anew at each key`, [
        ...rows('valid text', valid.hop, aims[size], whole),
        ...rows('half-typed text', half.hop, aims[size]),
      ]);
      const bytes = [...valid.hop.bytes, ...half.hop.bytes].sort((a, b) => a - b);
      console.log(`picture data per key: median ${bytes[bytes.length >> 1] ?? 0} bytes`);
    }
  }
  await benchStart();
}

function rows(
  what: string,
  hop: Hop,
  aim: { picture: number; findings: number },
  baseline: readonly number[] = [],
): Row[] {
  return [
    { what: `key to picture, cold, ${what}`, times: hop.picture.slice(0, COLD) },
    { what: `key to picture, warm, ${what}`, times: hop.picture.slice(COLD), budget: aim.picture, baseline },
    { what: `key to findings, cold, ${what}`, times: hop.findings.slice(0, COLD) },
    { what: `key to findings, warm, ${what}`, times: hop.findings.slice(COLD), budget: aim.findings },
  ];
}

async function measure(
  job: MadeJob,
  neighbors: number,
  type: (server: ServerProcess, job: MadeJob, hop: Hop) => Promise<void>,
): Promise<{ hop: Hop }> {
  return inFolder(job, neighbors, async (folder) => {
    const server = await startServer(folder);
    try {
      await server.open('job.slat', job.text);
      await server.follow('job.slat');
      const hop = emptyHop();
      await type(server, job, hop);
      return { hop };
    } finally {
      server.stop();
    }
  });
}

/** Moves the bottom of one run from 2" to 3" and back: the text is valid after each key. */
async function typeValid(server: ServerProcess, job: MadeJob, hop: Hop): Promise<void> {
  const at = placeOf(job, 'bottom '.length);
  const end = { line: at.line, character: at.character + 1 };
  for (let n = 0; n < 60; n++) await key(server, { start: at, end }, n % 2 === 0 ? '3' : '2', hop);
}

/** The same states of the text as `typeValid` makes. */
function movedTexts(job: MadeJob): string[] {
  const at = job.text.indexOf(job.marker) + 'bottom '.length;
  return Array.from(
    { length: 60 },
    (_, n) => `${job.text.slice(0, at)}${n % 2 === 0 ? '3' : '2'}${job.text.slice(at + 1)}`,
  );
}

async function typeHalf(server: ServerProcess, job: MadeJob, hop: Hop): Promise<void> {
  const at = placeOf(job, job.marker.length);
  for (let round = 0; round < 3; round++) {
    for (let n = 0; n < HALF_TYPED.length; n++) {
      const place = { line: at.line, character: at.character + n };
      await key(server, { start: place, end: place }, HALF_TYPED[n] ?? '', hop);
    }
    for (let n = HALF_TYPED.length; n > 0; n--) {
      const end = { line: at.line, character: at.character + n };
      await key(server, { start: { ...end, character: end.character - 1 }, end }, '', hop);
    }
  }
}

async function key(
  server: ServerProcess,
  range: Parameters<ServerProcess['key']>[1],
  text: string,
  hop: Hop,
): Promise<void> {
  const began = performance.now();
  const { picture, findings, bytes } = await server.key('job.slat', range, text);
  if (picture !== undefined) {
    hop.picture.push(picture);
    hop.bytes.push(bytes);
  }
  hop.findings.push(findings);
  await wait(Math.max(0, KEY_EVERY - (performance.now() - began)));
}

function placeOf(job: MadeJob, within: number): { line: number; character: number } {
  const offset = job.text.indexOf(job.marker) + within;
  const before = job.text.slice(0, offset).split('\n');
  return { line: before.length - 1, character: before[before.length - 1]?.length ?? 0 };
}

async function inFolder<T>(
  job: MadeJob,
  neighbors: number,
  work: (folder: string) => Promise<T>,
): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'slat-bench-'));
  try {
    writeFileSync(join(folder, 'job.slat'), job.text);
    mkdirSync(join(folder, 'others'));
    for (let n = 0; n < neighbors; n++) writeFileSync(join(folder, 'others', `n${n}.slat`), neighborFile(n));
    return await work(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function benchStart(): Promise<void> {
  const initialized: number[] = [];
  const pictured: number[] = [];
  for (let n = 0; n < 7; n++) {
    await inFolder(smallJob(), 0, async (folder) => {
      const began = performance.now();
      const server = await startServer(folder);
      initialized.push(server.initialized);
      const { connection } = server;
      const opened = server.open('job.slat', smallJob().text);
      await server.follow('job.slat');
      pictured.push(performance.now() - began);
      await opened;
      connection.end();
      server.stop();
    });
  }
  printTable('Server start (ms)', [
    { what: 'spawn to initialized', times: initialized },
    { what: 'spawn to first picture, 200 lines', times: pictured, budget: 700 },
  ]);
}
