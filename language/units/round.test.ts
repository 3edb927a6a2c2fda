import fc from 'fast-check';
import { expect, it } from 'vitest';
import { ceilToStep, floorToStep, roundToStep } from './index.ts';

const length = fc.integer({ min: -8e10, max: 8e10 });
const step = fc.integer({ min: 1, max: 3e6 });

it('rounds down, up and to the nearest multiple', () => {
  fc.assert(
    fc.property(length, step, (t, by) => {
      const [low, near, high] = [floorToStep(t, by), roundToStep(t, by), ceilToStep(t, by)];
      for (const each of [low, near, high]) expect(Math.abs(each % by)).toBe(0);
      expect(low <= t && t - low < by).toBe(true);
      expect(high >= t && high - t < by).toBe(true);
      expect(2 * Math.abs(near - t)).toBeLessThanOrEqual(by);
      expect(roundToStep(-t, by) + near).toBe(0);
    }),
  );
});

it('rounds halves away from zero', () => {
  expect([roundToStep(5, 10), roundToStep(-5, 10), roundToStep(4, 10), roundToStep(-4, 10)]).toEqual([
    10, -10, 0, 0,
  ]);
});

it('leaves whole ticks for a step of no size', () => {
  for (const none of [0, -3, Number.NaN])
    expect([roundToStep(7, none), floorToStep(7, none), ceilToStep(7, none)]).toEqual([7, 7, 7]);
});
