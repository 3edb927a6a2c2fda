import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  feet,
  formatLength,
  IMPERIAL,
  inches,
  LONGEST,
  METRIC,
  type Measure,
  type MeasureUnit,
  mm,
  parseLength,
  roundToStep,
  spellLength,
  type Ticks,
} from './index.ts';

const measure = (unit: MeasureUnit, step: Ticks): Measure => ({ unit, step });
const units: MeasureUnit[] = ['inches', 'feet', 'mm', 'cm', 'm'];

it.each<[Ticks, Measure, string]>([
  [inches(90.5), IMPERIAL, `7' 6-1/2"`],
  [inches(90), IMPERIAL, `7' 6"`],
  [feet(7), IMPERIAL, `7'`],
  [feet(7) + inches(0.5), IMPERIAL, `7' 0-1/2"`],
  [inches(6.5), IMPERIAL, `6-1/2"`],
  [inches(0.5), IMPERIAL, `1/2"`],
  [0, IMPERIAL, `0"`],
  [inches(11.99), IMPERIAL, `1'`],
  [inches(1 / 32), IMPERIAL, `1/16"`],
  [inches(90.5), measure('inches', inches(1 / 16)), `90-1/2"`],
  [inches(90.52), measure('inches', inches(1 / 64)), `90-33/64"`],
  [inches(90.52), measure('inches', inches(0.1)), `90-1/2"`],
  [inches(90.62), measure('inches', inches(0.1)), `90.6"`],
  [mm(2400), METRIC, '2400 mm'],
  [mm(2400.5), METRIC, '2401 mm'],
  [mm(2400.5), measure('mm', mm(0.5)), '2400.5 mm'],
  [mm(2400), measure('cm', mm(1)), '240 cm'],
  [mm(2405), measure('cm', mm(1)), '240.5 cm'],
  [mm(2400), measure('m', mm(1)), '2.4 m'],
  [mm(2005), measure('m', mm(1)), '2.005 m'],
  [0, METRIC, '0 mm'],
  [-inches(90.5), IMPERIAL, `-7' 6-1/2"`],
  [-mm(12), METRIC, '-12 mm'],
  [-mm(0.2), METRIC, '0 mm'],
])('shows %d ticks by %j as %s', (t, by, text) => {
  expect(formatLength(t, by)).toBe(text);
});

it.each<[Ticks, MeasureUnit, string]>([
  [inches(1 / 64), 'feet', `1/64"`],
  [inches(0.083), 'inches', `0.083"`],
  [feet(7) + inches(6.083), 'feet', `7' 6.083"`],
  [feet(1) - 1, 'feet', `11.999995"`],
  [1, 'mm', '0.0001 mm'],
  [mm(0.1), 'mm', '0.1 mm'],
  [mm(1) + 1, 'm', '0.0010001 m'],
])('spells %d ticks in %s as %s, however fine', (t, unit, text) => {
  expect(spellLength(t, measure(unit, inches(1)))).toBe(text);
  expect(parseLength(text)).toMatchObject({ ok: true, ticks: t });
});

const length = fc.oneof(
  fc.integer({ min: 0, max: feet(60) }),
  fc.integer({ min: 0, max: LONGEST }),
  fc.nat(9000),
);
const step = fc.oneof(
  fc.constantFrom(1, inches(1 / 64), inches(1 / 16), inches(1), mm(0.1), mm(1), mm(5), mm(10)),
  fc.integer({ min: 1, max: inches(12) }),
);

it('reads back what it shows: the rounded value in every measure', () => {
  fc.assert(
    fc.property(length, fc.constantFrom(...units), step, (t, unit, by) => {
      const rounded = roundToStep(t, by);
      fc.pre(rounded <= LONGEST);
      expect(parseLength(formatLength(t, measure(unit, by)))).toMatchObject({ ok: true, ticks: rounded });
    }),
    { numRuns: 2000 },
  );
});

it('reads back what it spells: the very tick in every measure', () => {
  fc.assert(
    fc.property(length, fc.constantFrom(...units), step, (t, unit, by) => {
      const text = spellLength(t, measure(unit, by));
      expect(parseLength(text)).toMatchObject({ ok: true, ticks: t });
      if (t % by === 0) expect(text).toBe(formatLength(t, measure(unit, by)));
    }),
    { numRuns: 2000 },
  );
});

it('spells ticks all along an inch, in every unit', () => {
  for (let t = 0; t <= inches(1); t += 7) {
    for (const unit of units) {
      const read = parseLength(spellLength(t, measure(unit, 1)));
      if (!read.ok || read.ticks !== t) expect([t, unit, read]).toEqual([t, unit, 'itself']);
    }
  }
});
