import { expect, it } from 'vitest';
import { IMPERIAL, inches } from '../units/index.ts';
import { type TicketBoard, ticketSheet } from './cut-ticket.ts';

const board = (offcut: number, keep = false): TicketBoard => {
  const length = inches(60);
  const pieces = [{ label: 'B1-01', length, at: 0, mitered: false }];
  const parts = [{ length, at: 0, ripped: false, strips: [{ width: inches(4), pieces }] }];
  return { times: 1, length: length + offcut, width: inches(4), parts, offcut, keep, kerf: 0 };
};
const sheet = (one: TicketBoard) => ticketSheet({ title: 'cut', notes: [], boards: [one] }, IMPERIAL);

it('says what is left of a board, whether it is kept, and nothing of what the tape does not show', () => {
  expect(sheet(board(inches(24), true))).toContain('>keep 2&apos;<');
  expect(sheet(board(inches(1)))).toContain('>left 1&quot;<');
  expect(sheet(board(inches(1 / 64)))).not.toMatch(/>left/);
});

it('draws angled ends as they lie, the lower face dashed, tips where they are', () => {
  const ends = [
    { across: inches(4), through: 0 },
    { across: 0, through: inches(-1) },
  ] as const;
  const length = inches(60);
  const pieces = [{ label: 'B1-01', length, at: 0, mitered: true, ends }];
  const parts = [{ length, at: 0, ripped: false, strips: [{ width: inches(4), pieces }] }];
  const text = sheet({ times: 1, length, width: inches(4), parts, offcut: 0, keep: false, kerf: 0 });
  // 215 mm for 60 in: the miter goes 4 in, 14.33 mm, forward over the width; below, the bevel ends an inch, 3.58 mm, short.
  expect(text).toContain('d="M56 16H271L271 23H70.33Z"');
  expect(text).toContain('d="M267.42 16L267.42 23"');
});
