import type { Page } from 'playwright-core';
import { editor, focusEditor, waitUntil } from './page.ts';

const SUGGESTIONS_MS = 10_000;
const SUGGESTION_TRIES = 5;

/** Puts the cursor at a place of the text; lines and columns from 1. */
export async function goTo(page: Page, line: number, column = 1): Promise<void> {
  await focusEditor(page);
  await page.keyboard.press('Control+G');
  const widget = page.locator('.quick-input-widget:visible');
  await widget.locator('input').first().fill(`:${line}:${column}`);
  await page.keyboard.press('Enter');
  await widget.waitFor({ state: 'hidden' });
}

/**
 * Types at a place, key by key, as someone would; `delay` milliseconds lie between keys. With
 * `PLAIN_TYPING_SETTINGS` the file holds what was typed and no more.
 */
export async function typeAt(
  page: Page,
  line: number,
  column: number,
  text: string,
  delay = 20,
): Promise<void> {
  await goTo(page, line, column);
  await page.keyboard.type(text, { delay });
}

/** Replaces the text of one line. */
export async function replaceLine(page: Page, line: number, text: string, delay = 20): Promise<void> {
  await goTo(page, line);
  await page.keyboard.press('Home');
  await page.keyboard.press('Home');
  await page.keyboard.press('Shift+End');
  await page.keyboard.press('Delete');
  await page.keyboard.type(text, { delay });
}

/** Replaces the whole text at once, as by pasting. */
export async function replaceAll(page: Page, text: string): Promise<void> {
  await focusEditor(page);
  await page.keyboard.press('Control+A');
  await page.keyboard.insertText(text);
}

/** Takes the last change back. */
export async function undo(page: Page): Promise<void> {
  await focusEditor(page);
  await page.keyboard.press('Control+Z');
}

/** Saves the file in the editor and waits until its tab says so. */
export async function save(page: Page): Promise<void> {
  await focusEditor(page);
  await page.keyboard.press('Control+S');
  await page.locator('.editor-group-container.active .tab.active:not(.dirty)').first().waitFor();
}

/** Renames what stands at a place, everywhere. Files it touches are changed but not saved. */
export async function renameAt(page: Page, line: number, column: number, name: string): Promise<void> {
  await goTo(page, line, column);
  await page.keyboard.press('F2');
  const input = page.locator('.rename-box input.rename-input');
  await input.waitFor();
  await input.fill(name);
  await page.keyboard.press('Enter');
  await input.waitFor({ state: 'hidden' });
}

/** Asks for completions at the cursor; their labels in order, as far as the list shows them. */
export async function suggestions(page: Page): Promise<string[]> {
  const rows = page.locator('.suggest-widget.visible .monaco-list-row');
  // A key pressed while an overlay is closing is lost now and then: it is pressed again.
  for (let tries = 1; ; tries++) {
    await page.keyboard.press('Control+Space');
    const shown = await rows
      .first()
      .waitFor({ timeout: SUGGESTIONS_MS })
      .then(
        () => true,
        () => false,
      );
    if (shown) break;
    if (tries === SUGGESTION_TRIES) throw new Error('no suggestions were shown');
  }
  return rows.locator('.label-name').allInnerTexts();
}

/** What hovering over a place says. */
export async function hoverAt(page: Page, line: number, column: number): Promise<string> {
  await goTo(page, line, column);
  await page.keyboard.press('Control+K');
  await page.keyboard.press('Control+I');
  const hover = page.locator('.monaco-hover:not(.hidden) .monaco-hover-content').first();
  await hover.waitFor();
  const text = await waitUntil(
    async () => (await hover.textContent()) ?? '',
    (value) => value.trim() !== '' && !/^Loading/.test(value),
    'a hover with text',
  );
  await page.keyboard.press('Escape');
  return text;
}

/** Titles of the quick fixes at a place, in order. The menu stays open: `chooseFix` or Escape. */
export async function fixesAt(page: Page, line: number, column: number): Promise<string[]> {
  await goTo(page, line, column);
  await page.keyboard.press('Control+.');
  const rows = page.locator('.action-widget .monaco-list-row.action');
  await rows.first().waitFor();
  return rows.allInnerTexts();
}

/** Takes the quick fix whose title holds this text, from the open menu. */
export async function chooseFix(page: Page, title: string): Promise<void> {
  await page.locator('.action-widget .monaco-list-row.action', { hasText: title }).first().click();
  await page.locator('.action-widget .monaco-list-row.action').first().waitFor({ state: 'hidden' });
}

/** The lines of text that the editor shows now (those scrolled out of sight are not among them). */
export async function visibleLines(page: Page): Promise<string[]> {
  const lines = await editor(page)
    .locator('.view-lines .view-line')
    .evaluateAll((elements) =>
      elements
        .map((element) => ({
          top: Number.parseFloat((element as HTMLElement).style.top),
          text: element.textContent ?? '',
        }))
        .sort((a, b) => a.top - b.top)
        .map(({ text }) => text),
    );
  return lines.map((line) => line.replaceAll('\u00a0', ' '));
}

/** Number of the line with the cursor, as the margin shows it; works with the preview focused too. */
export async function activeLine(page: Page): Promise<number> {
  return Number(await editor(page).locator('.line-numbers.active-line-number').first().textContent());
}
