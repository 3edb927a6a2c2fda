import { expect, it } from 'vitest';
import { bracedSag, cablePulls, hingePull, unbracedSag } from './gate.ts';

it('pulls a hinge by statics', () => {
  // Moments about the bottom hinge, by hand: 60 lb at 20 in, hinges 50 in apart: 24 lb.
  expect(hingePull({ weight: 60, reach: 20, hingesApart: 50 })).toBe(24);
  expect(hingePull({ weight: 60, reach: 20, hingesApart: 0 })).toBe(0);
});

it('shortens a brace at 45 degrees', () => {
  // By hand: 100 lb; push 50 / sin 45 = 70.71 lb; L 50 in, E 1e6, A 5.25: 0.000673 in, over sin 45: 0.000952 in.
  const { push, sag } = bracedSag(100, { length: 50, rise: 50 / Math.SQRT2, area: 5.25, stiffness: 1e6 });
  expect(push).toBeCloseTo(70.71, 2);
  expect(sag).toBeCloseTo(0.000952, 6);
});

it('bends two rails held at both ends', () => {
  // V L^3 / 12 E I (AISC beam diagrams, one end free to move and not to turn): 25 x 36^3 / (12 x 1e6 x 5.36).
  expect(unbracedSag(100, { length: 36, inertia: 5.36, stiffness: 1e6 })).toBeCloseTo(
    (25 * 36 ** 3) / (12e6 * 5.36),
    9,
  );
});

// By hand: 60 lb on a cable over 36" by 48", which is 60" long: sin a = 0.8, T = 60 / 1.6 = 37.5 lb; its upright part is
// 30 lb, half the weight. Of two, 48" and 27" high over 36" (60" and 45" long, sin a 0.8 and 0.6), stiffness goes by
// 0.64 / 60 and 0.36 / 45, 0.010667 to 0.008: of 60 lb they take 34.286 and 25.714, and pull 21.429 lb each.
it('pulls a cable by half the weight of the leaf', () => {
  expect(cablePulls(60, [{ length: 60, rise: 48 }])[0]).toBeCloseTo(37.5, 12);
  const [low, high] = cablePulls(60, [
    { length: 60, rise: 48 },
    { length: 45, rise: 27 },
  ]);
  expect(low).toBeCloseTo(21.429, 3);
  expect(high).toBeCloseTo(21.429, 3);
  expect(cablePulls(60, [])).toEqual([]);
});
