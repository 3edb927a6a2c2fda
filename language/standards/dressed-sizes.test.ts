import { expect, it } from 'vitest';
import { inches } from '../units/index.ts';
import { DRESSED_SIZES, dressedWidthOf } from './dressed-sizes.ts';

// PS 20, American Softwood Lumber Standard: a dry 1x6 measures 3/4 x 5-1/2, a 2x4 1-1/2 x 3-1/2, a 1x8 3/4 x 7-1/4.
it.each([
  [4, 3.5],
  [6, 5.5],
  [8, 7.25],
  [12, 11.25],
])('a nominal %i is %f dressed', (nominal, dressed) => {
  expect(dressedWidthOf(inches(nominal))).toBe(inches(dressed));
});

it('knows no board called by its dressed size', () => {
  for (const size of DRESSED_SIZES.width) expect(dressedWidthOf(size.dressed)).toBeUndefined();
});
