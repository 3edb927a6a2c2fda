import { expect, it } from 'vitest';
import type { Cut, Piece } from '../layout/index.ts';
import { IMPERIAL, inches } from '../units/index.ts';
import { alikeTapers, taperLine, taperOf } from './taper.ts';

function board(label: string, cut: Partial<Cut>): Piece {
  const square = { miter: 0, bevel: 0 };
  const whole: Cut = {
    stock: 'plank',
    width: inches(4),
    thickness: inches(1),
    ripped: true,
    longPoint: inches(60),
    shortPoint: inches(60),
    ends: [square, square],
    ...cut,
  };
  return {
    key: `bank/${label}`,
    label,
    role: 'kick',
    run: 'bank',
    cut: whole,
    solid: { vertices: [] },
    supports: [],
    from: [],
  } as unknown as Piece;
}

// By hand: mitered at 45 degrees, an end's lower corner lies as far from its tip as the board is wide there: 4" from the
// left tip, and 3" before the right one at 60".
it('tells where a tapered board is as wide as its two widths, from its left tip', () => {
  const ends = [
    { miter: 45, bevel: 0 },
    { miter: -45, bevel: 0 },
  ] as const;
  const mitered = board('B1-K', { taper: [inches(4), inches(3)], ends });
  expect(taperLine(taperOf(mitered, IMPERIAL))).toBe('4" 4", 4\' 9" 3"');
  const square = board('B1-K', { taper: [inches(4), inches(3)] });
  expect(taperLine(taperOf(square, IMPERIAL))).toBe('0" 4", 5\' 3"');
  // Leaning the other way the lower corner is the tip.
  const outward = board('B1-K', { taper: [inches(4), inches(3)], ends: [ends[1], ends[0]] });
  expect(taperLine(taperOf(outward, IMPERIAL))).toBe('0" 4", 5\' 3"');
});

it('tells no taper that the tape does not show, and none of a board without', () => {
  expect(taperOf(board('B1-K', { taper: [inches(4), inches(4) - 10] }), IMPERIAL)).toBeDefined();
  expect(taperOf(board('B1-K', { taper: [inches(3.99), inches(3.98)] }), IMPERIAL)).toBeUndefined();
  expect(taperOf(board('B1-K', {}), IMPERIAL)).toBeUndefined();
});

it('puts boards cut alike together', () => {
  const taper = [inches(4), inches(3)] as const;
  const boards = [
    board('B1-K', { taper }),
    board('B2-K', { taper: [inches(4), inches(2)] }),
    board('B3-K', { taper }),
  ];
  expect(alikeTapers(boards, IMPERIAL).map(({ pieces }) => pieces.map(({ label }) => label))).toEqual([
    ['B1-K', 'B3-K'],
    ['B2-K'],
  ]);
});
