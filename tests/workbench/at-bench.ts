import { cpSync, mkdtempSync, readFileSync, realpathSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, FrameLocator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, inject } from 'vitest';
import {
  addressIn,
  launchBrowser,
  OPEN_PREVIEW,
  OUT_DIR,
  openPage,
  REPO_ROOT,
  runPaletteCommand,
  screenshot,
  waitForPicture,
} from './index.ts';

export interface BenchOptions {
  /** What the folder in the temporary folder is called by. */
  readonly name: string;
  /** Puts into the folder what is to be there when the workbench opens it. */
  readonly fill: (folder: string) => void;
  /** The file to open in the editor, from the folder; none when left out. */
  readonly file?: string;
  /** Whether to open the preview too, and wait for its picture. */
  readonly preview?: boolean;
}

/** A page of the workbench; all of it is there once the tests run. */
export interface Bench {
  readonly page: Page;
  /** The picture in the preview; whoever opens it or loads it again puts the new one here. */
  picture: FrameLocator;
  readonly folder: string;
  /** Text of a file of the folder, as saved. */
  fileText(name: string): string;
}

/**
 * Gives the tests of a file a folder, and a browser that shows it in the workbench which all files share
 * (global-setup.ts). A test that fails leaves what it saw in out/workbench/.
 */
export function atBench(options: BenchOptions): Bench {
  let folder: string | undefined;
  let browser: Browser | undefined;
  let page: Page | undefined;
  let picture: FrameLocator | undefined;
  const bench: Bench = {
    get page() {
      return there(page, 'page');
    },
    get picture() {
      return there(picture, 'picture');
    },
    set picture(shown) {
      picture = shown;
    },
    get folder() {
      return there(folder, 'folder');
    },
    fileText: (name) => readFileSync(join(bench.folder, name), 'utf8'),
  };

  beforeAll(async () => {
    folder = realpathSync(mkdtempSync(join(tmpdir(), `slatwright-${options.name}-`)));
    options.fill(folder);
    browser = await launchBrowser();
    page = await openPage(browser, addressIn(inject('workbench').port, folder), { file: options.file });
    if (!options.preview) return;
    await runPaletteCommand(page, OPEN_PREVIEW);
    picture = await waitForPicture(page);
  });

  afterAll(async () => {
    await browser?.close();
    if (folder) rmSync(folder, { recursive: true, force: true });
  });

  afterEach(async ({ task }) => {
    if (task.result?.state !== 'fail') return;
    const name = task.name.replace(/\W+/g, '-').slice(0, 60);
    await screenshot(bench.page, join(OUT_DIR, 'workbench', `failed-${name}.png`));
  });
  return bench;
}

/** Copies the examples into a folder, less the faulty ones: they have findings of their own, tested elsewhere. */
export function fillWithExamples(folder: string): void {
  cpSync(join(REPO_ROOT, 'examples'), folder, { recursive: true });
  rmSync(join(folder, 'faulty'), { recursive: true });
}

/** An example's text, by its path from examples/. */
export function exampleText(path: string): string {
  return readFileSync(join(REPO_ROOT, 'examples', path), 'utf8');
}

/** Number, from 1, of the first line that begins with this, whatever space stands before it. */
export function lineOf(text: string, start: string): number {
  const index = text.split('\n').findIndex((line) => line.trimStart().startsWith(start));
  if (index < 0) throw new Error(`no line begins with ${start}`);
  return index + 1;
}

function there<T>(value: T | undefined, what: string): T {
  if (value === undefined) throw new Error(`there is no ${what} yet`);
  return value;
}
