import { expect, it } from 'vitest';
import { seeded } from '../../../tests/fit-edits/random-jobs.ts';
import { beats, spreadOver, unbeaten } from './front.ts';

const self = (one: readonly number[]) => one;

it('keeps what nothing beats', () => {
  // By hand: (3, 3) is beaten by (2, 2), (1, 5) ties (1, 4) in one and loses in the other.
  expect(
    unbeaten(
      [
        [1, 5],
        [1, 4],
        [3, 3],
        [2, 2],
        [4, 1],
        [2, 2],
      ],
      self,
    ),
  ).toEqual([
    [1, 4],
    [2, 2],
    [4, 1],
  ]);
});

it('keeps exactly those that no other beats, whatever there is', () => {
  const random = seeded(7);
  for (let round = 0; round < 200; round++) {
    const all = Array.from({ length: 12 }, () => [0, 0, 0].map(() => Math.floor(random() * 4)));
    const kept = unbeaten(all, self);
    const text = new Set(kept.map(String));
    expect(text.size).toBe(kept.length);
    for (const one of all) expect(text.has(String(one))).toBe(!all.some((other) => beats(other, one)));
  }
});

it('spreads over the best by each score and what lies far from them', () => {
  // Along a line the ends are best in one score each; the farthest from both is the middle.
  const line = Array.from({ length: 9 }, (_, at) => [at, 8 - at]);
  expect(spreadOver(line, 3, self)).toEqual([
    [0, 8],
    [4, 4],
    [8, 0],
  ]);
  expect(spreadOver(line, 9, self)).toBe(line);
});
