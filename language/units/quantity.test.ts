import Qty from 'js-quantities';
import { expect, it } from 'vitest';
import { type Amount, convert, UNITS, type UnitName } from './quantity.ts';
import { formatAmount, inSystem } from './show-amount.ts';

// A general-purpose library of units (js-quantities) converts each the same way. Names differ.
const THEIRS: Partial<Record<UnitName, string>> = {
  'in-lb': 'in*lbf',
  'ft-lb': 'ft*lbf',
  N·m: 'N*m',
  kN·m: 'kN*m',
  lb: 'lbf',
  kip: 'klbf',
  psf: 'lbf/ft2',
  ksi: 'klbf/in2',
  plf: 'lbf/ft',
  'lb/in': 'lbf/in',
  'psf/ft': 'lbf/ft3',
  'lb mass': 'lb',
  mph: 'mi/hour',
  'km/h': 'km/hour',
  '°F': 'tempF',
  '°C': 'tempC',
  '/°F': '1/degF',
  '/°C': '1/degC',
};

const names = (Object.keys(UNITS) as UnitName[]).filter((unit) => !['', '%', '°'].includes(unit));
const pairs = names.flatMap((from) =>
  names.filter((to) => to !== from && UNITS[to][0] === UNITS[from][0]).map((to) => [from, to] as const),
);

it.each(pairs)('makes %s into %s as a general library of units does', (from, to) => {
  const their = (unit: UnitName) => THEIRS[unit] ?? unit;
  const expected = Qty(37.25, their(from)).to(their(to)).scalar;
  expect(convert({ value: 37.25, unit: from }, to) / expected).toBeCloseTo(1, 6);
});

it('knows the exact foundations', () => {
  // NIST SP 811 appendix B: 1 lbf = 4.448 221 615 260 5 N; 1 psi = 6 894.757 Pa; 1 psf = 47.880 26 Pa; 1 mph = 0.447 04 m/s.
  expect(convert({ value: 1, unit: 'lb' }, 'N')).toBe(4.4482216152605);
  expect(convert({ value: 1, unit: 'psi' }, 'Pa')).toBeCloseTo(6894.757, 3);
  expect(convert({ value: 1, unit: 'psf' }, 'Pa')).toBeCloseTo(47.88026, 5);
  expect(convert({ value: 1, unit: 'mph' }, 'm/s')).toBeCloseTo(0.44704, 12);
  expect(convert({ value: 68, unit: '°F' }, '°C')).toBe(20);
  expect(convert({ value: -40, unit: '°C' }, '°F')).toBe(-40);
});

it('does not mix dimensions', () => {
  expect(() => convert({ value: 1, unit: 'psf' }, 'lb')).toThrow('psf is a pressure, lb a force');
});

it.each<[Amount, string, string]>([
  [{ value: 9.6, unit: 'psf' }, '9.6 psf', '0.4597 kPa'],
  [{ value: 16100, unit: 'in-lb' }, '16,100 in-lb', '1,819 N·m'],
  [{ value: 1341.7, unit: 'ft-lb' }, '1,342 ft-lb', '1.819 kN·m'],
  [{ value: 7.1458, unit: 'in3' }, '7.146 in³', '117,099 mm³'],
  [{ value: 0.0000034, unit: '/°F' }, '3.4 × 10^-6 /°F', '6.12 × 10^-6 /°C'],
  [{ value: 23, unit: 'lb/ft3' }, '23 lb/ft³', '368.4 kg/m³'],
  [{ value: 0, unit: 'in' }, '0 in', '0 mm'],
])('shows %o in both systems', (amount, imperial, metric) => {
  expect(formatAmount(inSystem(amount, 'imperial'))).toBe(imperial);
  expect(formatAmount(inSystem(amount, 'metric'))).toBe(metric);
});
