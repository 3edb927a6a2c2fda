import { expect, it } from 'vitest';
import { highestInSwing, type Swing } from './index.ts';

// Geometry by hand. A plane z = a u + b v over a quarter circle of radius R about u = v = 0 is highest, for a, b > 0,
// at (u, v) = R (a, b) / sqrt(a2 + b2), where z = R sqrt(a2 + b2). With a = 0.03, b = 0.04: sqrt = 0.05.
const SWING: Swing = { hinge: 1000, way: 1, radius: 500, side: 'back', off: 0 };
const sloped = (rise: number) => [
  { x: 0, z: 0 },
  { x: 1000, z: 0 },
  { x: 3000, z: 2000 * rise },
];

it('touches the arc where the slope is steepest', () => {
  expect(highestInSwing(SWING, sloped(0.03), 0.04)).toBeCloseTo(25, 9);
  // Falling along the run, it is highest at the open leaf's end: 500 * 0.04; rising along it alone, at the closed one's.
  expect(highestInSwing(SWING, sloped(-0.03), 0.04)).toBeCloseTo(20, 9);
  expect(highestInSwing(SWING, sloped(0.03), 0)).toBeCloseTo(15, 9);
  expect(highestInSwing(SWING, sloped(0.03), -0.04)).toBeCloseTo(15, 9);
});

it('counts from the middle of the posts, and to the side it opens', () => {
  // The face it turns at is 20 nearer to the back, so 0.04 * 20 = 0.8 higher.
  expect(highestInSwing({ ...SWING, off: 20 }, sloped(0.03), 0.04)).toBeCloseTo(25.8, 9);
  expect(highestInSwing({ ...SWING, side: 'front' }, sloped(0.03), -0.04)).toBeCloseTo(25, 9);
  expect(highestInSwing({ ...SWING, side: 'front' }, sloped(0.03), 0.04)).toBeCloseTo(15, 9);
  // Hung at the other end of the same 500: u runs down the slope from 15, so v alone rises, from the hinge's 15.
  expect(highestInSwing({ ...SWING, hinge: 1500, way: -1 }, sloped(0.03), 0.04)).toBeCloseTo(35, 9);
});

it('looks where a point of the ground cuts the arc', () => {
  // Up by 0.5 to u = 300, level from there: the plane's own touch is past 300, so the highest is on the arc at
  // u = 300, v = 400 (3-4-5): 300 * 0.5 + 400 * 0.1 = 190.
  const line = [
    { x: 1000, z: 0 },
    { x: 1300, z: 150 },
    { x: 3000, z: 150 },
  ];
  expect(highestInSwing(SWING, line, 0.1)).toBeCloseTo(190, 9);
});
