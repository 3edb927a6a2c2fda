import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Request } from 'playwright-core';
import { expect, it } from 'vitest';
import { atBench, exampleText, fillWithExamples, lineOf } from './at-bench.ts';
import {
  chooseFix,
  fixesAt,
  OUT_DIR,
  REPO_ROOT,
  replaceLine,
  runPaletteCommand,
  screenshot,
  showProblems,
  visibleLines,
  waitForProblems,
  waitUntil,
  webview,
} from './index.ts';
import { pathOf, textsOf, untilStale } from './picture.ts';

const JOB = 'bicycle-court.slat';
/** Where the statements are that these tests edit or point at, found in the text itself. */
const TEXT = exampleText(JOB);
const LENGTH = lineOf(TEXT, 'length ');
const LENGTH_LINE = TEXT.split('\n')[LENGTH - 1] ?? '';

const bench = atBench({ name: 'faults', fill: fillWithExamples, file: JOB, preview: true });

it('tells a fault in Problems, mends it by its fix, and marks the picture stale meanwhile', async () => {
  const { page, picture } = bench;
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
  await untilStale(picture, 'court', true);
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
  await untilStale(picture, 'court', false);
  expect(await textsOf(picture)).toContain(`23'`);

  await replaceLine(page, LENGTH, LENGTH_LINE);
  await waitUntil(
    () => textsOf(picture),
    (texts) => texts.includes(`23' 6"`),
    'the first length again',
  );
});

it('keeps the last good picture of text that cannot be read, and says so', async () => {
  const { page, picture } = bench;
  await showProblems(page);
  const slats = await pathOf(picture, 'court/b1/slat.middle');
  await replaceLine(page, LENGTH, '  length over posts');
  await waitForProblems(page, (all) => all.some(({ code }) => code === 'syntax'), 'the fault of syntax');
  await untilStale(picture, 'court', true);
  expect(await pathOf(picture, 'court/b1/slat.middle')).toBe(slats);
  await replaceLine(page, LENGTH, LENGTH_LINE);
  await untilStale(picture, 'court', false);
  await waitForProblems(page, (all) => all.every(({ code }) => code !== 'syntax'), 'no fault of syntax');
});

it("opens a finding's page from its link, without a network", async () => {
  const { page } = bench;
  const outside: string[] = [];
  const note = (request: Request): void => {
    const { protocol, hostname } = new URL(request.url());
    // The workbench gives its own files to webviews under this name; its service worker answers for it.
    if (hostname.endsWith('.vscode-resource.vscode-cdn.net')) return;
    if (/^https?:$/.test(protocol) && !/(^|\.)localhost$|^127\.0\.0\.1$/.test(hostname))
      outside.push(request.url());
  };
  page.context().on('request', note);
  try {
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
  } finally {
    page.context().off('request', note);
  }
  await runPaletteCommand(page, 'View: Close Editor');
});
