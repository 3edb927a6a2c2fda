import { cpSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Dialog } from 'playwright-core';
import { expect, it } from 'vitest';
import { atBench } from './at-bench.ts';
import {
  hoverAt,
  OPEN_PREVIEW,
  openFromExplorer,
  REPO_ROOT,
  runPaletteCommand,
  showProblems,
  waitForPicture,
  waitForProblems,
  waitUntil,
} from './index.ts';
import { textsOf } from './picture.ts';

const MARKUP = 'markup.slat';

/** Names that would do something if they were taken for markup. */
const IMAGE = '<img src=x onerror=alert(1)>';
const OTHER = '<img src=y onerror=alert(2)>';
const BOLD = '<b>yard</b>';

const bench = atBench({
  name: 'markup',
  fill(folder) {
    cpSync(join(REPO_ROOT, 'examples', 'library'), join(folder, 'library'), { recursive: true });
    writeFileSync(join(folder, MARKUP), markupText());
  },
});

function markupText(): string {
  return `use "library/stock.slat"
use "library/patterns.slat"

run "${IMAGE}" {
  seen from "${BOLD}"
  length 12' over posts
  posts fir-4x4, at most 5' clear
  height 5'    bottom 2"
  slats on front face
  fill even
}

run other {
  length 12' over posts
  posts fir-4x4, at most 5' clear
  height 5'    bottom 2"
  slats on front face
  fill "${OTHER}"
}
`;
}

it('takes no text for markup, neither in the picture nor in what is said about it', async () => {
  const { page, fileText } = bench;
  const asked: string[] = [];
  const refuse = (dialog: Dialog): void => {
    asked.push(dialog.message());
    void dialog.dismiss();
  };
  page.on('dialog', refuse);
  try {
    await openFromExplorer(page, MARKUP);
    await runPaletteCommand(page, OPEN_PREVIEW);
    const frame = await waitForPicture(page);
    const texts = await waitUntil(
      () => textsOf(frame),
      (all) => all.some((text) => text.includes(IMAGE)),
      'the name as text',
    );
    expect(texts.join('\n')).toContain(BOLD);
    expect(await frame.locator('body img, body b, body foreignObject').count()).toBe(0);

    await showProblems(page);
    await waitForProblems(
      page,
      (all) => all.some(({ message }) => message.includes(OTHER)),
      'the unknown name',
    );
    const lines = fileText(MARKUP).split('\n');
    const named = lines.findIndex((line) => line.includes(IMAGE));
    await hoverAt(page, named + 1, (lines[named] ?? '').indexOf(IMAGE) + 3);
    expect(await page.locator('img[src="x"], img[src="y"]').count()).toBe(0);
    expect(asked).toEqual([]);
  } finally {
    page.off('dialog', refuse);
  }
});
