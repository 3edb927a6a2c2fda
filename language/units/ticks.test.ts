import fc from 'fast-check';
import { expect, it } from 'vitest';
import { feet, inches, mm, TICKS_PER_FOOT, TICKS_PER_INCH, TICKS_PER_MM, toInches, toMm } from './index.ts';

// International yard and pound agreement, 1959 (US: 24 FR 5348, 1 July 1959): 1 yd = 0.9144 m exactly, so
// 1 ft = 0.3048 m and 1 in = 25.4 mm exactly; the same in NIST SP 811 (2008), appendix B.8, where
// exact factors stand in bold: inch 2.54 E-02 m, foot 3.048 E-01 m, yard 9.144 E-01 m.
it('holds the exact definitions of inch, foot and yard', () => {
  expect(10 * TICKS_PER_INCH).toBe(254 * TICKS_PER_MM);
  expect(10 * TICKS_PER_FOOT).toBe(3048 * TICKS_PER_MM);
  expect(10 * feet(3)).toBe(9144 * TICKS_PER_MM);
  expect(inches(1)).toBe(mm(25.4));
  expect(feet(1)).toBe(mm(304.8));
});

it('has a whole tick for each 1/64 in and each 0.1 mm', () => {
  expect(TICKS_PER_INCH % 64).toBe(0);
  expect(TICKS_PER_MM % 10).toBe(0);
  expect(mm(0.1)).toBe(800);
  expect(inches(1 / 64)).toBe(3175);
});

it('goes to floats and back', () => {
  fc.assert(
    fc.property(fc.integer({ min: -8e10, max: 8e10 }), (t) => {
      expect(mm(toMm(t))).toBe(t);
      expect(inches(toInches(t))).toBe(t);
    }),
  );
  expect(Object.is(mm(-0.00001), 0)).toBe(true);
});
