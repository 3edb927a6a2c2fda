import { expect, it } from 'vitest';
import { angleOfSides, degrees, formatDegrees } from './index.ts';

it('turns radians into degrees', () => {
  expect(degrees(Math.PI)).toBe(180);
  // The 3-4-5 triangle's smaller angle, 36.87 degrees in any table of triangles.
  expect(degrees(Math.atan2(3, 4))).toBeCloseTo(36.87, 2);
});

it('shows degrees to a tenth', () => {
  expect([33.69, 90, 89.96, -0.01, -33.69, 0.05].map(formatDegrees)).toEqual([
    '33.7°',
    '90°',
    '90°',
    '0°',
    '-33.7°',
    '0.1°',
  ]);
});

it('finds a corner from three sides, as masons do', () => {
  // 3-4-5 is square; an even triangle has 60 degrees; sides 7, 8 and 13 across make 120 (49 + 64 - 169 = -56).
  expect(angleOfSides(3, 4, 5)).toBeCloseTo(90, 9);
  expect(angleOfSides(2, 2, 2)).toBeCloseTo(60, 9);
  expect(angleOfSides(7, 8, 13)).toBeCloseTo(120, 9);
  expect(angleOfSides(3, 4, 7)).toBeCloseTo(180, 6);
  expect(angleOfSides(3, 4, 8)).toBeUndefined();
  expect(angleOfSides(0, 4, 4)).toBeUndefined();
});
