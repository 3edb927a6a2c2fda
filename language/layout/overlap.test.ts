import { expect, it } from 'vitest';
import { compostBay } from '../../tests/specs/index.ts';
import { inches } from '../units/index.ts';
import { type About, makePiece, type Shape } from './make-piece.ts';
import { findOverlaps } from './overlap.ts';
import type { Vec3 } from './piece.ts';

const about = (key: string): About => ({
  key,
  label: key,
  role: 'filler',
  run: 'run',
  side: 'middle',
  supports: [],
  from: [],
});

// Bent in the middle of its length, so that its solid is of two parts.
const bent = (key: string, origin: Vec3) => {
  const shape: Shape = {
    stock: 'board',
    ripped: true,
    origin,
    grain: [1, 0, 0],
    across: [0, 0, 1],
    through: [0, 1, 0],
    width: inches(3),
    thickness: inches(1),
    ends: [{ at: 0 }, { at: inches(48) }],
    scribe: [2, 3, 2].map((width, at) => ({ at: at * inches(24), width: inches(width) })),
  };
  return makePiece(about(key), shape);
};

it('tells two pieces in one place once, however many of their parts are', () => {
  const pieces = [bent('a', [0, 0, 0]), bent('b', [0, 0, inches(1)]), bent('c', [0, inches(1), 0])];
  expect(pieces.map(({ solid }) => solid.parts?.length)).toEqual([2, 2, 2]);
  const told = findOverlaps({ pieces, spec: compostBay() });
  expect(told.map(({ args }) => [args.first, args.second].sort())).toEqual([['a', 'b']]);
});
