import { join } from 'node:path';
import { afterAll, it } from 'vitest';
import { atBench, exampleText, fillWithExamples, lineOf } from './at-bench.ts';
import { lowestContrast } from './contrast.ts';
import { goTo, OUT_DIR, screenshot, setTheme, type Theme, waitUntil } from './index.ts';
import { litPath } from './picture.ts';

const JOB = 'bicycle-court.slat';
/** Where the statements are that these tests edit or point at, found in the text itself. */
const TEXT = exampleText(JOB);

const bench = atBench({ name: 'themes', fill: fillWithExamples, file: JOB, preview: true });

// The server keeps the look for whichever file is served next.
afterAll(() => setTheme(bench.page, 'light'));

for (const theme of ['dark', 'high-contrast-dark', 'high-contrast-light', 'light'] satisfies Theme[])
  it(`can be read in a ${theme} theme`, async () => {
    const { page, picture } = bench;
    await setTheme(page, theme);
    await goTo(page, lineOf(TEXT, 'frame '), 4);
    await waitUntil(
      () => litPath(picture),
      (path) => path !== '',
      'the frame to be lit',
    );
    // WCAG 2.1, 1.4.3: 4.5 to 1 for text, and 1.4.6: 7 to 1 where more contrast is asked for.
    const wanted = theme.startsWith('high-contrast') ? 7 : 4.5;
    await waitUntil(
      () => lowestContrast(picture),
      (contrast) => contrast >= wanted,
      `letters of ${wanted} to 1`,
      10_000,
    );
    await screenshot(page, join(OUT_DIR, 'workbench', `${theme}.png`));
  });
