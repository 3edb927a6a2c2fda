import fc from 'fast-check';
import { expect, it } from 'vitest';
import { IMPERIAL, inches } from '../units/index.ts';
import { elevationOf } from './elevation.ts';
import { leafElevation } from './leaf-elevation.ts';
import { type Bounds, boundsOf, placeLabels } from './place-labels.ts';
import { sectionOf } from './section.ts';
import { randomRun } from './testing/random-runs.ts';
import { runByHand } from './testing/run-by-hand.ts';
import { textWidth } from './text-width.ts';
import type { Label, PlacedLabel, View } from './view.ts';

function label(rest: Partial<Label> & { key: string }): Label {
  return {
    text: '3-1/2"',
    x: 0,
    y: 0,
    anchor: 'middle',
    turn: 0,
    shift: [0, 0],
    kind: 'dimension',
    priority: 10,
    room: 0,
    roomFor: 'length',
    ...rest,
  };
}

/** Pairs of labels whose texts lie on one another, found the slow way. */
function collisions(placed: readonly PlacedLabel[], letter: number): string[] {
  const boxes = placed.map((one) => boundsOf(one, letter));
  const meet = (a: Bounds, b: Bounds) => a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3];
  return placed.flatMap((one, i) =>
    placed.slice(i + 1).flatMap((other, j) => {
      const [a, b] = [boxes[i] as Bounds, boxes[i + 1 + j] as Bounds];
      return meet(a, b) ? [`${one.label.key} on ${other.label.key}`] : [];
    }),
  );
}

const scattered = fc.array(
  fc.record({
    x: fc.integer({ min: -500, max: 500 }),
    y: fc.integer({ min: -500, max: 500 }),
    text: fc.string({ minLength: 1, maxLength: 12 }),
    turn: fc.constantFrom(0 as const, 90 as const),
    anchor: fc.constantFrom('start' as const, 'middle' as const, 'end' as const),
    kind: fc.constantFrom('title' as const, 'dimension' as const, 'mark' as const, 'note' as const),
    priority: fc.integer({ min: 0, max: 9 }),
    room: fc.constantFrom(0, 40, 200),
    led: fc.constantFrom(
      undefined,
      { anchor: 'middle' as const, shift: [0, 1.7] as const },
      { anchor: 'start' as const, shift: [0.4, 1.7] as const },
    ),
  }),
  { maxLength: 120 },
);

it('never puts one text on another, wherever labels are', () => {
  fc.assert(
    fc.property(scattered, fc.double({ min: 1, max: 60, noNaN: true }), (parts, letter) => {
      const labels = parts.map((part, i) => label({ ...part, key: `${i}` }));
      expect(collisions(placeLabels(labels, letter), letter)).toEqual([]);
    }),
    { numRuns: 100 },
  );
});

it('never puts one text on another on any drawing, at any size of letters', () => {
  fc.assert(
    fc.property(randomRun, fc.double({ min: 0.1, max: 3, noNaN: true }), (hand, factor) => {
      const run = runByHand(hand);
      const { measure } = run.spec;
      const views: View[] = [
        elevationOf(run, measure),
        ...run.leaves.map((leaf) => leafElevation(run, leaf, measure)),
      ];
      for (const view of views) {
        for (const letter of [view.letter, view.letter * factor]) {
          expect(collisions(placeLabels(view.labels, letter), letter)).toEqual([]);
        }
      }
    }),
    { numRuns: 60 },
  );
});

it('keeps what matters more where two collide, whatever the order they come in', () => {
  const less = label({ key: 'less', priority: 20 });
  const more = label({ key: 'more', priority: 10 });
  expect(placeLabels([less, more], 10).map((one) => one.label.key)).toEqual(['more']);
  expect(placeLabels([more, less], 10).map((one) => one.label.key)).toEqual(['more']);
});

it('leads a text out of an interval too short for it, and leaves it out where it may not be led', () => {
  const width = 10 * textWidth('3-1/2"');
  const led = { anchor: 'middle', shift: [0, 1.7] } as const;
  const short = label({ key: 'short', room: width * 0.9, led });
  expect(placeLabels([short], 10)[0]).toMatchObject({ y: -17, leader: [0, -1.2, 0, -15] });
  expect(placeLabels([{ ...short, led: undefined }], 10)).toEqual([]);
  const long = placeLabels([label({ key: 'long', room: width * 1.1, led })], 10)[0];
  expect(long?.y).toBe(0);
  expect(long?.leader).toBeUndefined();
});

it('leans a text that is led out the other way where another text stands in its way', () => {
  const led = { anchor: 'start', shift: [0.4, 1.7] } as const;
  const [first, second] = placeLabels(
    [label({ key: 'one', room: 1, led }), label({ key: 'two', x: 5, room: 1, led })],
    10,
  );
  expect(first).toMatchObject({ anchor: 'start', x: 4 });
  expect(second).toBeUndefined();
  const [, other] = placeLabels(
    [label({ key: 'one', room: 1, led }), label({ key: 'two', x: -5, room: 1, led })],
    10,
  );
  expect(other).toMatchObject({ anchor: 'end', x: -9 });
});

it('tells how deep a slat and the post behind it are, narrow as a section is', () => {
  const run = runByHand({
    bays: [inches(60)],
    widths: [inches(3.5)],
    gap: inches(0.5),
    onFace: true,
  });
  const view = sectionOf(run, IMPERIAL);
  const shown = placeLabels(view?.labels ?? [], view?.letter ?? 0).map(({ label }) => label);
  const faces = shown.filter(({ key }) => key.includes('/faces/')).map(({ text }) => text);
  expect(faces.sort()).toEqual(['3-1/2"', '3/4"']);
});

it('shows more as letters become smaller on the sheet', () => {
  const rows = Array.from({ length: 20 }, (_, i) =>
    label({ key: `${i}`, y: 12 * i, room: 12, roomFor: 'height' }),
  );
  expect(placeLabels(rows, 20)).toHaveLength(0);
  expect(placeLabels(rows, 9)).toHaveLength(20);
});

it('takes no letter size that is none', () => {
  for (const letter of [0, -1, Number.NaN, Infinity])
    expect(placeLabels([label({ key: 'a' })], letter)).toEqual([]);
  expect(placeLabels([label({ key: 'a', x: Number.NaN })], 10)).toEqual([]);
});
