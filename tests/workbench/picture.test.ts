import { expect, it } from 'vitest';
import { atBench, exampleText, fillWithExamples, lineOf } from './at-bench.ts';
import {
  activeLine,
  goTo,
  openFromExplorer,
  reloadPage,
  replaceLine,
  runPaletteCommand,
  save,
  waitForEditor,
  waitForPicture,
  waitUntil,
} from './index.ts';
import {
  cameraOf,
  clickPiece,
  keptElements,
  keyed,
  litPath,
  pathOf,
  rememberElements,
  restingCamera,
  textsOf,
} from './picture.ts';

const JOB = 'bicycle-court.slat';
/** Where the statements are that these tests edit or point at, found in the text itself. */
const TEXT = exampleText(JOB);
const LENGTH = lineOf(TEXT, 'length ');
const LENGTH_LINE = TEXT.split('\n')[LENGTH - 1] ?? '';
const HEIGHT = lineOf(TEXT, 'height ');
const HEIGHT_LINE = TEXT.split('\n')[HEIGHT - 1] ?? '';

const bench = atBench({ name: 'picture', fill: fillWithExamples, file: JOB, preview: true });

/** As with a wheel, and waits until the picture has taken it. */
async function zoomIn(): Promise<void> {
  const { page, picture } = bench;
  const before = await restingCamera(picture);
  await picture.locator('svg.drawing').hover({ position: { x: 300, y: 200 } });
  await page.mouse.wheel(0, -240);
  await waitUntil(
    () => cameraOf(picture),
    (camera) => camera !== before,
    'the picture to come nearer',
  );
}

it('shows the picture of the file beside its text', async () => {
  const { page, picture } = bench;
  await waitForEditor(page, JOB);
  for (const key of ['court', 'court/cycles/leaf', 'court/b1/slat.middle', 'court/cycles/slat.front'])
    await keyed(picture, key).waitFor({ state: 'attached' });
  expect(await textsOf(picture)).toEqual(
    expect.arrayContaining(['Elevation of court', expect.stringMatching(/^seen from yard/), `23' 6"`]),
  );
});

it('patches what an edit changes, keeps every element, and keeps its zoom', async () => {
  const { page, picture } = bench;
  await zoomIn();
  const camera = await restingCamera(picture);
  const slats = await pathOf(picture, 'court/b1/slat.middle');
  const ground = await pathOf(picture, 'court/ground');
  const count = await rememberElements(picture);
  expect(count).toBeGreaterThan(20);

  await replaceLine(page, HEIGHT, HEIGHT_LINE.replace(`5' 9"`, `5' 8"`));
  await waitUntil(
    () => textsOf(picture),
    (texts) => texts.includes(`5' 8"`),
    'the new height',
  );
  expect(await pathOf(picture, 'court/b1/slat.middle')).not.toBe(slats);
  expect(await pathOf(picture, 'court/ground')).toBe(ground);
  const kept = await keptElements(picture);
  expect(kept.replaced).toEqual([]);
  expect(kept.patched).toContain('court/b1/slat.middle');
  expect(kept.untouched).toContain('court/ground');
  expect(await cameraOf(picture)).toBe(camera);

  await replaceLine(page, HEIGHT, HEIGHT_LINE);
  await waitUntil(
    () => pathOf(picture, 'court/b1/slat.middle'),
    (path) => path === slats,
    'the first slats again',
  );
  expect((await keptElements(picture)).replaced).toEqual([]);
});

it('leads from a piece to its line and from a line to its pieces', async () => {
  const { page, picture } = bench;
  await runPaletteCommand(page, 'Slatwright: Fit Picture');
  await restingCamera(picture);
  await goTo(page, lineOf(TEXT, 'job '));
  await clickPiece(picture, 'court/b2/slat.middle', 3);
  await waitUntil(
    () => activeLine(page),
    (line) => line === lineOf(TEXT, 'fill beat'),
    'the line of the slats',
  );
  await clickPiece(picture, 'court/cycles/slat.front', 2);
  await waitUntil(
    () => activeLine(page),
    (line) => line === lineOf(TEXT, 'fill even'),
    "the line of the leaf's slats",
  );

  const clicked = await litPath(picture);
  expect(clicked).not.toBe('');
  await goTo(page, lineOf(TEXT, 'frame '), 4);
  const frame = await waitUntil(
    () => litPath(picture),
    (path) => path !== '' && path !== clicked,
    'the frame to be lit',
  );
  await goTo(page, lineOf(TEXT, 'posts fir-6x4'), 4);
  await waitUntil(
    () => litPath(picture),
    (path) => path !== '' && path !== frame,
    'the gate posts to be lit',
  );
  await goTo(page, lineOf(TEXT, 'measure '), 4);
  await waitUntil(
    () => litPath(picture),
    (path) => path === '',
    'nothing to be lit',
  );
});

it('brings the preview back with its picture when the window is loaded again', async () => {
  const { page } = bench;
  await openFromExplorer(page, JOB);
  await save(page);
  await reloadPage(page);
  const picture = await waitForPicture(page);
  bench.picture = picture;
  await keyed(picture, 'court/b1/slat.middle').waitFor({ state: 'attached' });
  expect(await textsOf(picture)).toContain(`23' 6"`);
  // It is followed as before.
  await waitForEditor(page, JOB);
  await replaceLine(page, LENGTH, LENGTH_LINE.replace(`23' 6"`, `23' 9"`));
  await waitUntil(
    () => textsOf(picture),
    (texts) => texts.includes(`23' 9"`),
    'the new length',
  );
  await replaceLine(page, LENGTH, LENGTH_LINE);
  await save(page);
});
