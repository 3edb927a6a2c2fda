import { mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, FrameLocator, Page } from 'playwright-core';
import {
  goTo,
  launchBrowser,
  OPEN_PREVIEW,
  openPage,
  PLAIN_TYPING_SETTINGS,
  packExtension,
  runPaletteCommand,
  startWorkbench,
  type Workbench,
  waitForPicture,
} from '../workbench/index.ts';
import { largeJob, type MadeJob, smallJob } from './made-jobs.ts';
import { printTable, type Row } from './statistics.ts';

const COLD = 5;
const KEYS = 40;
const KEY_MS = 30_000;
/** Between the picture of one key and the next key. */
const REST_MS = 150;

/**
 * Keystroke to pixels in the real workbench under a headless browser: from the key event in the editor's document
 * to the first frame after the picture's elements were patched, the text being valid after each key. Both ends
 * are read from the wall clock of their document: they are frames of one browser on one machine. Whatever the
 * browser takes to hand the frame to a screen is not in it; a headless one draws without a graphics card, so
 * frames cost more than on a desk.
 */
export async function benchWorkbench(): Promise<void> {
  const vsix = await packExtension(console.log);
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'slat-bench-')));
  const jobs = [
    ['small.slat', smallJob(), 60],
    ['large.slat', largeJob(), 120],
  ] as const;
  for (const [file, job] of jobs) writeFileSync(join(folder, file), job.text);
  const workbench = await startWorkbench({
    vsix,
    folder,
    settings: PLAIN_TYPING_SETTINGS,
    progress: console.log,
  });
  const browser = await launchBrowser();
  try {
    const rows: Row[] = [];
    for (const [file, job, budget] of jobs) {
      const times = await measure(browser, workbench, file, job);
      rows.push({ what: `first ${COLD} keys, ${job.name}`, times: times.slice(0, COLD) });
      rows.push({ what: `warm, ${job.name}`, times: times.slice(COLD), budget });
    }
    printTable('Keystroke to pixels in the workbench (ms)', rows);
  } finally {
    await browser.close();
    await workbench.stop();
    rmSync(folder, { recursive: true, force: true });
  }
}

async function measure(
  browser: Browser,
  workbench: Workbench,
  file: string,
  job: MadeJob,
): Promise<number[]> {
  const page = await openPage(browser, workbench.url, { file });
  await runPaletteCommand(page, OPEN_PREVIEW);
  const picture = await waitForPicture(page);
  const before = job.text.slice(0, job.text.indexOf(job.marker) + 'bottom '.length).split('\n');
  await goTo(page, before.length, (before.at(-1) ?? '').length + 1);
  await watchKeys(page);
  await watchPicture(picture);
  const times: number[] = [];
  for (let n = 0; n < KEYS; n++) {
    // What is typed takes the place of the digit: each key is one change of the text.
    await page.keyboard.press('Shift+ArrowRight');
    await page.waitForTimeout(REST_MS);
    await picture.locator('body').evaluate(() => Object.assign(window, { painted: undefined }));
    await page.keyboard.press(n % 2 === 0 ? '3' : '2');
    times.push((await painted(picture)) - (await keyed(page)));
    await page.keyboard.press('ArrowLeft');
  }
  await page.context().close();
  return times;
}

async function watchKeys(page: Page): Promise<void> {
  await page.evaluate(() => {
    const told = (event: KeyboardEvent): void => {
      if (/^[23]$/.test(event.key))
        Object.assign(window, { keyed: performance.timeOrigin + event.timeStamp });
    };
    window.addEventListener('keydown', told, true);
  });
}

/** Notes the first frame after the drawing's views have been changed. */
async function watchPicture(picture: FrameLocator): Promise<void> {
  await picture.locator('svg.drawing').evaluate((svg) => {
    let waiting = false;
    const views = svg.querySelector('.sheet > g') as Element;
    new MutationObserver(() => {
      if (waiting) return;
      waiting = true;
      // The frame that shows the change runs its callbacks first; a task behind them comes after the paint.
      requestAnimationFrame(() => {
        const channel = new MessageChannel();
        channel.port1.onmessage = () => {
          waiting = false;
          Object.assign(window, { painted: performance.timeOrigin + performance.now() });
        };
        channel.port2.postMessage(0);
      });
    }).observe(views, { subtree: true, attributes: true, childList: true, characterData: true });
  });
}

function keyed(page: Page): Promise<number> {
  return page.evaluate(() => (window as unknown as { keyed: number }).keyed);
}

async function painted(picture: FrameLocator): Promise<number> {
  const deadline = Date.now() + KEY_MS;
  for (;;) {
    const when = await picture
      .locator('body')
      .evaluate(() => (window as unknown as { painted?: number }).painted);
    if (when !== undefined) return when;
    if (Date.now() > deadline) throw new Error('the picture did not follow a key');
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}
