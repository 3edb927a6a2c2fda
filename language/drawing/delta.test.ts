import fc from 'fast-check';
import { expect, it } from 'vitest';
import { IMPERIAL, inches } from '../units/index.ts';
import { applyDelta, diffViews } from './delta.ts';
import { hashText } from './hash.ts';
import { sheetOrder } from './sheet-order.ts';
import { randomRun } from './testing/random-runs.ts';
import { runByHand } from './testing/run-by-hand.ts';
import type { Group, Label, View } from './view.ts';
import { asStale, viewsOf } from './views.ts';

const group: fc.Arbitrary<Group> = fc
  .record({
    key: fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f'),
    path: fc.constantFrom('M0 0H1', 'M0 0H2', 'M0 0H3'),
    depth: fc.constantFrom(-1, 0, 5),
  })
  .map(({ key, path, depth }) => ({
    key,
    path,
    depth,
    style: 'slat' as const,
    hits: [],
    hash: hashText(path + depth),
  }));

const label: fc.Arbitrary<Label> = fc
  .record({
    key: fc.constantFrom('l', 'm', 'n', 'o'),
    text: fc.constantFrom('1', '2'),
    priority: fc.constantFrom(1, 2),
    led: fc.constantFrom(undefined, { anchor: 'end' as const, shift: [0, 1] as const }),
  })
  .map((rest) => ({
    x: 0,
    y: 0,
    anchor: 'middle' as const,
    turn: 0 as const,
    shift: [0, 0] as const,
    kind: 'note' as const,
    room: 0,
    roomFor: 'length' as const,
    ...rest,
  }));

const view: fc.Arbitrary<View> = fc
  .record({
    key: fc.constantFrom('v', 'w', 'x'),
    title: fc.constantFrom('one', 'two'),
    stale: fc.boolean(),
    groups: fc.uniqueArray(group, { selector: (g) => g.key }),
    labels: fc.uniqueArray(label, { selector: (l) => l.key }),
  })
  .map(({ groups, labels, ...rest }) => ({
    ...rest,
    run: rest.key,
    part: 'run' as const,
    side: 'garden',
    kind: 'front' as const,
    box: [0, 0, 1, 1] as const,
    letter: 10,
    ...sheetOrder([...groups], [...labels]),
  }));

const picture = fc.uniqueArray(view, { selector: (v) => v.key });

it('makes exactly the next picture of the one before', () => {
  fc.assert(
    fc.property(picture, picture, (prev, next) => {
      expect(applyDelta(prev, diffViews(prev, next, 1, 2))).toEqual(next);
      expect(applyDelta(prev, diffViews(prev, next, 0, 2))).toEqual(next);
    }),
    { numRuns: 500 },
  );
});

it('survives being sent as JSON', () => {
  fc.assert(
    fc.property(randomRun, randomRun, (first, second) => {
      const [a, b] = [runByHand(first), runByHand(second)];
      const prev = viewsOf([a], IMPERIAL);
      const next = viewsOf([b, a], IMPERIAL);
      const sent = JSON.parse(JSON.stringify(diffViews(prev, next, 1, 2)));
      expect(applyDelta(prev, sent)).toEqual(next);
    }),
    { numRuns: 20 },
  );
});

it('names nothing that did not change', () => {
  fc.assert(
    fc.property(picture, picture, (prev, next) => {
      const delta = diffViews(prev, next, 1, 2);
      for (const { view: key, groups, labels } of delta.put) {
        const before = prev.find((one) => one.key === key);
        for (const put of groups) expect(before?.groups ?? []).not.toContainEqual(put);
        for (const put of labels) expect(before?.labels ?? []).not.toContainEqual(put);
      }
    }),
    { numRuns: 200 },
  );
});

it('says nothing of a picture drawn again without change', () => {
  fc.assert(
    fc.property(randomRun, (hand) => {
      const run = runByHand(hand);
      const prev = viewsOf([run], IMPERIAL);
      const next = viewsOf([{ ...run }], IMPERIAL);
      expect(diffViews(prev, next, 1, 2)).toEqual({
        base: 1,
        version: 2,
        order: prev.map((one) => one.key),
        views: [],
        put: [],
        drop: [],
      });
    }),
    { numRuns: 20 },
  );
});

it('sends a frame alone for a picture that only became stale, and keeps parts by identity', () => {
  const run = runByHand({ bays: [inches(60), inches(42)], widths: [inches(5.5)], gap: inches(0.5) });
  const prev = viewsOf([run], IMPERIAL);
  const next = prev.map(asStale);
  const delta = diffViews(prev, next, 1, 2);
  expect([delta.views.length, delta.put, delta.drop]).toEqual([next.length, [], []]);
  const after = applyDelta(prev, delta);
  expect(after[0]?.stale).toBe(true);
  expect(after[0]?.groups[0]).toBe(prev[0]?.groups[0]);
});
