import { expect, it } from 'vitest';
import { board, patternOf, postOf, type RunParts, runOf, sourced } from '../../tests/specs/index.ts';
import { layOutRun } from '../layout/index.ts';
import type { FlatStock } from '../model/index.ts';
import { feet, inches } from '../units/index.ts';
import { bothFaces } from './index.ts';

const [a, b, c] = [5.5, 3.5, 1.5].map((width, i) => board('abc'.charAt(i), inches(width), inches(3 / 4))) as [
  FlatStock,
  FlatStock,
  FlatStock,
];
const cleat = board('cleat', inches(3 / 4), inches(3 / 4), 'cleat');
const rail = board('rail', inches(3.5), inches(1.5), 'rail');

function lookAt(repeat: readonly FlatStock[], parts: Partial<RunParts> = {}) {
  return bothFaces(
    layOutRun(
      runOf({
        length: feet(13),
        post: postOf('post', inches(3.5), inches(3.5)),
        spacing: { kind: 'at-most', limit: feet(6), measured: 'clear' },
        bottom: inches(2),
        height: inches(65),
        cleat,
        rail,
        pattern: patternOf('drawn', repeat, { gap: inches(1 / 2), end: { kind: 'whole' } }),
        remedies: [{ kind: 'gaps', low: inches(1 / 8), high: inches(2) }],
        screws: 'hidden',
        ...parts,
      }),
    ),
  );
}

// Common practice: level slats in one plane look alike from both sides in any order, because top stays top; upright
// ones only when the order is a palindrome: a b c b a does, a b c a b c does not.
it('takes level slats between posts as alike in any order', () => {
  expect(lookAt([a, b, c])).toEqual({ answer: 'same' });
});

it('takes upright slats as alike when the order is a palindrome', () => {
  const spacing = { kind: 'stations', stations: [] } as const;
  const one = { spacing, length: inches(25.5), flip: { upright: true }, endGap: inches(1 / 8) };
  // 5-1/2 + 3-1/2 + 1-1/2 + 3-1/2 + 5-1/2 is 19-1/2; a bay of 28-1/2 less 7 leaves 2" for four gaps.
  expect(lookAt([a, b, c, b, a], { ...one, length: inches(28.5) })).toEqual({ answer: 'same' });
  // Twice a b c in a bay: 21" and five gaps.
  const other = lookAt([a, b, c], { ...one, length: inches(30.5) });
  expect(other).toMatchObject({ answer: 'different', piece: { key: 'bank/b1/c01' } });
});

it('finds slats on one face only different from their first on', () => {
  for (const face of ['front', 'back'] as const) {
    const found = lookAt([a], { mounting: { kind: 'face', face } });
    expect(found).toMatchObject({ answer: 'different', piece: { key: 'bank/b1/c01' } });
  }
});

it('takes slats on both faces as alike, by turns once turned upside down', () => {
  expect(lookAt([a, b], { mounting: { kind: 'both' } })).toEqual({ answer: 'same' });
  expect(lookAt([a], { mounting: { kind: 'alternate' } })).toEqual({ answer: 'upside-down' });
  // Upright, both begin with a slat at the left of who looks at them.
  expect(lookAt([a], { mounting: { kind: 'alternate' }, flip: { upright: true } })).toEqual({
    answer: 'same',
  });
});

it('finds a pattern on both faces different where upright it is no palindrome', () => {
  const parts = { mounting: { kind: 'both' }, flip: { upright: true } } as const;
  const found = lookAt([a, b, c], { ...parts, length: inches(30.5), spacing: { kind: 'bays', count: 1 } });
  expect(found).toMatchObject({ answer: 'different', piece: { key: 'bank/b1/c01' } });
});

it('sees a post that stands deeper on one side than on the other', () => {
  const run = layOutRun(
    runOf({
      length: feet(13),
      post: postOf('post', inches(3.5), inches(3.5)),
      spacing: { kind: 'at-most', limit: feet(6), measured: 'clear' },
      bottom: inches(2),
      height: inches(65),
      cleat,
      pattern: patternOf('drawn', [a], { gap: inches(1 / 2), end: { kind: 'anywhere' } }),
      screws: 'plugged',
    }),
  );
  expect(bothFaces(run).answer).toBe('same');
  const deeper = run.pieces.map((piece) =>
    piece.key === 'bank/p2'
      ? {
          ...piece,
          solid: {
            vertices: piece.solid.vertices.map(([x, y, z]) => [x, y > 0 ? y + inches(2) : y, z] as const),
          },
        }
      : piece,
  );
  expect(bothFaces({ ...run, pieces: deeper })).toMatchObject({
    answer: 'different',
    piece: { key: 'bank/p2' },
  });
});

it('sees a brace through the gaps of a leaf with slats on both faces', () => {
  const gate = {
    name: 'gate',
    station: inches(60),
    opening: inches(40),
    post: postOf('post', inches(3.5), inches(3.5)),
    frame: board('frame', inches(3.5), inches(1.5), 'rail'),
    mounting: { kind: 'both' },
    pattern: patternOf('drawn', [b], { gap: inches(1 / 2), end: { kind: 'anywhere' } }),
  } as const;
  const withBrace = lookAt([a], { gates: [gate] });
  expect(withBrace.answer).toBe('different');
  expect(lookAt([a], { gates: [{ ...gate, brace: null }] })).toEqual({ answer: 'same' });
});

// Common practice: a slat between two cleats is screwed through one of them, from behind; slats on a face show their
// screws there; in grooves and channels there are none.
it('finds the sides different by their screws alone, from the first cleat that shows them', () => {
  const shown = { screws: undefined };
  expect(lookAt([a, b, c], shown)).toMatchObject({
    answer: 'different',
    by: 'screws',
    piece: { role: 'cleat', side: 'back' },
  });
  for (const screws of ['hidden', 'plugged', 'alternate'] as const)
    expect(lookAt([a, b, c], { screws })).toEqual({ answer: 'same' });
  // Shape comes first where both differ, and screws on both faces are alike.
  expect(lookAt([a], { ...shown, mounting: { kind: 'face', face: 'front' } })).toMatchObject({ by: 'shape' });
  expect(lookAt([a, b], { ...shown, mounting: { kind: 'both' } })).toEqual({ answer: 'same' });
  expect(lookAt([a], { ...shown, mounting: { kind: 'alternate' } })).toEqual({ answer: 'upside-down' });
});

it('takes slats in grooves and through split posts as alike, with no screws to hide', () => {
  const depth = sourced(inches(5 / 8), 'run/depth');
  const grooves = { kind: 'grooves', depth, room: inches(1 / 16) } as const;
  expect(lookAt([a, b, c], { screws: undefined, mounting: grooves })).toEqual({ answer: 'same' });
  expect(lookAt([a, b, c], { screws: undefined, mounting: { kind: 'split' } })).toEqual({ answer: 'same' });
});
