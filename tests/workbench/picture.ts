import type { FrameLocator, Locator } from 'playwright-core';
import { waitUntil } from './page.ts';

/** An element of the picture by its key; a view bears the key of its run or leaf. */
export function keyed(picture: FrameLocator, key: string): Locator {
  return picture.locator(`svg.drawing [data-key=${JSON.stringify(key)}]`).first();
}

/** The path data of an element; empty when it has none. */
export async function pathOf(picture: FrameLocator, key: string): Promise<string> {
  return (await keyed(picture, key).getAttribute('d')) ?? '';
}

/** All texts written in the picture. */
export function textsOf(picture: FrameLocator): Promise<string[]> {
  return picture.locator('svg.drawing text').allTextContents();
}

/** Path data of the light on pieces; empty when nothing is lit. */
export async function litPath(picture: FrameLocator): Promise<string> {
  return (await picture.locator('svg.drawing path.lit').getAttribute('d')) ?? '';
}

/** Whether the picture of a run is marked as the last good one. */
async function isStale(picture: FrameLocator, run: string): Promise<boolean> {
  return ((await keyed(picture, run).getAttribute('class')) ?? '').split(' ').includes('stale');
}

/** Waits until a run's picture is, or is not, marked as the last good one. */
export async function untilStale(picture: FrameLocator, run: string, wanted: boolean): Promise<void> {
  const what = `a picture that is ${wanted ? '' : 'not '}stale`;
  await waitUntil(
    () => isStale(picture, run),
    (stale) => stale === wanted,
    what,
  );
}

/** From where the sheet is looked at, as the page has set it. */
export async function cameraOf(picture: FrameLocator): Promise<string> {
  return (await picture.locator('svg.drawing .sheet').getAttribute('transform')) ?? '';
}

/** Where the camera rests: the same twice, a few frames apart. */
export async function restingCamera(picture: FrameLocator): Promise<string> {
  let last = '';
  return waitUntil(
    async () => {
      const before = last;
      last = await cameraOf(picture);
      return before === last ? last : '';
    },
    (camera) => camera !== '',
    'the camera to rest',
  );
}

/** Remembers every keyed element, so that `keptElements` can tell which are still the very same. */
export async function rememberElements(picture: FrameLocator): Promise<number> {
  return picture.locator('svg.drawing').evaluate((svg) => {
    const elements = [...svg.querySelectorAll('[data-key]')];
    // A gate's pieces are in two views, under one key in each.
    const known = elements.map((element) => {
      const key = element.getAttribute('data-key') ?? '';
      const view = element.parentElement?.closest('[data-key]')?.getAttribute('data-key') ?? '';
      return { key, view, element };
    });
    const touched = new Set<Node>();
    new MutationObserver((records) => {
      for (const { target } of records) touched.add(target);
    }).observe(svg, { subtree: true, attributes: true, childList: true, characterData: true });
    Object.assign(svg, { known, touched });
    return elements.length;
  });
}

export interface Kept {
  /** Keys in the picture before and now, by the same element, which nothing has been written to. */
  readonly untouched: readonly string[];
  /** By the same element, patched. */
  readonly patched: readonly string[];
  /** Keys whose element has been replaced by another. */
  readonly replaced: readonly string[];
}

/** What has become of the elements remembered. */
export async function keptElements(picture: FrameLocator): Promise<Kept> {
  return picture.locator('svg.drawing').evaluate((svg) => {
    const { known, touched } = svg as unknown as {
      known: { key: string; view: string; element: Element }[];
      touched: Set<Node>;
    };
    const kept = { untouched: [] as string[], patched: [] as string[], replaced: [] as string[] };
    for (const { key, view, element } of known) {
      const within = view === '' ? '' : `[data-key=${JSON.stringify(view)}] `;
      const now = svg.querySelector(`${within}[data-key=${JSON.stringify(key)}]`);
      if (!now) continue;
      if (now !== element) kept.replaced.push(key);
      else if (touched.has(element)) kept.patched.push(key);
      else kept.untouched.push(key);
    }
    return kept;
  });
}

/** Clicks the middle of the `nth` rectangle of an element's path: of one piece among alike ones. */
export async function clickPiece(picture: FrameLocator, key: string, nth = 0): Promise<void> {
  const position = await keyed(picture, key).evaluate((element, n) => {
    const path = element as SVGPathElement;
    const outline = (path.getAttribute('d') ?? '').split('Z')[n] ?? '';
    const [, left, top, right, bottom] =
      /^M(-?[\d.]+) (-?[\d.]+)H(-?[\d.]+)V(-?[\d.]+)/.exec(outline)?.map(Number) ?? [];
    const matrix = path.getScreenCTM();
    if (!matrix || left === undefined || top === undefined || right === undefined || bottom === undefined)
      throw new Error(`no rectangle ${n} in ${outline}`);
    const point = new DOMPoint((left + right) / 2, (top + bottom) / 2).matrixTransform(matrix);
    const svg = path.ownerSVGElement?.getBoundingClientRect();
    return { x: point.x - (svg?.x ?? 0), y: point.y - (svg?.y ?? 0) };
  }, nth);
  await picture.locator('svg.drawing').click({ position });
}
