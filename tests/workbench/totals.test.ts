import { cpSync, mkdirSync, mkdtempSync, readFileSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import {
  activeLine,
  clickLens,
  focusEditor,
  goTo,
  launchBrowser,
  lenses,
  materialLine,
  OUT_DIR,
  offers,
  openPage,
  PLAIN_TYPING_SETTINGS,
  packExtension,
  quickOpen,
  REPO_ROOT,
  replaceAll,
  replaceLine,
  runPaletteCommand,
  save,
  screenshot,
  setTheme,
  startWorkbench,
  type Theme,
  undo,
  unfold,
  visibleLines,
  type Workbench,
  waitForLens,
  waitUntil,
  webview,
} from './index.ts';

const JOB = 'workshop-yard.slat';
const TEXT = readFileSync(join(REPO_ROOT, 'examples', JOB), 'utf8').split('\n');
const LENGTH = lineOf('length ');
const LENGTH_LINE = TEXT[LENGTH - 1] ?? '';
const POSTS = lineOf('posts ');
const SETTINGS = '.vscode/settings.json';

let folder: string;
let workbench: Workbench;
let browser: Browser;
let page: Page;

function lineOf(start: string): number {
  const index = TEXT.findIndex((line) => line.trimStart().startsWith(start));
  if (index < 0) throw new Error(`${JOB} has no line that begins with ${start}`);
  return index + 1;
}

const untilLine = (number: number, text: string): Promise<string[]> =>
  waitUntil(
    () => visibleLines(page),
    (lines) => lines[number - 1] === text,
    `line ${number} to be ${text}`,
  );

beforeAll(async () => {
  folder = realpathSync(mkdtempSync(join(tmpdir(), 'slatwright-totals-')));
  cpSync(join(REPO_ROOT, 'examples', JOB), join(folder, JOB));
  mkdirSync(join(folder, '.vscode'));
  writeFileSync(join(folder, SETTINGS), '{}\n');
  const vsix = await packExtension(console.log);
  workbench = await startWorkbench({ vsix, folder, settings: PLAIN_TYPING_SETTINGS, progress: console.log });
  browser = await launchBrowser();
  page = await openPage(browser, workbench, { file: JOB });
});

afterAll(async () => {
  await browser?.close();
  await workbench?.stop();
  if (folder) rmSync(folder, { recursive: true, force: true });
});

afterEach(async ({ task }) => {
  if (task.result?.state !== 'fail') return;
  const name = task.name.replace(/\W+/g, '-').slice(0, 60);
  await screenshot(page, join(OUT_DIR, 'workbench', `failed-${name}.png`));
});

it('tells above the job and the run what they come to, and follows what is typed', async () => {
  await waitForLens(
    page,
    /boards and 5 posts to buy, order \$538\.27, .*proven cheapest/,
    'what the job comes to',
  );
  await waitForLens(page, /^56 slats, 19 boards and 5 posts for \$429\.70, 20' long, 14 % open$/, 'the run');
  await replaceLine(page, LENGTH, LENGTH_LINE.replace("20'", "22'"));
  await waitForLens(page, / 22' long, .* open$/, 'the new length, no longer marked as stale');
  await replaceLine(page, LENGTH, LENGTH_LINE);
  await waitForLens(page, / 20' long, .* open$/, 'the first length again');
});

it('lists what is bought, leads from a piece to what makes it, and follows what is typed', async () => {
  await clickLens(page, '56 slats');
  await unfold(page, /^plank, 56 pieces/);
  await unfold(page, /^16 of 16', /);
  await unfold(page, /^8 into 3 of 4' 11"/);
  await goTo(page, 1);
  await materialLine(page, /^yard, bay 2, slat 5, B2-05/).click();
  await waitUntil(
    () => activeLine(page),
    (line) => line === lineOf('repeat plank'),
    'the line of the slats',
  );
  await replaceLine(page, LENGTH, LENGTH_LINE.replace("20'", "24'"));
  // Other boards for four feet more. Unfolded lines that are still there stay unfolded.
  try {
    await waitUntil(
      () => materialLine(page, /^plank, /).getAttribute('aria-label'),
      (label) => label !== null && !label.includes('$321.30'),
      'other boards to buy',
    );
    await waitUntil(
      () => materialLine(page, /^plank, /).getAttribute('aria-expanded'),
      (expanded) => expanded === 'true',
      'the unfolded line to be so again',
    );
  } finally {
    await replaceLine(page, LENGTH, LENGTH_LINE);
  }
  await materialLine(page, /^plank, 56 pieces, \$321\.30/).waitFor();
});

it('seeks better choices, and puts the chosen one into the text as one change', async () => {
  await clickLens(page, 'Look for better choices');
  const shown = await offers(page);
  expect(shown.length).toBeGreaterThan(1);
  expect(shown.at(-1)).toContain('Leave it as it is');
  const five = shown.find((text) => text.startsWith('5 bays; '));
  expect(five, shown.join(' | ')).toMatch(/\$\d+\.\d\d \([+-]\$[\d.]+\)/);
  await screenshot(page, join(OUT_DIR, 'workbench', 'better-choices.png'));
  await page.locator('.quick-input-widget:visible .monaco-list-row', { hasText: '5 bays; ' }).first().click();
  const before = TEXT[POSTS - 1] ?? '';
  await untilLine(POSTS, before.replace('4 bays', '5 bays'));
  await waitForLens(page, /^70 slats, .* and 6 posts for /, 'the run as chosen');
  await undo(page);
  await untilLine(POSTS, before);
});

it('tells what the pile gives, and opens the sheets of the takeoff', async () => {
  await runPaletteCommand(page, 'Slatwright: Show What the Pile Still Gives');
  expect((await offers(page)).join()).toMatch(/even, as it stands[\s\S]*0 of 4 bays, or 1 of 14 courses/);
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
  await waitForLens(page, /^56 slats, /, 'lenses again');
});

for (const theme of ['dark', 'light'] satisfies Theme[])
  it(`looks as it should in a ${theme} theme`, async () => {
    await setTheme(page, theme);
    await runPaletteCommand(page, 'Slatwright: Show Materials');
    await materialLine(page, /^plank, /).waitFor();
    await waitForLens(page, /^56 slats, /, 'lenses');
    await screenshot(page, join(OUT_DIR, 'workbench', `totals-${theme}.png`));
  });

it('says what would stand there when no .slat file is open', async () => {
  await save(page);
  await runPaletteCommand(page, 'View: Close All Editors');
  await page.locator('.welcome-view-content', { hasText: 'Open a .slat file to see it' }).waitFor();
  await screenshot(page, join(OUT_DIR, 'workbench', 'no-materials.png'));
});
