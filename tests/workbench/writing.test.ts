import { expect, it } from 'vitest';
import { atBench, exampleText, fillWithExamples, lineOf } from './at-bench.ts';
import {
  goTo,
  hoverAt,
  renameAt,
  replaceLine,
  runPaletteCommand,
  suggestions,
  visibleLines,
  waitUntil,
} from './index.ts';
import { untilStale } from './picture.ts';

const JOB = 'bicycle-court.slat';
/** Where the statements are that these tests edit or point at, found in the text itself. */
const TEXT = exampleText(JOB);
const LINES = TEXT.split('\n');
const LENGTH = lineOf(TEXT, 'length ');
const LENGTH_LINE = LINES[LENGTH - 1] ?? '';

const bench = atBench({ name: 'writing', fill: fillWithExamples, file: JOB, preview: true });

it('says what a value amounts to, and what may be written', async () => {
  const { page } = bench;
  // 23.5 ft at 304.8 mm exactly: 7162.8 mm (international foot, 1959).
  expect(await hoverAt(page, LENGTH, LENGTH_LINE.indexOf('23') + 1)).toContain('7162.8 mm');

  await goTo(page, LENGTH, LENGTH_LINE.length + 1);
  await page.keyboard.type('; ');
  // The text is put back whatever comes of it, so that what follows starts from what it knows.
  const offered = await suggestions(page).finally(async () => {
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
    await replaceLine(page, LENGTH, LENGTH_LINE);
  });
  // The list shows its first dozen.
  expect(offered).toEqual(expect.arrayContaining(['all else as', 'battens', 'bottom']));
  expect(offered).not.toContain('repeat');
  await waitUntil(
    () => visibleLines(page),
    (lines) => lines[LENGTH - 1] === LENGTH_LINE && lines[LENGTH] === LINES[LENGTH],
    'the text as it was',
  );
});

it('renames a pattern in the library and in every job that uses it', async () => {
  const { page, picture, fileText } = bench;
  const line = lineOf(TEXT, 'fill even');
  await renameAt(page, line, (LINES[line - 1] ?? '').indexOf('even') + 1, 'steady');
  await waitUntil(
    () => visibleLines(page),
    (lines) => lines.some((text) => text.includes('fill steady(slat = cedar-4)')),
    'the new name in the job',
  );
  await runPaletteCommand(page, 'File: Save All Files');
  const files = [JOB, 'library/patterns.slat', 'kitchen-garden.slat'];
  await waitUntil(
    async () => files.map((file) => /\b(even|steady)\(/.exec(fileText(file))?.[1]),
    (names) => names.every((name) => name === 'steady'),
    'the new name in every file',
  );
  for (const file of files) {
    expect(fileText(file)).toBe(exampleText(file).replace(/\beven\(/g, 'steady('));
  }
  await untilStale(picture, 'court', false);
});
