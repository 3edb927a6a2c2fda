import type { Locator, Page } from 'playwright-core';
import { waitUntil } from './page.ts';

/** Texts of the lenses over the lines in sight, top to bottom. */
export async function lenses(page: Page): Promise<string[]> {
  const shown = page.locator(
    '.editor-instance:visible .codelens-decoration a, .editor-instance:visible .codelens-decoration > span',
  );
  return (await shown.allTextContents()).map((text) => text.replaceAll('\u00a0', ' '));
}

/** Waits for a lens that this matches, and answers with its text. */
export async function waitForLens(page: Page, wanted: RegExp, what: string): Promise<string> {
  const shown = await waitUntil(
    () => lenses(page),
    (all) => all.some((text) => wanted.test(text)),
    what,
  );
  return shown.find((text) => wanted.test(text)) ?? '';
}

/** Clicks the first lens with this text. */
export async function clickLens(page: Page, text: string): Promise<void> {
  await page.locator('.codelens-decoration a', { hasText: text }).first().click();
}

/** The first line of the materials that this matches, by what a screen reader is told of it. */
export function materialLine(page: Page, label: RegExp): Locator {
  return page
    .locator('.pane-body [role="treeitem"]')
    .and(page.getByRole('treeitem', { name: label }))
    .first();
}

/** Unfolds a line of the materials, unless it is unfolded. */
export async function unfold(page: Page, label: RegExp): Promise<void> {
  const line = materialLine(page, label);
  await line.waitFor();
  if ((await line.getAttribute('aria-expanded')) === 'true') return;
  await line.click();
  await waitUntil(
    () => line.getAttribute('aria-expanded'),
    (expanded) => expanded === 'true',
    `${label} to be unfolded`,
  );
}

/** Labels of what the quick input offers, once it offers anything. */
export async function offers(page: Page): Promise<string[]> {
  const rows = page.locator('.quick-input-widget:visible .quick-input-list .monaco-list-row');
  await rows.first().waitFor();
  return rows.allInnerTexts();
}
