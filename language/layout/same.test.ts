import fc from 'fast-check';
import { expect, it } from 'vitest';
import { hashOf } from './hash.ts';
import { isSame } from './same.ts';

it('tells data apart exactly where hashes do', () => {
  const small = fc.object({
    maxDepth: 3,
    maxKeys: 3,
    key: fc.constantFrom('a', 'b', 'c'),
    values: [
      fc.integer({ min: 0, max: 2 }),
      fc.constantFrom('', 'x'),
      fc.boolean(),
      fc.constant(null),
      fc.constant(undefined),
    ],
  });
  fc.assert(
    fc.property(small, small, (a, b) => {
      expect(isSame(a, structuredClone(a))).toBe(true);
      expect(isSame(a, b)).toBe(hashOf(a) === hashOf(b));
    }),
    { numRuns: 2000, seed: 7 },
  );
});

it('takes no array for an object, and no missing value for one that is there', () => {
  expect(isSame([], {})).toBe(false);
  expect(isSame([1], { 0: 1 })).toBe(false);
  expect(isSame({ a: undefined }, {})).toBe(true);
  expect(isSame({ a: 0 }, {})).toBe(false);
  expect(isSame([1, 2], [1, 2, 3])).toBe(false);
});
