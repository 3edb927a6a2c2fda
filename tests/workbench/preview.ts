import type { FrameLocator, Page } from 'playwright-core';
import { STEP_MS } from './page.ts';

/** The command that opens the picture beside the text, as the palette shows it. */
export const OPEN_PREVIEW = 'Slatwright: Open Preview';

/**
 * The document inside the `index`th webview in sight: two frames deep, and the inner one is known by its id,
 * since its name stays `pending-frame`.
 */
export function webview(page: Page, index = 0): FrameLocator {
  return page
    .locator('iframe.webview.ready:visible')
    .nth(index)
    .contentFrame()
    .frameLocator('iframe#active-frame');
}

/** Waits until a webview shows a picture: an `svg` that has been given a size and something to draw. */
export async function waitForPicture(page: Page, timeout: number = 2 * STEP_MS): Promise<FrameLocator> {
  const frame = webview(page);
  await frame
    .locator('svg:visible', { has: page.locator('path, rect, line, polygon, polyline') })
    .first()
    .waitFor({ timeout });
  return frame;
}
