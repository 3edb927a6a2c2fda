import fc from 'fast-check';
import { expect, it } from 'vitest';
import { CANTILEVER, CENTER_LOAD, EQUAL_SPANS, SIMPLE_SPAN } from '../../standards/index.ts';
import { continuousBeam } from './continuous-beam.ts';
import { solveBeam } from './testing/beam-elements.ts';

it('has the one span of every table', () => {
  // 5 w L^4 / 384 E I and w L^2 / 8 (AISC beam diagrams).
  const { moment, deflection, reactions, at } = continuousBeam([10], 3, 7);
  expect(moment).toBeCloseTo(SIMPLE_SPAN.moment * 3 * 100, 9);
  expect(deflection).toBeCloseTo((SIMPLE_SPAN.deflection * 3 * 1e4) / 7, 6);
  expect(reactions).toEqual([15, 15]);
  expect(at).toBeCloseTo(5, 3);
});

// AISC beam diagrams (two spans also AWC Design Aid 6, Fig. 29): coefficients of w L^2, w L and w L^4 / E I.
it.each([
  [2, [0, -0.125, 0], [0.375, 1.25, 0.375], 0.005415],
  [3, [0, -0.1, -0.1, 0], [0.4, 1.1, 1.1, 0.4], 0.006884],
  [4, [0, -0.1071, -0.0714, -0.1071, 0], [0.393, 1.143, 0.929, 1.143, 0.393], 0.00646],
] as const)('has %i equal spans as tabulated', (count, moments, reactions, deflection) => {
  const found = continuousBeam(new Array<number>(count).fill(1), 1, 1);
  expect(found.supportMoments).toEqual(moments.map((moment) => expect.closeTo(moment, 4)));
  expect(found.reactions).toEqual(reactions.map((reaction) => expect.closeTo(reaction, 3)));
  expect(found.deflection).toBeCloseTo(deflection, 5);
  expect(found.moment).toBeCloseTo(EQUAL_SPANS[count].moment, 4);
  // Tabulated to two digits.
  expect(found.deflection / EQUAL_SPANS[count].deflection).toBeCloseTo(1, 1);
});

it('sags most at 0.45 of an end span of three', () => {
  const { span, at } = continuousBeam([1, 1, 1], 1, 1);
  expect(span === 0 ? at : 1 - at).toBeCloseTo(0.448, 2);
});

it('agrees with finite elements whatever the spans', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 0.4, max: 3, noNaN: true }), { minLength: 1, maxLength: 6 }),
      fc.double({ min: 0.5, max: 5, noNaN: true }),
      (spans, load) => {
        const found = continuousBeam(spans, load, 2);
        const elements = solveBeam(spans, load, 2, 20);
        // Elements know deflections at their nodes alone, so a hair less than the deepest.
        expect(found.deflection / elements.deflection).toBeCloseTo(1, 2);
        expect(found.supportMoments).toEqual(
          elements.supportMoments.map((moment) => expect.closeTo(moment, 4)),
        );
        expect(found.reactions.reduce((sum, r) => sum + r, 0)).toBeCloseTo(
          load * spans.reduce((a, b) => a + b, 0),
          6,
        );
      },
    ),
    { numRuns: 25 },
  );
});

it('holds coefficients that statics gives', () => {
  // P L / 4 and w L^2 / 2 by statics; deflections P L^3 / 48 E I and w L^4 / 8 E I.
  expect([CENTER_LOAD.moment, CENTER_LOAD.deflection]).toEqual([1 / 4, 1 / 48]);
  expect([CANTILEVER.moment, CANTILEVER.deflection]).toEqual([1 / 2, 1 / 8]);
});
