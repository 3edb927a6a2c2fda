import { expect, it } from 'vitest';
import { textWidth } from './text-width.ts';

it('is never less than Helvetica, and close to it', () => {
  // Advance widths of Helvetica in Adobe's Core 14 font metrics, from memory: digits 556, space 278,
  // hyphen 333, slash 278, quotesingle 191, quotedbl 355, m 833.
  const helvetica = (5 * 556 + 333 + 278 + 191 + 278 + 355) / 1000;
  const own = textWidth(`7' 6-1/22"`);
  expect(own).toBeGreaterThanOrEqual(helvetica);
  expect(own).toBeLessThan(1.25 * helvetica);
});

it('counts what it does not know as wide', () => {
  expect(textWidth('漢字')).toBe(2);
  expect(textWidth('é')).toBeGreaterThan(textWidth('e'));
  expect(textWidth('½')).toBeGreaterThan(0.9);
  expect(textWidth('')).toBe(0);
});
