import fc from 'fast-check';
import { expect, it } from 'vitest';
import { cutOffAngle, openShare, openShareAtAngle } from './index.ts';

// All of it is plain geometry, so no published table stands behind it. It is held against figures worked
// by hand and against rays cast through a row of slats.

const percent = (share: number): number => Math.round(share * 1000) / 10;
const tenth = (angle: number): number => Math.round(angle * 10) / 10;

it('tells how open 3-1/2 slats, 3/4 thick, are at a gap of 1/2', () => {
  // 0.5 / 4; atan(0.5 / 0.75); (0.5 - 0.75 tan 20) / 4 = (0.5 - 0.27298) / 4.
  expect(percent(openShare(0.5, 3.5))).toBe(12.5);
  expect(tenth(cutOffAngle(0.5, 0.75))).toBe(33.7);
  expect(percent(openShareAtAngle(0.5, 3.5, 0.75, 20))).toBe(5.7);
});

it('closes gaps at the angle whose tangent is gap over thickness', () => {
  const gaps = [0.25, 0.375, 0.5, 0.75, 1];
  const table: [thickness: number, angles: number[]][] = [
    [0.75, [18.4, 26.6, 33.7, 45, 53.1]],
    [1, [14, 20.6, 26.6, 36.9, 45]],
    [1.5, [9.5, 14, 18.4, 26.6, 33.7]],
  ];
  for (const [thickness, angles] of table) {
    expect(gaps.map((gap) => tenth(cutOffAngle(gap, thickness)))).toEqual(angles);
  }
});

it('closes step by step as one looks from further aside', () => {
  const table: [width: number, shares: number[]][] = [
    [3.5, [12.5, 9.2, 5.7, 1.7]],
    [5.5, [8.3, 6.1, 3.8, 1.1]],
    [1.5, [25, 18.4, 11.4, 3.3]],
  ];
  for (const [width, shares] of table) {
    const seen = [0, 10, 20, 30].map((angle) => percent(openShareAtAngle(0.5, width, 0.75, angle)));
    expect(seen).toEqual(shares);
  }
});

/** Share of parallel rays that pass a row of slats without entering one, each ray followed in small steps. */
function raysThrough(gap: number, width: number, thickness: number, angle: number, rays: number): number {
  const slope = Math.tan((angle * Math.PI) / 180);
  const pitch = gap + width;
  const steps = 400;
  let through = 0;
  for (let ray = 0; ray < rays; ray++) {
    const start = ((ray + 0.5) / rays) * pitch;
    let free = true;
    for (let step = 0; step <= steps && free; step++) {
      const height = start + (slope * thickness * step) / steps;
      const within = height - pitch * Math.floor(height / pitch);
      free = within >= width;
    }
    if (free) through += 1;
  }
  return through / rays;
}

it('agrees with rays cast through the slats', () => {
  const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(size(0.1, 2), size(0.5, 7), size(0.3, 2), size(-80, 80), (gap, width, thickness, angle) => {
      const cast = raysThrough(gap, width, thickness, angle, 2000);
      expect(Math.abs(openShareAtAngle(gap, width, thickness, angle) - cast)).toBeLessThan(0.002);
      const beyond = cutOffAngle(gap, thickness) + 0.5;
      expect(openShareAtAngle(gap, width, thickness, beyond)).toBe(0);
      expect(openShareAtAngle(gap, width, thickness, beyond - 1)).toBeGreaterThan(0);
    }),
    { numRuns: 200, seed: 11 },
  );
});

it('gives a figure for slats that are none', () => {
  expect([openShare(0, 0), openShare(0, 3), openShare(-1, 3), openShare(1, 0)]).toEqual([0, 0, 0, 1]);
  expect(openShareAtAngle(1, 3, 0.75, 90)).toBe(0);
  expect(openShareAtAngle(Number.NaN, 3, 0.75, 10)).toBe(0);
  expect([cutOffAngle(0, 0), cutOffAngle(1, 0), cutOffAngle(-1, 1)]).toEqual([0, 90, 0]);
});
