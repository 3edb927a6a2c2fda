import type { Page } from 'playwright-core';
import { STEP_MS, waitUntil } from './page.ts';

/** A row of the Problems panel. */
export interface Problem {
  readonly severity: 'error' | 'warning' | 'info';
  readonly message: string;
  /** Who says so. */
  readonly source: string;
  readonly code: string;
  /** From 1. */
  readonly line: number;
  readonly column: number;
}

/** Brings the Problems panel up; leaves the keyboard in it. */
export async function showProblems(page: Page): Promise<void> {
  const panel = page.locator('.markers-panel');
  if (!(await panel.isVisible())) await page.keyboard.press('Control+Shift+M');
  await panel.waitFor();
}

/**
 * The problems that the panel shows, top to bottom, of all files. The list makes only the rows in sight:
 * about eight at the usual height of the panel.
 */
export async function problems(page: Page): Promise<Problem[]> {
  const rows = await page.locator('.markers-panel .monaco-list-row').evaluateAll((elements) =>
    elements
      .filter((element) => element.querySelector('.marker-line'))
      .sort((a, b) => Number(a.getAttribute('data-index')) - Number(b.getAttribute('data-index')))
      .map((element) => {
        const textOf = (selector: string): string =>
          [...element.querySelectorAll(selector)].map((part) => part.textContent ?? '').join('\n');
        return {
          error: element.querySelector('.marker-icon.error') !== null,
          warning: element.querySelector('.marker-icon.warning') !== null,
          message: textOf('.marker-message'),
          source: textOf('.marker-source'),
          code: textOf('.marker-code'),
          place: textOf('.marker-line'),
        };
      }),
  );
  return rows.map(({ error, warning, message, source, code, place }) => {
    const [, line, column] = /Ln (\d+), Col (\d+)/.exec(place) ?? [];
    return {
      severity: error ? 'error' : warning ? 'warning' : 'info',
      message,
      source,
      code,
      line: Number(line),
      column: Number(column),
    };
  });
}

/** Waits until the panel shows what `accept` takes, and returns it. */
export function waitForProblems(
  page: Page,
  accept: (shown: Problem[]) => boolean,
  what: string,
  timeout: number = STEP_MS,
): Promise<Problem[]> {
  return waitUntil(() => problems(page), accept, what, timeout);
}
