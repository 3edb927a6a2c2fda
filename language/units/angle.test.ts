import { expect, it } from 'vitest';
import { degrees, formatDegrees } from './index.ts';

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
