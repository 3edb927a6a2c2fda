import { cpSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { atBench, exampleText } from './at-bench.ts';
import {
  nodeBinary,
  OPEN_PREVIEW,
  OUT_DIR,
  REPO_ROOT,
  replaceAll,
  runCommand,
  runPaletteCommand,
  save,
  screenshot,
  showProblems,
  typeAt,
  waitForPicture,
  waitForProblems,
  waitUntil,
} from './index.ts';
import { textsOf } from './picture.ts';

// A whole job typed into an empty file, key by key, and looked at from all sides while it stands in the editor.

const JOB = 'boat-house.slat';
const TEXT = exampleText(JOB);
/** Written down on the day the concrete had set; six slats were cut to the plan before. */
const MEASURED = `
measured bank {
  bay 1 top 47-7/8", middle 47-7/8", bottom 48"
  bay 2 clear 47-1/2"
  bay 4 clear 47-3/4"
  bay 5 top 47-3/4", middle 47-5/8", bottom 47-5/8"
  cut bay 1 courses 1 to 6
}
`;
/** Milliseconds between keys: faster than anyone types, slower than the editor takes keys. */
const BETWEEN_KEYS = 4;

const bench = atBench({
  name: 'from-nothing',
  file: JOB,
  fill(folder) {
    cpSync(join(REPO_ROOT, 'examples', 'library'), join(folder, 'library'), { recursive: true });
    writeFileSync(join(folder, JOB), '');
  },
});

/** Shows one kind of view, waits for its texts, and keeps a picture for whoever wants to look. */
async function show(kind: string, expected: readonly string[]): Promise<void> {
  const { page, picture } = bench;
  await runPaletteCommand(page, `Slatwright: Show ${kind}`);
  await waitUntil(
    () => textsOf(picture),
    (texts) => expected.every((text) => texts.includes(text)),
    `${kind} with ${expected.join(', ')}`,
  );
  await screenshot(page, join(OUT_DIR, 'workbench', `from-nothing-${kind.toLowerCase()}.png`));
}

/** What the command line says of the saved file, as JSON. */
async function told<T>(command: string): Promise<T> {
  const cli = join(REPO_ROOT, 'dist', 'cli.cjs');
  const { output } = await runCommand(nodeBinary(), [cli, command, join(bench.folder, JOB), '--json'], {
    cwd: bench.folder,
    timeout: 60_000,
  });
  return JSON.parse(output) as T;
}

it('is typed from nothing, and told no more than the command line tells', async () => {
  const { page } = bench;
  await typeAt(page, 1, 1, TEXT, BETWEEN_KEYS);
  await save(page);
  expect(bench.fileText(JOB)).toBe(TEXT);
  const expected =
    await told<{ code: string; severity: string; range: { start: { line: number } } }[]>('check');
  expect(expected.filter(({ severity }) => severity === 'error')).toEqual([]);
  await showProblems(page);
  const wanted = expected.map(({ code }) => code).toSorted();
  await waitForProblems(
    page,
    (all) => JSON.stringify(all.map(({ code }) => code).toSorted()) === JSON.stringify(wanted),
    `the findings ${wanted.join(', ')}`,
  );
});

it('is drawn from the front, from behind, from above and in section, all runs of it', async () => {
  const { page } = bench;
  await runPaletteCommand(page, OPEN_PREVIEW);
  bench.picture = await waitForPicture(page);
  const elevations = ['Elevation of edge', 'Elevation of bank', 'Leaf of gate boats', 'Elevation of shore'];
  await show('Front', [...elevations, 'wall', 'station 0']);
  await show('Back', [...elevations, 'wall', 'seen from behind, gaps 1/2"']);
  await show('Plan', ['Plan', 'edge', 'bank', 'shore', 'gate boats', "2' back"]);
  await show(
    'Section',
    ['edge', 'bank', 'shore'].map((run) => `Section of ${run} in bay 1`),
  );
  await show('Front', elevations);
});

it('keeps every slat of all runs on lines of one datum, a whole number of courses apart', async () => {
  const { pieces } = await told<{
    pieces: { role: string; run: string; gate: string | null; bounds: { max: number[] } }[];
  }>('pieces');
  const tops = pieces
    .filter(({ role, gate }) => role === 'slat' && gate === null)
    .map(({ run, bounds }) => ({ run, top: bounds.max[2] ?? Number.NaN }));
  expect(new Set(tops.map(({ run }) => run))).toEqual(new Set(['edge', 'bank', 'shore']));
  // Slats of 3-1/2 and gaps of 1/2 are 4 apart, 101.6 mm; the deck's top course ends at 62, 1574.8 mm.
  for (const { run, top } of tops) {
    const courses = (1574.8 - top) / 101.6;
    expect(Math.abs(courses - Math.round(courses)), run).toBeLessThan(1e-6);
  }
});

// The picture of the last key is not always seen in time in a driven browser.
it('is cut again to bays as measured, and slats that are cut find places they fit', { retry: 6 }, async ({
  task,
}) => {
  const { page, picture } = bench;
  // Where it is tried again, what was typed before would stand twice.
  if ((task.result?.retryCount ?? 0) > 0) await replaceAll(page, TEXT);
  await typeAt(page, TEXT.split('\n').length, 1, MEASURED);
  await waitUntil(
    () => textsOf(picture),
    (texts) => texts.includes(`3' 11-1/2"`),
    'the second bay as measured',
  );
  await screenshot(page, join(OUT_DIR, 'workbench', 'from-nothing-measured.png'));
  await save(page);
  expect(bench.fileText(JOB)).toBe(TEXT + MEASURED);
  const { runs } = await told<{
    runs: {
      run: string;
      reused: { trim: number; cutTo: number; length: number }[];
      toCut: unknown[];
      leftOver: unknown[];
    }[];
  }>('recut');
  const [bank] = runs;
  expect(bank?.run).toBe('bank');
  // Over two bays, from the outside of post 1 to the near side of the gate's post: 3-1/2 + 47-3/4 + 3-1/2 + 47-3/4
  // + 5-1/2 is 108, 2743.2 mm, as planned; as measured it is 47-7/8 to 48 and 47-1/2: at
  // most 1/8 less, and a mark of the tape for what is rounded down.
  expect(bank?.reused).toHaveLength(6);
  expect(bank?.leftOver).toEqual([]);
  for (const { cutTo, length, trim } of bank?.reused ?? []) {
    expect(cutTo).toBeCloseTo(2743.2, 3);
    expect(trim).toBeCloseTo(cutTo - length, 3);
    expect(trim).toBeGreaterThanOrEqual(0);
    expect(trim).toBeLessThanOrEqual(4.7625);
  }
});
