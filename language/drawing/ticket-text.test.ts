import { expect, it } from 'vitest';
import { textWidth } from './text-width.ts';
import { offcutText, textWithin } from './ticket-text.ts';

/** Where a text begins and ends on the sheet, in millimeters, and its size. */
function spanOf(svg: string): { readonly from: number; readonly to: number; readonly size: number } {
  const [, x = '', size = ''] = /x="([\d.]+)".* font-size="([\d.]+)"/.exec(svg) ?? [];
  const wide = textWidth(/>(.*)</.exec(svg)?.[1] ?? '') * Number(size);
  const from = svg.includes('middle') ? Number(x) - wide / 2 : Number(x);
  return { from, to: from + wide, size: Number(size) };
}

it('keeps a text clear of both ends of its place', () => {
  for (const wide of [9, 14, 40]) {
    const { from, to } = spanOf(textWithin('B1-CLF +47', 100, wide, 0, 3.4));
    // Places are written to a tenth of a millimeter.
    expect(from).toBeGreaterThan(100.5 - 0.05);
    expect(to).toBeLessThan(100 + wide - 0.5 + 0.05);
  }
  expect(textWithin('B1-CLF +47', 100, 4, 0, 3.4)).toBe('');
});

it('says of a short offcut behind the board what cannot be read on it', () => {
  const on = spanOf(offcutText('left 111', 200, 30, 0));
  expect(on.from).toBeGreaterThan(170);
  expect(on.to).toBeLessThan(200);
  const behind = spanOf(offcutText('left 111', 200, 8, 0));
  expect(behind.from).toBe(201);
  expect(behind.size).toBe(3);
  // The longest board ends 26 before the edge of the sheet, which is 297 wide.
  expect(spanOf(offcutText('left 1111111111 111/111', 271, 8, 0)).to).toBeLessThan(296);
});
