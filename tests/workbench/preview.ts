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

/** Waits until a webview shows a picture: a drawing with something in it. The drawing itself, and buttons, are there before. */
export async function waitForPicture(page: Page, timeout: number = 2 * STEP_MS): Promise<FrameLocator> {
  const frame = webview(page);
  await frame.locator('svg.drawing:visible path[data-key]').first().waitFor({ state: 'attached', timeout });
  return frame;
}
