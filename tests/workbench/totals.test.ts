import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { atBench, exampleText, lineOf } from './at-bench.ts';
import {
  activeLine,
  clickLens,
  focusEditor,
  goTo,
  lenses,
  materialLine,
  OUT_DIR,
  offers,
  quickOpen,
  replaceAll,
  replaceLine,
  runPaletteCommand,
  save,
  screenshot,
  setTheme,
  type Theme,
  undo,
  unfold,
  visibleLines,
  waitForLens,
  waitUntil,
  webview,
} from './index.ts';

const JOB = 'workshop-yard.slat';
const TEXT = exampleText(JOB);
const LENGTH = lineOf(TEXT, 'length ');
const LENGTH_LINE = TEXT.split('\n')[LENGTH - 1] ?? '';
/** The line of the stock that slats are cut from. */
const PLANK = /^plank, \d+ pieces/;
const SETTINGS = '.vscode/settings.json';

const bench = atBench({
  name: 'totals',
  file: JOB,
  fill(folder) {
    writeFileSync(join(folder, JOB), TEXT);
    mkdirSync(join(folder, '.vscode'));
    writeFileSync(join(folder, SETTINGS), '{}\n');
  },
});

it('tells above the job and the run what they come to, and follows what is typed', async () => {
  const { page } = bench;
  await waitForLens(
    page,
    /boards and 5 posts to buy, order \$\d+\.\d\d, price \$[\d,]+\.\d\d, proven cheapest$/,
    'what the job comes to',
  );
  await waitForLens(
    page,
    /^\d+ slats, \d+ boards and 5 posts for \$\d+\.\d\d, 20' long, \d+ % open$/,
    'the run',
  );
  await replaceLine(page, LENGTH, LENGTH_LINE.replace("20'", "22'"));
  await waitForLens(page, / 22' long, .* open$/, 'the new length, no longer marked as stale');
  await replaceLine(page, LENGTH, LENGTH_LINE);
  await waitForLens(page, / 20' long, .* open$/, 'the first length again');
});

it('lists what is bought, leads from a piece to what makes it, and follows what is typed', async () => {
  const { page } = bench;
  await clickLens(page, "20' long");
  await unfold(page, PLANK);
  const before = await materialLine(page, PLANK).getAttribute('aria-label');
  await unfold(page, /^\d+ of \d+', .* each, /);
  await unfold(page, /^\d+ into \d+ of /);
  await goTo(page, 1);
  await materialLine(page, /^yard, bays? .*, slat \d+, B\d-\d\d, /).click();
  await waitUntil(
    () => activeLine(page),
    (line) => line === lineOf(TEXT, 'repeat plank'),
    'the line of the slats',
  );
  await replaceLine(page, LENGTH, LENGTH_LINE.replace("20'", "24'"));
  // Other boards for four feet more. Unfolded lines that are still there stay unfolded.
  try {
    await waitUntil(
      () => materialLine(page, PLANK).getAttribute('aria-label'),
      (label) => label !== null && label !== before,
      'other boards to buy',
    );
    await waitUntil(
      () => materialLine(page, PLANK).getAttribute('aria-expanded'),
      (expanded) => expanded === 'true',
      'the unfolded line to be so again',
    );
  } finally {
    await replaceLine(page, LENGTH, LENGTH_LINE);
  }
  await waitUntil(
    () => materialLine(page, PLANK).getAttribute('aria-label'),
    (label) => label === before,
    'the first boards again',
  );
});

it('seeks better choices, and puts the chosen one into the text as one change', async () => {
  const { page } = bench;
  await clickLens(page, 'Look for better choices');
  const shown = await offers(page);
  expect(shown.length).toBeGreaterThan(1);
  expect(shown.at(-1)).toContain('Leave it as it is');
  expect(shown[0]).toMatch(/\$\d+\.\d\d \([+-]\$[\d.]+\)/);
  await screenshot(page, join(OUT_DIR, 'workbench', 'better-choices.png'));
  const before = await visibleLines(page);
  await page.locator('.quick-input-widget:visible .monaco-list-row').first().click();
  const after = await waitUntil(
    () => visibleLines(page),
    (lines) => lines.join() !== before.join(),
    'the choice in the text',
  );
  // A choice is stated in the run, and in the pattern or its fill at most.
  expect(after.filter((line) => !before.includes(line)).length).toBeLessThan(4);
  await waitForLens(page, /^\d+ slats, .* open$/, 'the run as chosen');
  await undo(page);
  await waitUntil(
    () => visibleLines(page),
    (lines) => lines.join() === before.join(),
    'the text as it was',
  );
});

it('tells what the pile gives, and opens the sheets of the takeoff', async () => {
  const { page } = bench;
  await runPaletteCommand(page, 'Slatwright: Show What the Pile Still Gives');
  expect((await offers(page)).join()).toMatch(/even, as it stands[\s\S]*\d of 4 bays, or \d+ of 14 courses/);
  await page.keyboard.press('Escape');
  await focusEditor(page);
  await runPaletteCommand(page, 'Slatwright: Open Order as CSV');
  await waitUntil(
    () => visibleLines(page),
    (lines) => (lines[0] ?? '').startsWith('stock,width,thickness,length') && lines.join().includes('plank'),
    'the order',
  );
  await runPaletteCommand(page, 'View: Close Editor');
  await focusEditor(page);
  await runPaletteCommand(page, 'Slatwright: Show Takeoff');
  const sheets = webview(page, 0);
  await sheets.locator('h1', { hasText: `Takeoff of ${JOB}` }).waitFor();
  await waitUntil(
    () =>
      sheets.locator('img').evaluateAll((all) => all.map((one) => (one as HTMLImageElement).naturalWidth)),
    (widths) => widths.length >= 3 && widths.every((width) => width > 0),
    'every sheet as a picture',
  );
  await screenshot(page, join(OUT_DIR, 'workbench', 'takeoff.png'));
  await runPaletteCommand(page, 'View: Close Editor');
});

it('shows no lenses to those who turn them off, and shows them again', async () => {
  const { page } = bench;
  const set = async (on: boolean): Promise<void> => {
    await quickOpen(page, SETTINGS);
    await replaceAll(page, `{ "slatwright.lenses": ${on} }`);
    await save(page);
    await quickOpen(page, JOB);
  };
  await set(false);
  await waitUntil(
    () => lenses(page),
    (all) => all.length === 0,
    'no lenses',
  );
  await set(true);
  await waitForLens(page, /^\d+ slats, /, 'lenses again');
});

for (const theme of ['dark', 'light'] satisfies Theme[])
  it(`looks as it should in a ${theme} theme`, async () => {
    const { page } = bench;
    await setTheme(page, theme);
    await runPaletteCommand(page, 'Slatwright: Show Materials');
    await materialLine(page, PLANK).waitFor();
    await waitForLens(page, /^\d+ slats, /, 'lenses');
    await screenshot(page, join(OUT_DIR, 'workbench', `totals-${theme}.png`));
  });

it('says what would stand there when no .slat file is open', async () => {
  const { page } = bench;
  await save(page);
  await runPaletteCommand(page, 'View: Close All Editors');
  await page.locator('.welcome-view-content', { hasText: 'Open a .slat file to see it' }).waitFor();
  await screenshot(page, join(OUT_DIR, 'workbench', 'no-materials.png'));
});
