import { expect, it } from 'vitest';
import type { Opening, Piece, Vec3 } from '../layout/index.ts';
import { inches } from '../units/index.ts';
import { openShare, seeThrough } from './index.ts';

const LENGTH = inches(72);

function slat(top: number, width: number): Piece {
  const corner = (x: number, y: number, z: number): Vec3 => [x, inches(y), inches(z)];
  const end = (x: number) => [
    corner(x, 0, top - width),
    corner(x, 0.75, top - width),
    corner(x, 0.75, top),
    corner(x, 0, top),
  ];
  const square = { miter: 0, bevel: 0 };
  return {
    key: `bank/b1/${top}`,
    label: `${top}`,
    role: 'slat',
    run: 'bank',
    bay: 1,
    side: 'middle',
    cut: {
      stock: 'board',
      width: inches(width),
      thickness: inches(0.75),
      ripped: false,
      longPoint: LENGTH,
      shortPoint: LENGTH,
      ends: [square, square],
    },
    solid: { vertices: [...end(0), ...end(LENGTH)] },
    supports: [],
    from: [],
  };
}

function opening(top: number, size: number): Opening {
  const [z0, z1] = [inches(top - size), inches(top)];
  return { key: `bank/b1/gap-${top}`, bay: 1, x0: 0, x1: LENGTH, z0, z1, between: true, depth: inches(0.75) };
}

it('is gap over pitch where every slat has its gap', () => {
  const tops = [60, 56, 52, 48];
  const share = seeThrough(
    tops.map((top) => opening(top - 3.5, 0.5)),
    tops.map((top) => slat(top, 3.5)),
  );
  expect(share).toBeCloseTo(openShare(0.5, 3.5), 12);
  expect(share).toBeCloseTo(0.125, 12);
});

it('weighs slats of several widths by what they cover', () => {
  // 5-1/2 + 2-5/8 + 2-5/8 and two gaps of 3/4 between: 1-1/2 of 12-1/4.
  const share = seeThrough(
    [opening(54.5, 0.75), opening(51.125, 0.75)],
    [slat(60, 5.5), slat(53.75, 2.625), slat(50.375, 2.625)],
  );
  expect(share).toBeCloseTo(1.5 / 12.25, 12);
});

it('counts slats right behind one another once', () => {
  const front = [slat(60, 3.5), slat(56, 3.5)];
  const share = seeThrough([opening(56.5, 0.5)], [...front, ...front]);
  expect(share).toBeCloseTo(0.5 / 7.5, 12);
});

it('is nothing where there is nothing', () => {
  expect(seeThrough([], [])).toBe(0);
});

it('leaves out the ends of slats that lie on posts', () => {
  const narrow = (one: Opening): Opening => ({ ...one, x0: inches(2), x1: LENGTH - inches(2) });
  const tops = [60, 56, 52, 48];
  const share = seeThrough(
    tops.map((top) => narrow(opening(top - 3.5, 0.5))),
    tops.map((top) => slat(top, 3.5)),
  );
  expect(share).toBeCloseTo(0.125, 12);
});
