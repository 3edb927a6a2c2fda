import { expect, it } from 'vitest';
import { fineLength } from './fine-length.ts';
import { inches, mm } from './ticks.ts';

it('tells small lengths to a 64th or a tenth of a millimeter, however coarse the tape', () => {
  // By hand: 0.5682" is 36.4 64ths, and 36 of them 9/16.
  expect(fineLength(0.5682 * inches(1), { unit: 'feet', step: inches(1) })).toBe('9/16"');
  expect(fineLength(inches(5 / 64) + 0.3, { unit: 'inches', step: inches(1 / 8) })).toBe('5/64"');
  expect(fineLength(mm(2.34), { unit: 'm', step: mm(5) })).toBe('2.3 mm');
});
