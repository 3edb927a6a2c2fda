import { dirname } from 'node:path';
import type { Browser, Locator, Page } from 'playwright-core';
import { ensureDir } from './install.ts';
import { THEME_LABELS, type Theme } from './settings.ts';

/** How long a single step in the workbench may take, in milliseconds: two busy cores are slow cores. */
export const STEP_MS = 60_000;
/** How long a workbench may take to show itself. */
export const OPEN_MS = 180_000;

export interface PageOptions {
  /** A file to open in the editor; path from the folder, with slashes. */
  readonly file?: string;
  readonly width?: number;
  readonly height?: number;
}

/**
 * Opens a workbench's address in a browser context of its own and waits until its explorer, and the file where one is
 * asked for, can be used. Close it with `page.context().close()`.
 */
export async function openPage(browser: Browser, address: string, options: PageOptions = {}): Promise<Page> {
  const context = await browser.newContext({
    viewport: { width: options.width ?? 1440, height: options.height ?? 900 },
    locale: 'en-US',
  });
  context.setDefaultTimeout(STEP_MS);
  const page = await context.newPage();
  await page.goto(address, { waitUntil: 'domcontentloaded', timeout: OPEN_MS });
  await waitForWorkbench(page);
  if (options.file) await openFromExplorer(page, options.file);
  return page;
}

/** Waits until the explorer lists the folder's files. */
export async function waitForWorkbench(page: Page): Promise<void> {
  await page.locator('.explorer-folders-view .monaco-list-row').first().waitFor({ timeout: OPEN_MS });
}

/** Waits until the active editor tab shows this file and its text is there. */
export async function waitForEditor(page: Page, file: string): Promise<void> {
  await page
    .locator('.tab.active', { hasText: fileName(file) })
    .first()
    .waitFor();
  await page.locator('.editor-instance .view-lines .view-line').first().waitFor();
}

/**
 * Loads the page anew, as reloading the window does, and waits for the explorer. The workbench brings its editors
 * and panels back only where the address names a folder and no file.
 */
export async function reloadPage(page: Page): Promise<void> {
  await page.reload({ waitUntil: 'domcontentloaded', timeout: OPEN_MS });
  await waitForWorkbench(page);
}

/** Opens a file by clicking through the explorer; `path` is from the folder, with slashes. */
export async function openFromExplorer(page: Page, path: string): Promise<void> {
  const parts = path.split('/');
  for (const [index, part] of parts.entries()) {
    const row = page
      .locator('.explorer-folders-view .monaco-list-row')
      .filter({ has: page.getByText(part, { exact: true }) })
      .first();
    await row.waitFor();
    const folder = index < parts.length - 1;
    if (!folder) await row.dblclick();
    else if ((await row.getAttribute('aria-expanded')) !== 'true') await row.click();
  }
  await waitForEditor(page, path);
}

/** Opens a file by typing its name or path into the quick open box. */
export async function quickOpen(page: Page, path: string): Promise<void> {
  await chooseInQuickInput(page, 'Control+P', path, fileName(path));
  await waitForEditor(page, path);
}

/** Runs a command of the palette by its full title, as `Slatwright: Open Preview`. */
export async function runPaletteCommand(page: Page, title: string): Promise<void> {
  await chooseInQuickInput(page, 'F1', `>${title}`, title);
}

/**
 * Opens the quick input with `key`, types, and takes the row that holds this text. A list once open does not
 * hear of extensions and files that turn up later, so it is opened again until the row is there.
 */
async function chooseInQuickInput(page: Page, key: string, typed: string, row: string): Promise<void> {
  const widget = page.locator('.quick-input-widget:visible');
  const wanted = widget.locator('.quick-input-list .monaco-list-row', { hasText: row }).first();
  const deadline = Date.now() + STEP_MS;
  for (;;) {
    await page.keyboard.press(key);
    await widget.locator('input').first().fill(typed);
    try {
      await wanted.waitFor({ timeout: 2_500 });
      break;
    } catch (error) {
      if (Date.now() > deadline) throw error;
      await page.keyboard.press('Escape');
    }
  }
  await wanted.click();
  // Some commands go on to ask something in the same place.
  await waitUntil(
    async () => !(await widget.isVisible()) || (await widget.locator('input').first().inputValue()) !== typed,
    (taken) => taken,
    `the quick input to take ${row}`,
  );
}

/** Puts the keyboard back into the text of the first editor group. */
export async function focusEditor(page: Page): Promise<void> {
  await page.keyboard.press('Control+1');
  await editor(page)
    .locator('.native-edit-context:focus, textarea.inputarea:focus')
    .waitFor({ state: 'attached' });
}

/** The text editor that shows, or the first one of several. */
export function editor(page: Page): Locator {
  return page.locator('.editor-instance:visible').first();
}

/** Gives the workbench another look, by its palette, and waits until it has it. */
export async function setTheme(page: Page, theme: Theme): Promise<void> {
  await runPaletteCommand(page, 'Preferences: Color Theme');
  const widget = page.locator('.quick-input-widget:visible');
  await widget.locator('input[placeholder*="Theme"]').fill(THEME_LABELS[theme]);
  await widget
    .locator('.quick-input-list .monaco-list-row', { hasText: THEME_LABELS[theme] })
    .first()
    .click();
  await widget.waitFor({ state: 'hidden' });
  await page.locator(`.monaco-workbench.${THEME_CLASSES[theme]}`).waitFor();
  // The webviews hear of it a moment later.
  await page.waitForTimeout(500);
}

const THEME_CLASSES: Readonly<Record<Theme, string>> = {
  light: 'vs',
  dark: 'vs-dark',
  'high-contrast-dark': 'hc-black',
  'high-contrast-light': 'hc-light',
};

/** Saves what the page shows as a PNG file, making its folder. */
export async function screenshot(page: Page, path: string): Promise<void> {
  ensureDir(dirname(path));
  await page.screenshot({ path });
}

/** Asks `read` again until `accept` takes its answer, and returns that; throws with the last answer if it never does. */
export async function waitUntil<T>(
  read: () => Promise<T>,
  accept: (value: T) => boolean,
  what: string,
  timeout: number = STEP_MS,
): Promise<T> {
  const deadline = Date.now() + timeout;
  for (;;) {
    const value = await read();
    if (accept(value)) return value;
    if (Date.now() > deadline)
      throw new Error(`Waited ${timeout} ms for ${what}; last: ${JSON.stringify(value)}`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

function fileName(path: string): string {
  return path.split('/').at(-1) ?? path;
}
