import { describe, expect, it } from 'vitest';
import { designValuesOf, LOAD_DURATION, type LumberGroup, SIMPLE_SPAN } from '../../standards/index.ts';
import { rectangle } from './section.ts';
import { adjustedBending, stabilityFactor } from './wood.ts';

const valuesOf = (group: LumberGroup, nominal = 4, size: 'dimension' | 'timber' = 'dimension') => {
  const values = designValuesOf(group, 'No.2', size, nominal);
  if (!values) throw new Error(`no values for ${group}`);
  return values;
};

// A published specification of a wood-member check with worked figures (NDS 2024): 2x10 Douglas Fir-Larch No.2 on 13 ft,
// 16" apart, 15 psf dead and 30 psf snow.
describe('a floor joist', () => {
  const { area, modulus, inertia } = rectangle(1.5, 9.25);
  const values = valuesOf('Douglas Fir-Larch', 10);
  const use = {
    duration: LOAD_DURATION.snow.value,
    wet: false,
    nominalWidth: 10,
    nominalThickness: 2,
    repetitive: true,
  };
  const load = 60 / 12;

  it('has the section printed', () => {
    expect([area, modulus, inertia]).toEqual([13.875, 21.390625, expect.closeTo(98.931641, 6)]);
  });
  it('is bent by 711 psi, of 1309 allowed', () => {
    const stress = (SIMPLE_SPAN.moment * load * 156 ** 2) / modulus;
    expect(stress).toBeCloseTo(711.06, 2);
    const { allowable, CF, Cr } = adjustedBending(values, use);
    expect([CF, Cr]).toEqual([1.1, 1.15]);
    expect(allowable).toBeCloseTo(1309.28, 1);
    expect(stress / allowable).toBeCloseTo(0.543, 3);
  });
  it('is sheared by 42 psi, and bears by 74', () => {
    expect((1.5 * 390) / area).toBeCloseTo(42.16, 2);
    expect(390 / (3.5 * 1.5)).toBeCloseTo(74.29, 2);
    expect(74.29 / values.bearing).toBeCloseTo(0.119, 3);
  });
  it('sags by 0.244 in', () => {
    const { stiffness } = adjustedBending(values, use);
    expect((SIMPLE_SPAN.deflection * load * 156 ** 4) / (stiffness * inertia)).toBeCloseTo(0.24359, 5);
    expect((SIMPLE_SPAN.deflection * (40 / 12) * 156 ** 4) / (stiffness * inertia)).toBeCloseTo(0.16239, 5);
  });
  it('bears far less unbraced', () => {
    const { allowable } = adjustedBending(values, use);
    const CL = stabilityFactor(allowable, values.stiffnessMin, 1.84 * 156, 9.25, 1.5);
    expect(CL).toBeCloseTo(0.43386, 4);
    expect(adjustedBending(values, { ...use, stability: CL }).allowable).toBeCloseTo(568.04, 1);
  });
});

// Hand-worked from the tables (NDS Supplement 4A and 4B): 4x4 posts in wind, wet.
it.each([
  ['Southern Pine', 1760],
  ['Douglas Fir-Larch', 1836],
  ['Western Cedars', 1680],
] as const)('allows a wet 4x4 of %s %i psi in wind', (group, psi) => {
  const use = { duration: LOAD_DURATION.wind.value, wet: true, nominalWidth: 4, nominalThickness: 4 };
  expect(adjustedBending(valuesOf(group), use).allowable).toBeCloseTo(psi, 6);
});

it('has capacities of posts as the trade quotes them', () => {
  // Common practice, southern pine No. 2 in wind: a 4x4 bears 1 048 ft-lb (dimension lumber, 1 100 psi), a 6x6 of posts
  // and timbers 850 psi: 850 x 1.6 x 27.729 / 12 = 3 143 ft-lb.
  const use = { duration: 1.6, wet: true, nominalWidth: 4, nominalThickness: 4 };
  expect(
    (adjustedBending(valuesOf('Southern Pine'), use).allowable * rectangle(3.5, 3.5).modulus) / 12,
  ).toBeCloseTo(1048, 0);
  const six = adjustedBending(valuesOf('Southern Pine', 6, 'timber'), {
    ...use,
    nominalWidth: 6,
    nominalThickness: 6,
  });
  expect((six.allowable * rectangle(5.5, 5.5).modulus) / 12).toBeCloseTo(3143, 0);
});

it('reduces lumber that is pricked, and raises lumber laid flat', () => {
  // NDS Table 4.3.8: 0.80 and 0.95; Table 4A: 1.15 for a 6" width under 4" thick.
  const dry = { duration: 1, wet: false, nominalWidth: 6, nominalThickness: 1 };
  const plain = adjustedBending(valuesOf('Western Cedars', 6), dry);
  const flat = adjustedBending(valuesOf('Western Cedars', 6), { ...dry, flat: true });
  const pricked = adjustedBending(valuesOf('Western Cedars', 6), { ...dry, incised: true });
  expect(flat.allowable / plain.allowable).toBeCloseTo(1.15, 9);
  expect([pricked.allowable / plain.allowable, pricked.stiffness]).toEqual([0.8, 950_000]);
});

it('has the sections of common posts', () => {
  expect(rectangle(3.5, 3.5).modulus).toBeCloseTo(7.1458, 4);
  expect(rectangle(3.5, 3.5).inertia).toBeCloseTo(12.505, 3);
  expect(rectangle(5.5, 5.5).modulus).toBeCloseTo(27.729, 3);
  expect(rectangle(5.5, 5.5).inertia).toBeCloseTo(76.255, 3);
  // A tube is the full section less its hollow: 2 x 2 x 1/8, (16 - 1.75^4) / 12 = 0.5518 in4.
  expect(rectangle(2, 2, 0.125).inertia).toBeCloseTo((16 - 1.75 ** 4) / 12, 12);
});
