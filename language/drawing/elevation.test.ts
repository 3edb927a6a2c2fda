import { expect, it } from 'vitest';
import { IMPERIAL, inches, METRIC } from '../units/index.ts';
import { elevationOf, runLetter } from './elevation.ts';
import { hitsOf, pieceAt } from './find-piece.ts';
import { leafElevation, leafLetter } from './leaf-elevation.ts';
import { arrangeSheet } from './sheet.ts';
import { type HandRun, runByHand } from './testing/run-by-hand.ts';
import type { View } from './view.ts';
import { viewsOf } from './views.ts';

const HAND: HandRun = {
  bays: [58.5, 58.5, 42, 52, 52].map(inches),
  widths: [5.5, 1.5, 1.5].map(inches),
  gap: inches(0.5),
  gate: { bay: 3, name: 'orchard', hinges: 'left', upright: true },
};

function group(view: View, key: string) {
  const found = view.groups.find((one) => one.key === key);
  if (!found) throw new Error(`no ${key} among ${view.groups.map((one) => one.key).join(' ')}`);
  return found;
}

function leafOf(run: ReturnType<typeof runByHand>) {
  const leaf = run.leaves[0];
  if (!leaf) throw new Error('no leaf');
  return leaf;
}

it('draws the alike pieces of a bay as one path, each to be found in it', () => {
  const view = elevationOf(runByHand(HAND), IMPERIAL);
  const slats = group(view, 'bank/b1/slat.middle');
  expect(slats.path.match(/M/g)).toHaveLength(slats.hits.length);
  expect(slats.hits[0]?.piece).toBe('bank/b1/c01');
  expect(new Set(view.groups.map((one) => one.key)).size).toBe(view.groups.length);
  expect(new Set(view.labels.map((one) => one.key)).size).toBe(view.labels.length);
});

it('paints far things first', () => {
  const view = elevationOf(runByHand({ ...HAND, onFace: true }), IMPERIAL);
  const keys = view.groups.map((one) => one.key);
  expect(keys.indexOf('bank/post.middle')).toBeLessThan(keys.indexOf('bank/b1/slat.front'));
  for (const [i, one] of view.groups.entries()) {
    expect(one.depth).toBeLessThanOrEqual(view.groups[i - 1]?.depth ?? Infinity);
  }
});

it('leaves back cleats out where the front ones hide them, and tells posts behind slats in hidden lines', () => {
  const between = elevationOf(runByHand(HAND), IMPERIAL);
  expect(between.groups.map((one) => one.key)).toContain('bank/b1/cleat.front');
  expect(between.groups.map((one) => one.key)).not.toContain('bank/b1/cleat.back');
  expect(between.groups.filter((one) => one.style === 'hidden')).toEqual([]);
  const face = elevationOf(runByHand({ ...HAND, onFace: true }), IMPERIAL);
  expect(group(face, 'bank/hidden').hits.map((hit) => hit.piece)).toContain('bank/p2');
});

it('draws what of a post is below the ground apart', () => {
  const view = elevationOf(runByHand({ ...HAND, ground: inches(-6) }), IMPERIAL);
  const buried = group(view, 'bank/post-buried');
  expect(buried.hits[0]?.box).toEqual([0, 152.4, 88.9, 762]);
  const [, y, , height] = group(view, 'bank/post.middle').hits[0]?.box ?? [0, 0, 0, 0];
  expect(y + height).toBeCloseTo(152.4);
});

it('shows frame and brace of a leaf in hidden lines, in the view of the leaf', () => {
  const run = runByHand(HAND);
  const view = leafElevation(run, leafOf(run), IMPERIAL);
  const hidden = group(view, 'bank/orchard/hidden').hits.map((hit) => hit.piece);
  expect(hidden).toEqual(expect.arrayContaining(['bank/orchard/brace', 'bank/orchard/stile-hinge']));
  const label = (key: string) => view.labels.find((one) => one.key === `bank/orchard/${key}`);
  expect(label('hinges-side')?.x).toBe(0);
  expect(label('latch-side')?.x).toBeGreaterThan(1000);
});

it('points the sign of the swing at the hinges, at half the height', () => {
  const run = runByHand(HAND);
  const leaf = leafOf(run);
  const ends = group(elevationOf(run, IMPERIAL), 'bank/swing-orchard').path.match(/L[^M]*/g);
  const hinge = `L${leaf.x0 / 8000} ${-(leaf.z0 + leaf.z1) / 16000}`;
  expect(ends).toEqual([hinge, hinge]);
});

it('draws a leaf alike wherever it hangs in its run', () => {
  const near = runByHand(HAND);
  const far = runByHand({ ...HAND, bays: [60.5, 58.5, 42, 52, 52].map(inches) });
  const hashes = (run: typeof near) =>
    leafElevation(run, leafOf(run), IMPERIAL, 100).groups.map((one) => one.hash);
  expect(hashes(near)).toEqual(hashes(far));
});

it('is remembered for the very run laid out, by measure and letters', () => {
  const run = runByHand(HAND);
  expect(elevationOf(run, IMPERIAL)).toBe(elevationOf(run, IMPERIAL));
  expect(elevationOf(run, METRIC)).not.toBe(elevationOf(run, IMPERIAL));
  expect(elevationOf({ ...run }, IMPERIAL)).not.toBe(elevationOf(run, IMPERIAL));
});

it('sets letters that are read at the size of a preview, and keeps them through small edits', () => {
  const run = (clear: number) => runByHand({ ...HAND, bays: [clear, 58.5, 42, 52, 52].map(inches) });
  const view = elevationOf(run(58.5), IMPERIAL);
  // 23' 8" long, fitted in 600 pixels, half a window.
  expect((view.letter * 600) / view.box[2]).toBeGreaterThan(9.5);
  expect((view.letter * 600) / view.box[2]).toBeLessThan(12);
  expect(runLetter(run(58.5))).toBe(runLetter(run(59)));
  expect(runLetter(run(58.5), 'paper')).toBeLessThan(runLetter(run(58.5)));
  expect(leafLetter(leafOf(run(58.5)))).toBeLessThan(runLetter(run(58.5)));
});

it('finds the nearest piece under a click, and lights a hidden one', () => {
  const run = runByHand({ ...HAND, onFace: true });
  const view = elevationOf(run, IMPERIAL);
  const slat = view.groups.find((one) => one.key === 'bank/b1/slat.front')?.hits[0];
  const [x, y, width, height] = slat?.box ?? [0, 0, 0, 0];
  // Over the second post, which lies behind the slat's right end.
  expect(pieceAt(view, x + width - 1, y + height / 2)).toBe('bank/b1/c01');
  expect(pieceAt(view, x + width / 2, -10)).toBeUndefined();
  expect(hitsOf(view, new Set(['bank/p2'])).length).toBeGreaterThan(1);
});

it('names the side and the station it starts from', () => {
  const view = elevationOf(runByHand(HAND), IMPERIAL);
  expect(view.title).toBe('Elevation of bank, seen from garden');
  expect(view.labels.map((one) => one.text)).toEqual(
    expect.arrayContaining(['station 0', 'seen from garden']),
  );
});

it('keeps everything drawn within its box', () => {
  for (const view of viewsOf([runByHand(HAND)], IMPERIAL)) {
    const [left, top, width, height] = view.box;
    for (const { box } of view.groups.flatMap((one) => one.hits)) {
      expect(box[0]).toBeGreaterThan(left);
      expect(box[1]).toBeGreaterThan(top);
      expect(box[0] + box[2]).toBeLessThan(left + width);
      expect(box[1] + box[3]).toBeLessThan(top + height);
    }
  }
});

it('puts views of one scale on a sheet, none on another, leaves of a run in a row', () => {
  const views = viewsOf([runByHand(HAND), runByHand({ ...HAND, name: 'lane' })], IMPERIAL, ['front']);
  const sheet = arrangeSheet(views);
  const boxes = views.map((view, i) => {
    const place = sheet.places[i];
    return [view.box[0] + (place?.x ?? 0), view.box[1] + (place?.y ?? 0), view.box[2], view.box[3]] as const;
  });
  for (const [i, a] of boxes.entries()) {
    expect(a[0]).toBeGreaterThanOrEqual(0);
    expect(a[0] + a[2]).toBeLessThanOrEqual(sheet.box[2] + 0.1);
    expect(a[1] + a[3]).toBeLessThanOrEqual(sheet.box[3] + 0.1);
    for (const b of boxes.slice(i + 1)) expect(b[1]).toBeGreaterThan(a[1] + a[3]);
  }
  expect(new Set(views.map((view) => view.letter)).size).toBe(1);
});

it('keeps keys apart where two runs bear one name, and draws a run of which nothing could be laid out', () => {
  const run = runByHand(HAND);
  const empty = { ...run, posts: [], bays: [], pieces: [], leaves: [], openings: [], sound: false };
  const keys = viewsOf([run, { ...run }, empty], IMPERIAL).map((view) => view.key);
  expect(new Set(keys).size).toBe(keys.length);
  expect(elevationOf(empty, IMPERIAL).box.every(Number.isFinite)).toBe(true);
});
