import { expect, it } from 'vitest';
import { bracedSag, hingePull, unbracedSag } from './gate.ts';

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
