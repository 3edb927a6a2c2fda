import { expect, it } from 'vitest';
import { netSection, rectangle } from './section.ts';

// By hand, theorem of parallel axes. A 3-1/2" post with a groove 5/8" deep and 13/16" wide in each side, in the middle
// of its depth: I = 3.5^4 / 12 - 2 (0.625 x 0.8125^3 / 12) = 12.5052 - 0.0559 = 12.4493 in4; S = I / 1.75 = 7.1139 in3.
it('takes grooves in the middle of the depth off a post in wind', () => {
  const groove = { breadth: 0.625, depth: 0.8125, off: 0 };
  const net = netSection(3.5, 3.5, [groove, groove]);
  expect(net.area).toBeCloseTo(12.25 - 2 * 0.625 * 0.8125, 12);
  expect(net.inertia).toBeCloseTo(12.4493, 4);
  expect(net.modulus).toBeCloseTo(7.1139, 4);
});

// The same post bent along the run with one groove, at its edge: area 12.25 - 0.5078 = 11.7422 in2; the groove's middle
// is 1.75 - 0.3125 = 1.4375 off, so the rest's is 0.5078 x 1.4375 / 11.7422 = 0.06217 the other way;
// I = 12.5052 - (0.8125 x 0.625^3 / 12 + 0.5078 x 1.4375^2) - 11.7422 x 0.06217^2 = 12.5052 - 1.0659 - 0.0454 = 11.3939;
// S = 11.3939 / (1.75 + 0.06217) = 6.2874.
it('finds the middle of what a groove at one edge leaves', () => {
  const net = netSection(3.5, 3.5, [{ breadth: 0.8125, depth: 0.625, off: 1.4375 }]);
  expect(net.inertia).toBeCloseTo(11.394, 3);
  expect(net.modulus).toBeCloseTo(6.2875, 3);
});

it('is the rectangle where nothing is cut, and nothing where all is', () => {
  expect(netSection(3.5, 5.5, [])).toEqual(rectangle(3.5, 5.5));
  expect(netSection(1, 1, [{ breadth: 1, depth: 1, off: 0 }]).modulus).toBe(0);
});
