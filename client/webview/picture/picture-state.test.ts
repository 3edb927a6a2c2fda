import { expect, it } from 'vitest';
import type { Delta } from '../../../language/drawing/index.ts';
import { NO_PICTURE, receive } from './picture-state.ts';

const frame = {
  key: 'bank',
  run: 'bank',
  part: 'run',
  title: 'Elevation of bank',
  side: 'garden',
  kind: 'front',
  box: [0, 0, 100, 50],
  letter: 10,
  stale: false,
} as const;
const whole: Delta = { base: 0, version: 4, order: ['bank'], views: [frame], put: [], drop: [] };

it('takes a whole picture at any time, and deltas that continue it', () => {
  const first = receive(NO_PICTURE, whole);
  expect(first?.version).toBe(4);
  if (!first) return;
  const next = receive(first, { ...whole, base: 4, version: 5, views: [{ ...frame, stale: true }] });
  expect(next?.views[0]?.stale).toBe(true);
  expect(receive(first, { ...whole, version: 1 })?.version).toBe(1);
});

it('refuses a delta that continues something else, or names a view it has never seen', () => {
  expect(receive(NO_PICTURE, { ...whole, base: 3, version: 4 })).toBeUndefined();
  const first = receive(NO_PICTURE, whole) ?? NO_PICTURE;
  expect(receive(first, { ...whole, base: 3 })).toBeUndefined();
  expect(
    receive(first, { ...whole, base: 4, version: 5, order: ['bank', 'foot'], views: [] }),
  ).toBeUndefined();
});
