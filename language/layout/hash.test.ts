import fc from 'fast-check';
import { expect, it } from 'vitest';
import { hashOf } from './hash.ts';

it('is the same for alike data, whatever the order of its properties', () => {
  expect(hashOf({ a: 1, b: [2, { c: 'x' }], d: undefined })).toBe(hashOf({ b: [2, { c: 'x' }], a: 1 }));
});

it('tells apart what only looks alike', () => {
  const unlike = [
    1,
    '1',
    [1],
    ['1'],
    { 1: 1 },
    [[1]],
    null,
    true,
    'true',
    '',
    [],
    {},
    [[], []],
    [[[]]],
    'a,b',
    ['a', 'b'],
  ];
  expect(new Set(unlike.map(hashOf)).size).toBe(unlike.length);
});

it('changes with any value, and not when a part is shared', () => {
  fc.assert(
    fc.property(fc.jsonValue(), fc.jsonValue(), (a, b) => {
      expect(hashOf(a) === hashOf(b)).toBe(JSON.stringify(sorted(a)) === JSON.stringify(sorted(b)));
      expect(hashOf([a, a])).toBe(hashOf([a, JSON.parse(JSON.stringify(a))]));
    }),
  );
});

function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== 'object' || value === null) return Object.is(value, -0) ? 0 : value;
  return Object.fromEntries(
    Object.entries(value)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, item]) => [key, sorted(item)]),
  );
}

it('comes to an end on data that goes round', () => {
  const round: Record<string, unknown> = { name: 'a' };
  round.self = round;
  expect(hashOf(round)).toMatch(/^#[0-9a-f]{16}$/);
});
