import { expect, it } from 'vitest';
import { IMPERIAL, inches } from '../units/index.ts';
import { type TicketBoard, ticketSheet } from './cut-ticket.ts';

const board = (offcut: number, keep = false): TicketBoard => {
  const length = inches(60);
  const pieces = [{ label: 'B1-01', length, mitered: false }];
  const parts = [{ length, ripped: false, strips: [{ width: inches(4), pieces }] }];
  return { times: 1, length: length + offcut, width: inches(4), parts, offcut, keep, kerf: 0 };
};
const sheet = (one: TicketBoard) => ticketSheet({ title: 'cut', notes: [], boards: [one] }, IMPERIAL);

it('says what is left of a board, whether it is kept, and nothing of what the tape does not show', () => {
  expect(sheet(board(inches(24), true))).toContain('>keep 2&apos;<');
  expect(sheet(board(inches(1)))).toContain('>left 1&quot;<');
  expect(sheet(board(inches(1 / 64)))).not.toMatch(/>left/);
});
