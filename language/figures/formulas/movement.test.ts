import { expect, it } from 'vitest';
import { MATERIAL_CLASSES, speciesOf } from '../../standards/index.ts';
import { moistureMovement, shrunkFromGreen, sizeAtMoisture, thermalMovement } from './movement.ts';

it('shrinks a beam as a university solution does', () => {
  // Timber design course, problem 4.34: 13.25 in from 19 to 10 %; FPL formula, printed 13.02, exactly 12.989; 0.3 %.
  expect(sizeAtMoisture('width', 13.25, 19, 10)).toBeCloseTo(12.989, 3);
  expect(Math.abs(sizeAtMoisture('width', 13.25, 19, 10) / 13.02 - 1)).toBeLessThan(0.003);
  // The rule of 0.2 % each: 0.2385 in.
  expect(moistureMovement(13.25, 0.002, 19, 10)).toBeCloseTo(-0.2385, 4);
});

it('moves a wide board as a published chart does', () => {
  // Flat-sawn red alder, 8 in, 6 % at 0.0026: 0.1248 in.
  expect(moistureMovement(8, 0.0026, 6, 12)).toBeCloseTo(0.1248, 4);
});

it('shrinks a slat of western redcedar', () => {
  // Hand-worked with the coefficient of Wood Handbook Table 13-5: 5.5 x 0.00234 x 6 = 0.0772 in.
  const coefficient = speciesOf('western-redcedar')?.movement?.tangential ?? 0;
  expect(moistureMovement(5.5, coefficient, 14, 8)).toBeCloseTo(-0.0772, 4);
});

it('shrinks treated lumber from green by 3.45 % to 12 %', () => {
  // FPL-RP-489, hand-worked: 6.031 - 0.215 x 12 = 3.451 %; 0.190 in of 5-1/2.
  expect(shrunkFromGreen('width', 12)).toBeCloseTo(3.451, 3);
  expect((5.5 * shrunkFromGreen('width', 12)) / 100).toBeCloseTo(0.19, 3);
});

it('stretches aluminum and PVC over a swing of 100 °F', () => {
  // Hand-worked: 96 in x 13e-6 x 100 = 0.125 in; x 34e-6 = 0.326 in.
  const { aluminum, pvc } = MATERIAL_CLASSES;
  expect(thermalMovement(96, aluminum.expansion.value, 0, 100)).toBeCloseTo(0.125, 3);
  expect(thermalMovement(96, pvc.expansion.value, 0, 100)).toBeCloseTo(0.326, 3);
});

it.each([
  'western-redcedar',
  'redwood',
  'redwood-old',
  'white-oak',
  'white-ash',
  'douglas-fir',
  'southern-pine',
  'larch',
])('has a coefficient of %s that fits its shrinkage from green', (word) => {
  // Over some 22 to 30 % of moisture the coefficient makes up the shrinkage from green to ovendry (Table 4-3).
  const { movement, shrinkage } = speciesOf(word) ?? {};
  const spread = (shrinkage?.tangential ?? 0) / 100 / (movement?.tangential ?? 1);
  expect(spread).toBeGreaterThan(20);
  expect(spread).toBeLessThan(30);
});
