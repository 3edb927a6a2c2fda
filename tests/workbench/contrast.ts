import type { FrameLocator } from 'playwright-core';

/** The lowest contrast between any letters of the picture and the page behind them, as a ratio from 1 to 21. */
export async function lowestContrast(picture: FrameLocator): Promise<number> {
  const [page = '', ...letters] = await picture.locator('svg.drawing').evaluate((svg) => {
    const texts = [...svg.querySelectorAll('text')].map((text) => getComputedStyle(text).fill);
    return [getComputedStyle(document.body).backgroundColor, ...new Set(texts)];
  });
  const behind = luminance(page);
  return Math.min(...letters.map((color) => ratio(luminance(color), behind)));
}

/** Contrast ratio of two relative luminances, as WCAG 2.1 defines it (w3.org/TR/WCAG21/#dfn-contrast-ratio). */
function ratio(a: number, b: number): number {
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}

/** Relative luminance of an opaque sRGB color (w3.org/TR/WCAG21/#dfn-relative-luminance). */
function luminance(color: string): number {
  const channels = /^rgb\((\d+), (\d+), (\d+)\)$/.exec(color)?.slice(1).map(Number);
  if (!channels) throw new Error(`not an opaque color: ${color}`);
  const [red = 0, green = 0, blue = 0] = channels.map((channel) => {
    const share = channel / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}
