import { expect, it } from 'vitest';
import { GUARD_HEIGHT, GUARD_LOAD, GUARD_TEST_FACTOR } from '../../standards/index.ts';
import { deckEdge } from './deck-edge.ts';

it('turns a guard load into bolts by statics', () => {
  // Hand-worked: 200 lb at 36 in = 7 200 in-lb; bolts 4 in apart, 5 in below: couple 200 x 41 / 4 = 2 050 lb, upper
  // 200 x 43 / 4 = 2 150 lb, lower 200 x 39 / 4 = 1 950 lb.
  expect(deckEdge({ load: GUARD_LOAD.value, arm: GUARD_HEIGHT.value, boltsApart: 4, boltsBelow: 5 })).toEqual(
    {
      moment: 7_200,
      couple: 2_050,
      upper: 2_150,
      lower: 1_950,
    },
  );
});

it('is tested to 500 lb', () => {
  // Published tests of guard posts: 200 lb x 2.5 at 36 in.
  expect(GUARD_LOAD.value * GUARD_TEST_FACTOR.value).toBe(500);
});

it('turns wind on a deck screen as hand-worked', () => {
  // Common practice, worked by hand: 0.5 kPa x 1.74 m x 1.37 m = 1.192 kN at 0.93 m: 1.108 kNm; bolts 140 mm apart: 7.9 kN as M / 140.
  const { moment } = deckEdge({ load: 0.5 * 1.74 * 1.37, arm: 0.93, boltsApart: 0.14, boltsBelow: 0 });
  expect(moment).toBeCloseTo(1.108, 3);
  expect(moment / 0.14).toBeCloseTo(7.9, 1);
});
