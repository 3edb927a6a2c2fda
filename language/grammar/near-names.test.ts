import fc from 'fast-check';
import { expect, it } from 'vitest';
import { editDistance, nearNames } from './index.ts';

it.each([
  // Levenshtein's classic pair, as in Wagner and Fischer's and every later text.
  ['kitten', 'sitting', 3],
  ['saturday', 'sunday', 3],
  // Optimal string alignment counts this pair 3, the unrestricted Damerau distance 2 (Boytsov 2011).
  ['ca', 'abc', 3],
  ['height', 'hieght', 1],
  ['', 'run', 3],
  ['run', 'run', 0],
])('counts %s to %s as %i', (a, b, distance) => {
  expect(editDistance(a, b)).toBe(distance);
});

it('is symmetric, zero for equals alone, and stops counting where told', () => {
  const word = fc.string({ maxLength: 8, unit: fc.constantFrom('a', 'b', 'c') });
  fc.assert(
    fc.property(word, word, fc.nat(4), (a, b, most) => {
      const distance = editDistance(a, b);
      expect(editDistance(b, a)).toBe(distance);
      expect(distance === 0).toBe(a === b);
      expect(editDistance(a, b, most)).toBe(Math.min(distance, most + 1));
    }),
  );
});

it('names the nearest first, and nothing far off', () => {
  expect(nearNames('board-7', ['board-6', 'strip-2', 'boards-7', 'lath'])).toEqual(['board-6', 'boards-7']);
  expect(nearNames('hieght', ['height', 'length'])).toEqual(['height']);
  expect(nearNames('shore', ['shoreline'])).toEqual(['shoreline']);
  expect(nearNames('zzz', ['height'])).toEqual([]);
  expect(nearNames('x'.repeat(5000), ['x'])).toEqual([]);
});
