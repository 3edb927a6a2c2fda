import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { ensureInstalled, launchBrowser, nodeBinary, REPO_ROOT } from '../workbench/index.ts';
import { largeJob, type MadeJob, smallJob } from './made-jobs.ts';
import { printTable, type Row } from './statistics.ts';

const CHANGES = 60;
const WAIT_MS = 120_000;
/** Name of the page's own measure of the script time of one picture (client/webview/app.ts). */
const MEASURE = 'slatwright.picture';

/**
 * Script time in the picture's page for one change: from the delta's arrival until the elements are patched,
 * without style, layout and paint. The page runs in a plain headless browser with pictures from the built server.
 * The baseline sets the whole drawing anew by `innerHTML`, between the same two states.
 */
export async function benchWebview(): Promise<void> {
  await ensureInstalled(console.log);
  const browser = await launchBrowser();
  const folder = mkdtempSync(join(tmpdir(), 'slat-bench-'));
  const { server, address } = await serve();
  try {
    const rows: Row[] = [];
    for (const [job, budget] of [
      [smallJob(), 8],
      [largeJob(), 16],
    ] as const) {
      const file = join(folder, `${rows.length}.slat`);
      writeFileSync(file, job.text);
      rows.push({ what: job.name, budget, ...(await measure(browser, address, file, job)) });
    }
    printTable('Script time in the webview for one change (ms); base: the whole svg by innerHTML', rows);
  } finally {
    server.kill();
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

async function serve(): Promise<{ server: ChildProcess; address: string }> {
  const server = spawn(nodeBinary(), ['client/webview/stand-in/serve.ts', '0'], {
    cwd: REPO_ROOT,
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  process.once('exit', () => server.kill());
  const [line] = (await once(server.stdout, 'data')) as [Buffer];
  return { server, address: /http:\/\/localhost:\d+/.exec(line.toString())?.[0] ?? '' };
}

async function measure(
  browser: Browser,
  address: string,
  file: string,
  job: MadeJob,
): Promise<{ times: number[]; baseline: number[] }> {
  const page = await browser.newPage({ viewport: { width: 1200, height: 800 } });
  page.setDefaultTimeout(WAIT_MS);
  await page.goto(`${address}/?only&file=${encodeURIComponent(file)}`);
  await page.locator('svg.drawing [data-key]').first().waitFor({ state: 'attached' });
  const other = job.text.replace('bottom 2"', 'bottom 3"');
  await change(page, other, 1);
  const baseline: number[] = await measureWhole(page, job.text);
  const before = await page.evaluate((name) => performance.getEntriesByName(name).length, MEASURE);
  for (let n = 0; n < CHANGES; n++) await change(page, n % 2 === 0 ? other : job.text, before + n + 1);
  const times = await page.evaluate(
    ([name, from]) =>
      performance
        .getEntriesByName(name)
        .slice(from)
        .map(({ duration }) => duration),
    [MEASURE, before] as const,
  );
  await page.close();
  return { times, baseline };
}

/** Changes the text as by typing, and waits until the picture has followed. */
async function change(page: Page, text: string, measures: number): Promise<void> {
  await page.locator('#text').evaluate((area, value) => {
    (area as HTMLTextAreaElement).value = value;
    area.dispatchEvent(new Event('input'));
  }, text);
  await page.waitForFunction(
    ([name, count]) => performance.getEntriesByName(name).length >= count,
    [MEASURE, measures] as const,
    { polling: 20 },
  );
}

/** Times of setting the markup of two states in turn, in an element of the same place and style. */
async function measureWhole(page: Page, text: string): Promise<number[]> {
  const drawing = page.locator('svg.drawing');
  const changed = await drawing.innerHTML();
  const count = await page.evaluate((name) => performance.getEntriesByName(name).length, MEASURE);
  await change(page, text, count + 1);
  const first = await drawing.innerHTML();
  return drawing.evaluate(
    (svg, [one, two, times]) => {
      const copy = svg.parentElement?.insertBefore(svg.cloneNode(false), svg) as Element;
      const taken: number[] = [];
      for (let n = 0; n < times; n++) {
        const began = performance.now();
        copy.innerHTML = n % 2 === 0 ? one : two;
        taken.push(performance.now() - began);
      }
      copy.remove();
      return taken;
    },
    [changed, first, CHANGES] as const,
  );
}
