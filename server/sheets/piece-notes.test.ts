import { expect, it } from 'vitest';
import type { Cut, Piece } from '../../language/layout/index.ts';
import { IMPERIAL, inches } from '../../language/units/index.ts';
import { pieceNotes } from './piece-notes.ts';

function piece(label: string, cut: Partial<Cut>, role: Piece['role'] = 'post', run = 'bank'): Piece {
  const square = { miter: 0, bevel: 0 };
  const whole = { stock: 'plank', width: inches(4), thickness: inches(1), ripped: false };
  const long = { longPoint: inches(60), shortPoint: inches(60), ends: [square, square] };
  return { key: `${run}/${label}`, label, role, run, cut: { ...whole, ...long, ...cut } } as unknown as Piece;
}

const groove = { side: 'end', from: inches(6), at: 0, width: inches(1), depth: inches(0.5) } as const;

it('tells what is cut besides length and ends, of pieces cut alike once', () => {
  const taper = [inches(4), inches(3)] as const;
  const notes = pieceNotes(
    [
      piece('P10', { grooves: [groove] }),
      piece('P2', { grooves: [groove] }),
      piece('P3', { grooves: [{ ...groove, side: 'start' }, groove] }),
      piece('B1-K', { taper }, 'kick'),
      piece('B1-CLF', { edge: 20.5 }, 'cleat'),
      piece('B1-01', {}, 'slat'),
    ],
    IMPERIAL,
  );
  expect(notes).toEqual([
    `B1-K: plank, 5' long, lower edge ripped with a taper`,
    `from its left end and wide: 0" 4", 5' 3"`,
    'B1-CLF: one edge ripped at 20.5° off square',
    'P2, P10: groove right 1" wide, 1/2" deep, from 6" out at the end',
    'P3: grooves left 1" wide, 1/2" deep, from 6" out at the end; right 1" wide, 1/2" deep, from 6" out at the end',
  ]);
});

it('names the runs where there are several, for a label is its own only within one', () => {
  const notes = pieceNotes(
    [piece('P1', { grooves: [groove] }), piece('P1', { grooves: [groove] }, 'post', 'lane')],
    IMPERIAL,
  );
  expect(notes).toEqual(['bank P1; lane P1: groove right 1" wide, 1/2" deep, from 6" out at the end']);
});
