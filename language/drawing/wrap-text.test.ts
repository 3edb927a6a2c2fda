import { expect, it } from 'vitest';
import { wrapText } from './wrap-text.ts';

// Digits are 0.636 wide and a space 0.318: "11 11" is 4 x 0.636 + 0.318 = 2.862 font sizes.
it('breaks at spaces, no line wider than asked for', () => {
  expect(wrapText('11 11 11', 2.87)).toEqual(['11 11', '11']);
  expect(wrapText('11 11 11', 2.85)).toEqual(['11', '11', '11']);
});

it('gives a word that is too wide a line of its own, and keeps what fits whole', () => {
  expect(wrapText('1 1111111111 1', 2)).toEqual(['1', '1111111111', '1']);
  expect(wrapText('1 1', 9)).toEqual(['1 1']);
  expect(wrapText('', 9)).toEqual(['']);
});
