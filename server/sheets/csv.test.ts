import { expect, it } from 'vitest';
import { asCsv } from './csv.ts';

// RFC 4180, 2.6 and 2.7: fields with commas, line breaks or double quotes are quoted, and a double quote inside is doubled.
it('quotes what RFC 4180 says, and takes the edge off formulas', () => {
  expect(
    asCsv([
      ['plank', '3-1/2"', 'a, b'],
      ['=odd', '', 'two\r\nlines'],
    ]),
  ).toBe(`plank,"3-1/2""","a, b"\r\n'=odd,,"two\r\nlines"\r\n`);
});
