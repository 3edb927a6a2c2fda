import fc from 'fast-check';
import { expect, it } from 'vitest';
import { spreadEvenly } from './index.ts';

const count = fc.integer({ min: 1, max: 200 });
const total = fc.integer({ min: -1e6, max: 8e10 });
const sum = (parts: number[]) => parts.reduce((a, b) => a + b, 0);
const spread = (parts: number[]) => Math.max(...parts) - Math.min(...parts);

it('sums exactly with parts that differ by at most one tick', () => {
  fc.assert(
    fc.property(total, count, (t, n) => {
      const parts = spreadEvenly(t, n);
      expect(parts).toHaveLength(n);
      expect(sum(parts)).toBe(t);
      expect(spread(parts)).toBeLessThanOrEqual(1);
      expect(parts.every(Number.isInteger)).toBe(true);
    }),
  );
});

it('sums exactly with parts that differ by at most one step, all on steps but one', () => {
  fc.assert(
    fc.property(total, count, fc.integer({ min: 1, max: 203_200 }), (t, n, step) => {
      const parts = spreadEvenly(t, n, step);
      expect(sum(parts)).toBe(t);
      expect(spread(parts)).toBeLessThanOrEqual(step);
      expect(parts.filter((part) => part % step !== 0).length).toBeLessThanOrEqual(1);
    }),
  );
});

it('strays nowhere by more than one tick from the even line', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 1e6 }), count, (t, n) => {
      let soFar = 0;
      spreadEvenly(t, n).forEach((part, i) => {
        soFar += part;
        expect(Math.abs(soFar - (t * (i + 1)) / n)).toBeLessThan(1);
      });
    }),
  );
});

it('puts a lone extra in the middle and extras apart', () => {
  expect(spreadEvenly(16, 3)).toEqual([5, 6, 5]);
  expect(spreadEvenly(22, 4)).toEqual([6, 5, 6, 5]);
  expect(spreadEvenly(25, 3, 10)).toEqual([10, 5, 10]);
  expect(spreadEvenly(5, 0)).toEqual([]);
  expect(spreadEvenly(5, Number.NaN)).toEqual([]);
});
