import { cpSync, mkdtempSync, readFileSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, FrameLocator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import { lowestContrast } from './contrast.ts';
import {
  activeLine,
  chooseFix,
  fixesAt,
  goTo,
  hoverAt,
  launchBrowser,
  OPEN_PREVIEW,
  OUT_DIR,
  openFromExplorer,
  openPage,
  PLAIN_TYPING_SETTINGS,
  packExtension,
  REPO_ROOT,
  reloadPage,
  renameAt,
  replaceLine,
  runPaletteCommand,
  save,
  screenshot,
  setTheme,
  showProblems,
  startWorkbench,
  suggestions,
  type Theme,
  visibleLines,
  type Workbench,
  waitForEditor,
  waitForPicture,
  waitForProblems,
  waitUntil,
  webview,
} from './index.ts';
import {
  cameraOf,
  clickPiece,
  keptElements,
  keyed,
  litPath,
  pathOf,
  rememberElements,
  restingCamera,
  textsOf,
} from './picture.ts';

const JOB = 'bicycle-court.slat';
const MARKUP = 'markup.slat';
/** Where the statements are that these tests edit or point at, found in the text itself. */
const TEXT = readFileSync(join(REPO_ROOT, 'examples', JOB), 'utf8').split('\n');
const LENGTH = lineOf('length ');
const HEIGHT = lineOf('height ');
const LENGTH_LINE = TEXT[LENGTH - 1] ?? '';
const HEIGHT_LINE = TEXT[HEIGHT - 1] ?? '';

/** Names that would do something if they were taken for markup. */
const IMAGE = '<img src=x onerror=alert(1)>';
const OTHER = '<img src=y onerror=alert(2)>';
const BOLD = '<b>yard</b>';

let folder: string;
let workbench: Workbench;
let browser: Browser;
let page: Page;
let picture: FrameLocator;

function lineOf(start: string, after = 0): number {
  const index = TEXT.findIndex((line, n) => n >= after && line.trimStart().startsWith(start));
  if (index < 0) throw new Error(`${JOB} has no line that begins with ${start}`);
  return index + 1;
}

function markupText(): string {
  return `use "library/stock.slat"
use "library/patterns.slat"

run "${IMAGE}" {
  seen from "${BOLD}"
  length 12' over posts
  posts fir-4x4, at most 5' clear
  height 5'    bottom 2"
  slats on front face
  fill even
}

run other {
  length 12' over posts
  posts fir-4x4, at most 5' clear
  height 5'    bottom 2"
  slats on front face
  fill "${OTHER}"
}
`;
}

const fileText = (name: string): string => readFileSync(join(folder, name), 'utf8');

/** Whether the run's picture is marked as the last good one. */
async function isStale(): Promise<boolean> {
  return ((await keyed(picture, 'court').getAttribute('class')) ?? '').split(' ').includes('stale');
}

const untilStale = (wanted: boolean): Promise<boolean> =>
  waitUntil(isStale, (stale) => stale === wanted, `a picture that is ${wanted ? '' : 'not '}stale`);

/** As with a wheel, and waits until the picture has taken it. */
async function zoomIn(): Promise<void> {
  const before = await restingCamera(picture);
  await picture.locator('svg.drawing').hover({ position: { x: 300, y: 200 } });
  await page.mouse.wheel(0, -240);
  await waitUntil(
    () => cameraOf(picture),
    (camera) => camera !== before,
    'the picture to come nearer',
  );
}

beforeAll(async () => {
  folder = realpathSync(mkdtempSync(join(tmpdir(), 'slatwright-loop-')));
  cpSync(join(REPO_ROOT, 'examples'), folder, { recursive: true });
  // Faulty files have findings of their own, and are tested elsewhere.
  rmSync(join(folder, 'faulty'), { recursive: true });
  writeFileSync(join(folder, MARKUP), markupText());
  const vsix = await packExtension(console.log);
  workbench = await startWorkbench({
    vsix,
    folder,
    settings: PLAIN_TYPING_SETTINGS,
    progress: console.log,
  });
  browser = await launchBrowser();
  page = await openPage(browser, workbench, { file: JOB });
  await runPaletteCommand(page, OPEN_PREVIEW);
  picture = await waitForPicture(page);
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

it('shows the picture of the file beside its text', async () => {
  await waitForEditor(page, JOB);
  for (const key of ['court', 'court/cycles/leaf', 'court/b1/slat.middle', 'court/cycles/slat.front'])
    await keyed(picture, key).waitFor({ state: 'attached' });
  expect(await textsOf(picture)).toEqual(
    expect.arrayContaining(['Elevation of court', expect.stringMatching(/^seen from yard/), `23' 6"`]),
  );
});

it('tells a fault in Problems, mends it by its fix, and marks the picture stale meanwhile', async () => {
  await showProblems(page);
  const faulty = LENGTH_LINE.replace(`23' 6"`, '23');
  await replaceLine(page, LENGTH, faulty);
  const shown = await waitForProblems(
    page,
    (all) => all.some(({ code }) => code === 'unit-missing'),
    'the bare number to be told',
  );
  const problem = shown.find(({ code }) => code === 'unit-missing');
  expect(problem).toMatchObject({
    severity: 'error',
    line: LENGTH,
    column: faulty.indexOf('23') + 1,
    source: 'slatwright',
  });
  await untilStale(true);
  expect(await textsOf(picture)).toContain('last good picture');

  const fixes = await fixesAt(page, LENGTH, faulty.indexOf('23') + 1);
  const feet = fixes.find((title) => /23'(?! *\d)/.test(title));
  expect(feet, fixes.join(' | ')).toBeDefined();
  await chooseFix(page, feet ?? '');
  await waitForProblems(
    page,
    (all) => all.every(({ code }) => code !== 'unit-missing'),
    'the problem to be gone',
  );
  await waitUntil(
    () => visibleLines(page),
    (lines) => lines.includes(faulty.replace('23', `23'`)),
    'the text mended',
  );
  await untilStale(false);
  expect(await textsOf(picture)).toContain(`23'`);

  await replaceLine(page, LENGTH, LENGTH_LINE);
  await waitUntil(
    () => textsOf(picture),
    (texts) => texts.includes(`23' 6"`),
    'the first length again',
  );
});

it('patches what an edit changes, keeps every element, and keeps its zoom', async () => {
  await zoomIn();
  const camera = await restingCamera(picture);
  const slats = await pathOf(picture, 'court/b1/slat.middle');
  const ground = await pathOf(picture, 'court/ground');
  const count = await rememberElements(picture);
  expect(count).toBeGreaterThan(20);

  await replaceLine(page, HEIGHT, HEIGHT_LINE.replace(`5' 9"`, `5' 8"`));
  await waitUntil(
    () => textsOf(picture),
    (texts) => texts.includes(`5' 8"`),
    'the new height',
  );
  expect(await pathOf(picture, 'court/b1/slat.middle')).not.toBe(slats);
  expect(await pathOf(picture, 'court/ground')).toBe(ground);
  const kept = await keptElements(picture);
  expect(kept.replaced).toEqual([]);
  expect(kept.patched).toContain('court/b1/slat.middle');
  expect(kept.untouched).toContain('court/ground');
  expect(await cameraOf(picture)).toBe(camera);

  await replaceLine(page, HEIGHT, HEIGHT_LINE);
  await waitUntil(
    () => pathOf(picture, 'court/b1/slat.middle'),
    (path) => path === slats,
    'the first slats again',
  );
  expect((await keptElements(picture)).replaced).toEqual([]);
});

it('keeps the last good picture of text that cannot be read, and says so', async () => {
  await showProblems(page);
  const slats = await pathOf(picture, 'court/b1/slat.middle');
  await replaceLine(page, LENGTH, '  length over posts');
  await waitForProblems(page, (all) => all.some(({ code }) => code === 'syntax'), 'the fault of syntax');
  await untilStale(true);
  expect(await pathOf(picture, 'court/b1/slat.middle')).toBe(slats);
  await replaceLine(page, LENGTH, LENGTH_LINE);
  await untilStale(false);
  await waitForProblems(page, (all) => all.every(({ code }) => code !== 'syntax'), 'no fault of syntax');
});

it('leads from a piece to its line and from a line to its pieces', async () => {
  await runPaletteCommand(page, 'Slatwright: Fit Picture');
  await restingCamera(picture);
  await goTo(page, lineOf('job '));
  await clickPiece(picture, 'court/b2/slat.middle', 3);
  await waitUntil(
    () => activeLine(page),
    (line) => line === lineOf('fill beat'),
    'the line of the slats',
  );
  await clickPiece(picture, 'court/cycles/slat.front', 2);
  await waitUntil(
    () => activeLine(page),
    (line) => line === lineOf('fill even'),
    "the line of the leaf's slats",
  );

  const clicked = await litPath(picture);
  expect(clicked).not.toBe('');
  await goTo(page, lineOf('frame '), 4);
  const frame = await waitUntil(
    () => litPath(picture),
    (path) => path !== '' && path !== clicked,
    'the frame to be lit',
  );
  await goTo(page, lineOf('posts fir-6x4'), 4);
  await waitUntil(
    () => litPath(picture),
    (path) => path !== '' && path !== frame,
    'the gate posts to be lit',
  );
  await goTo(page, lineOf('measure '), 4);
  await waitUntil(
    () => litPath(picture),
    (path) => path === '',
    'nothing to be lit',
  );
});

it('says what a value amounts to, and what may be written', async () => {
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
    (lines) => lines[LENGTH - 1] === LENGTH_LINE && lines[LENGTH] === TEXT[LENGTH],
    'the text as it was',
  );
});

it('renames a pattern in the library and in every job that uses it', async () => {
  const line = lineOf('fill even');
  await renameAt(page, line, (TEXT[line - 1] ?? '').indexOf('even') + 1, 'steady');
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
    const before = readFileSync(join(REPO_ROOT, 'examples', file), 'utf8');
    expect(fileText(file)).toBe(before.replace(/\beven\(/g, 'steady('));
  }
  await untilStale(false);
});

it("opens a finding's page from its link, without a network", async () => {
  const outside: string[] = [];
  page.context().on('request', (request) => {
    const { protocol, hostname } = new URL(request.url());
    // The workbench gives its own files to webviews under this name; its service worker answers for it.
    if (hostname.endsWith('.vscode-resource.vscode-cdn.net')) return;
    if (/^https?:$/.test(protocol) && !/(^|\.)localhost$|^127\.0\.0\.1$/.test(hostname))
      outside.push(request.url());
  });
  await showProblems(page);
  await waitForProblems(page, (all) => all.some(({ code }) => code === 'gap-too-wide'), 'a finding');
  await page.locator('.markers-panel .monaco-list-row a', { hasText: 'gap-too-wide' }).first().click();
  const heading = readFileSync(join(REPO_ROOT, 'language/checks/gap-too-wide.md'), 'utf8')
    .split('\n')[0]
    ?.replace(/^# /, '');
  await waitUntil(
    async () => {
      const texts: string[] = [];
      const shown = await page.locator('iframe.webview.ready:visible').count();
      for (let n = 0; n < shown; n++)
        texts.push(
          ...(await webview(page, n)
            .locator('h1')
            .allTextContents()
            .catch(() => [])),
        );
      return texts;
    },
    (texts) => texts.includes(heading ?? ''),
    'the page of the finding',
  );
  expect(outside).toEqual([]);
  await screenshot(page, join(OUT_DIR, 'workbench', 'finding-page.png'));
  await runPaletteCommand(page, 'View: Close Editor');
});

it('brings the preview back with its picture when the window is loaded again', async () => {
  await openFromExplorer(page, JOB);
  await save(page);
  await reloadPage(page);
  picture = await waitForPicture(page);
  await keyed(picture, 'court/b1/slat.middle').waitFor({ state: 'attached' });
  expect(await textsOf(picture)).toContain(`23' 6"`);
  // It is followed as before.
  await waitForEditor(page, JOB);
  await replaceLine(page, LENGTH, LENGTH_LINE.replace(`23' 6"`, `23' 9"`));
  await waitUntil(
    () => textsOf(picture),
    (texts) => texts.includes(`23' 9"`),
    'the new length',
  );
  await replaceLine(page, LENGTH, LENGTH_LINE);
  await save(page);
});

for (const theme of ['dark', 'high-contrast-dark', 'high-contrast-light', 'light'] satisfies Theme[])
  it(`can be read in a ${theme} theme`, async () => {
    await setTheme(page, theme);
    await goTo(page, lineOf('frame '), 4);
    await waitUntil(
      () => litPath(picture),
      (path) => path !== '',
      'the frame to be lit',
    );
    // WCAG 2.1, 1.4.3: 4.5 to 1 for text, and 1.4.6: 7 to 1 where more contrast is asked for.
    const wanted = theme.startsWith('high-contrast') ? 7 : 4.5;
    await waitUntil(
      () => lowestContrast(picture),
      (contrast) => contrast >= wanted,
      `letters of ${wanted} to 1`,
      10_000,
    );
    await screenshot(page, join(OUT_DIR, 'workbench', `${theme}.png`));
  });

it('takes no text for markup, neither in the picture nor in what is said about it', async () => {
  const asked: string[] = [];
  page.on('dialog', (dialog) => {
    asked.push(dialog.message());
    void dialog.dismiss();
  });
  await openFromExplorer(page, MARKUP);
  await runPaletteCommand(page, OPEN_PREVIEW);
  const frame = await waitForPicture(page);
  const texts = await waitUntil(
    () => textsOf(frame),
    (all) => all.some((text) => text.includes(IMAGE)),
    'the name as text',
  );
  expect(texts.join('\n')).toContain(BOLD);
  expect(await frame.locator('body img, body b, body foreignObject').count()).toBe(0);

  await showProblems(page);
  await waitForProblems(
    page,
    (all) => all.some(({ message }) => message.includes(OTHER)),
    'the unknown name',
  );
  const lines = fileText(MARKUP).split('\n');
  const named = lines.findIndex((line) => line.includes(IMAGE));
  await hoverAt(page, named + 1, (lines[named] ?? '').indexOf(IMAGE) + 3);
  expect(await page.locator('img[src="x"], img[src="y"]').count()).toBe(0);
  expect(asked).toEqual([]);
  await runPaletteCommand(page, 'View: Close All Editors');
});
