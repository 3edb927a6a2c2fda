import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inches, type LengthProblem, LONGEST, mm, parseLength } from './index.ts';

const TICKS = { inch: 203_200, sixteenth: 12_700, foot: 2_438_400, mm: 8_000 };

it.each<[string, number]>([
  [`7' 6-1/2"`, 7 * TICKS.foot + 6 * TICKS.inch + 8 * TICKS.sixteenth],
  [`7'6 1/2"`, 90.5 * TICKS.inch],
  [`7'-6 1/2"`, 90.5 * TICKS.inch],
  [`7'-6-1/2"`, 90.5 * TICKS.inch],
  [`7'6"`, 90 * TICKS.inch],
  [`7' 6"`, 90 * TICKS.inch],
  [`7' 6.5"`, 90.5 * TICKS.inch],
  [`7' 1/2"`, 84.5 * TICKS.inch],
  [`7' 0-1/2"`, 84.5 * TICKS.inch],
  [`7' 0"`, 84 * TICKS.inch],
  [`90-1/2"`, 90.5 * TICKS.inch],
  [`90 1/2"`, 90.5 * TICKS.inch],
  [`14"`, 14 * TICKS.inch],
  [`1/2"`, 8 * TICKS.sixteenth],
  [`1/64"`, 3_175],
  [`7.5'`, 90 * TICKS.inch],
  [`7'`, 84 * TICKS.inch],
  [`6.5"`, 6.5 * TICKS.inch],
  [`0"`, 0],
  [`0'`, 0],
  ['0 mm', 0],
  ['2.4 m', 2400 * TICKS.mm],
  ['240 cm', 2400 * TICKS.mm],
  ['2400 mm', 2400 * TICKS.mm],
  ['2400mm', 2400 * TICKS.mm],
  ['0.1 mm', 800],
  ['10000 m', LONGEST],
  // marks and spaces as phones, word processors and drawings make them
  [`7\u2019 6\u201D`, 90 * TICKS.inch],
  [`7\u2018 6\u201C`, 90 * TICKS.inch],
  [`7\u2032 6\u2033`, 90 * TICKS.inch],
  [`7' 6''`, 90 * TICKS.inch],
  [`6\u2032\u2032`, 6 * TICKS.inch],
  [`7'\u00A06\u20091/2"`, 90.5 * TICKS.inch],
  ['2400\u202Fmm', 2400 * TICKS.mm],
  [` 7'   6" `, 90 * TICKS.inch],
])('reads %s', (text, ticks) => {
  const system = /m/.test(text) ? 'metric' : 'imperial';
  expect(parseLength(text)).toEqual({ ok: true, ticks, system, exact: true });
});

it.each<[string, number]>([
  // n * 203 200 by hand: 16 865.6, 67 733.33, 1 587.5 (halves up), 29 028.57
  [`0.083"`, 16_866],
  [`1/3"`, 67_733],
  [`1/128"`, 1_588],
  [`1/7"`, 29_029],
  ['0.00001 mm', 0],
])('rounds %s once, and says so', (text, ticks) => {
  expect(parseLength(text)).toMatchObject({ ok: true, ticks, exact: false });
});

/** text, problem, then the fixes in order. */
const refusals: [string, LengthProblem, ...string[]][] = [
  ['1/2', 'bare-number', `1/2"`],
  ['6-1/2', 'bare-number', `6-1/2"`],
  ['6 1/2', 'bare-number', `6 1/2"`],
  ['5/4', 'bare-number', `1-1/4"`],
  [`7' 14"`, 'inches-over-foot', `8' 2"`],
  [`7' 12"`, 'inches-over-foot', `8'`],
  [`7' 14-1/2"`, 'inches-over-foot', `8' 2-1/2"`],
  [`7' 14.25"`, 'inches-over-foot', `8' 2-1/4"`],
  [`10 - 1/2"`, 'spaced-minus', `10-1/2"`, `9-1/2"`],
  [`10 -1/2"`, 'spaced-minus', `10-1/2"`, `9-1/2"`],
  [`10- 1/2"`, 'spaced-minus', `10-1/2"`, `9-1/2"`],
  [`7' - 6"`, 'spaced-minus', `7' 6"`, `6' 6"`],
  [`7' - 1/2"`, 'spaced-minus', `7' 1/2"`, `6' 11-1/2"`],
  [`7' 6 - 1/2"`, 'spaced-minus', `7' 6-1/2"`, `7' 5-1/2"`],
  [`12' 3 - 1/2"`, 'spaced-minus', `12' 3-1/2"`, `12' 2-1/2"`],
  [`10 - 6"`, 'spaced-minus', `10' 6"`, `4"`],
  ['600 - 20 mm', 'spaced-minus', '580 mm'],
  ['600 - 800 mm', 'spaced-minus', '600 mm to 800 mm'],
  [`10 \u2013 1/2"`, 'spaced-minus', `10-1/2"`, `9-1/2"`],
  [`10\u20131/2"`, 'not-a-length', `10-1/2"`],
  [`10-6"`, 'not-a-length', `10' 6"`],
  [`6-8"`, 'not-a-length', `6' 8"`, `6" to 8"`],
  ['4,200 mm', 'thousands-mark', '4200 mm', '4.200 mm'],
  ['1,234,567 mm', 'thousands-mark', '1234567 mm'],
  ['4,200.5 mm', 'thousands-mark', '4200.5 mm'],
  ['4,200 m', 'thousands-mark', '4.200 m', '4200 m'],
  ['4,200 metres', 'thousands-mark', '4200 m'],
  ['2,4 m', 'decimal-comma', '2.4 m', '2 m, 4 m'],
  [`0,125"`, 'decimal-comma', `0.125"`, `0", 125"`],
  [`7' 6,5"`, 'decimal-comma', `7' 6.5"`],
  [`8,10,12'`, 'not-a-length', `8', 10', 12'`],
  [`12' 3`, 'missing-inch-mark', `12' 3"`],
  [`12'3`, 'missing-inch-mark', `12'3"`],
  [`12' 3-1/2`, 'missing-inch-mark', `12' 3-1/2"`],
  [`7' 14`, 'missing-inch-mark', `8' 2"`],
  [`5/4"`, 'improper-fraction', `1-1/4"`],
  [`6/4"`, 'improper-fraction', `1-1/2"`],
  [`1-5/4"`, 'improper-fraction', `2-1/4"`],
  [`4/4"`, 'improper-fraction', `1"`],
  [`5/3"`, 'improper-fraction', `1-2/3"`],
  [`7' 5/4"`, 'improper-fraction', `7' 1-1/4"`],
  [`7' 11-16/16"`, 'improper-fraction', `8'`],
  [`1/0"`, 'zero-denominator'],
  [`7' 6-1/0"`, 'zero-denominator'],
  [`1/0'`, 'zero-denominator'],
  ['1/0', 'zero-denominator'],
  ['1/0 m', 'zero-denominator'],
  ['1/0 yd', 'zero-denominator'],
  [`7.5' 3"`, 'fraction-of-foot', `7' 9"`],
  [`1/2'`, 'fraction-of-foot', `6"`],
  [`6-1/2'`, 'fraction-of-foot', `6' 6"`],
  [`1/3'`, 'fraction-of-foot', `4"`],
  ['6 in', 'unknown-unit', `6"`],
  ['6 in.', 'unknown-unit', `6"`],
  ['12in', 'unknown-unit', `12"`],
  ['6 inches', 'unknown-unit', `6"`],
  ['6-1/2 inches', 'unknown-unit', `6-1/2"`],
  ['6 ft', 'unknown-unit', `6'`],
  ['6 feet', 'unknown-unit', `6'`],
  ['1/2 foot', 'unknown-unit', `6"`],
  ['7 ft 6 in', 'unknown-unit', `7' 6"`],
  ['7ft. 6-1/2in.', 'unknown-unit', `7' 6-1/2"`],
  ['7ft6in', 'unknown-unit', `7'6"`],
  [`7' 6 in`, 'unknown-unit', `7' 6"`],
  // 1 yd = 3 ft: NIST SP 811, appendix B.8
  ['2 yd', 'unknown-unit', `6'`],
  ['2 yards', 'unknown-unit', `6'`],
  ['1-1/2 yards', 'unknown-unit', `4' 6"`],
  ['3 metres', 'unknown-unit', '3 m'],
  ['3 meters', 'unknown-unit', '3 m'],
  ['30 millimeters', 'unknown-unit', '30 mm'],
  ['30 centimetres', 'unknown-unit', '30 cm'],
  ['30 MM', 'unknown-unit', '30 mm'],
  ['3 dm', 'unknown-unit', '300 mm'],
  ['2 km', 'unknown-unit', '2000 m'],
  ['40 thou', 'unknown-unit', `0.04"`],
  ['40 mil', 'unknown-unit', '40 mm', `0.04"`],
  ['4zz', 'unknown-unit'],
  ['2x4', 'unknown-unit'],
  ['4zz"', 'unknown-unit'],
  ['1/2 m', 'not-a-length', '0.5 m'],
  ['6-1/2 mm', 'not-a-length', '6.5 mm'],
  [`6½"`, 'not-a-length', `6-1/2"`],
  [`7' 6 ½"`, 'not-a-length', `7' 6-1/2"`],
  [`½"`, 'not-a-length'],
  ['6 "', 'not-a-length', `6"`],
  ['7."', 'not-a-length', `7"`],
  ['.5"', 'not-a-length', `0.5"`],
  ['10001 m', 'too-large'],
  ['99 km', 'too-large'],
  [`${'9'.repeat(100)} mm`, 'too-large'],
  [`${'9'.repeat(100_000)}'`, 'too-large'],
  ['', 'not-a-length'],
  ['-6"', 'not-a-length'],
  ['six inches', 'not-a-length'],
  [`7'\n6"`, 'not-a-length'],
  [`1.2.3"`, 'not-a-length'],
  [`6" 7'`, 'not-a-length'],
  [`7' 6" 1/2"`, 'not-a-length'],
];

describe('refuses', () => {
  it.each(refusals)('%j as %s', (text, problem, ...fixes) => {
    const [hint] = fixes;
    expect(parseLength(text)).toEqual({
      ok: false,
      problem,
      ...(hint === undefined ? {} : { hint }),
      ...(fixes.length > 1 ? { hints: fixes } : {}),
    });
  });

  it('a bare number without choosing a unit for it', () => {
    expect(parseLength('7')).toEqual({ ok: false, problem: 'bare-number', hints: [`7"`, `7'`, '7 mm'] });
    expect(parseLength('7.5')).toEqual({
      ok: false,
      problem: 'bare-number',
      hints: [`7.5"`, `7.5'`, '7.5 mm'],
    });
  });
});

it('offers only fixes that are accepted, and never throws', () => {
  const piece = fc.constantFrom(
    ...`0 1 2 7 10 12 96 200 . , / - \u2013 ' " \u2019 \u201D ½ mm cm m in ft feet yd km mil x`.split(' '),
    ' ',
    ' - ',
    '\n',
    '1/2',
  );
  const text = fc.oneof(
    fc.array(piece, { maxLength: 8 }).map((pieces) => pieces.join('')),
    fc.string(),
    fc.string({ unit: 'binary' }),
  );
  let fixes = 0;
  fc.assert(
    fc.property(text, (stated) => {
      const read = parseLength(stated);
      if (read.ok) {
        expect(Number.isSafeInteger(read.ticks) && read.ticks >= 0 && read.ticks <= LONGEST).toBe(true);
        return;
      }
      for (const fix of read.hints ?? (read.hint === undefined ? [] : [read.hint])) {
        fixes += 1;
        for (const each of fix.split(/, | to /))
          expect([stated, each, parseLength(each).ok]).toEqual([stated, each, true]);
      }
    }),
    { numRuns: 5000 },
  );
  expect(fixes).toBeGreaterThan(200);
});

it('reads decimals exactly, however many digits', () => {
  fc.assert(
    fc.property(fc.nat(9_999_999), fc.integer({ min: 0, max: 6 }), (digits, places) => {
      const text = String(digits).padStart(places + 1, '0');
      const stated = places === 0 ? text : `${text.slice(0, -places)}.${text.slice(-places)}`;
      const scale = 10n ** BigInt(places);
      for (const [unit, per] of [
        ['mm', mm(1)],
        ['"', inches(1)],
        ["'", inches(12)],
      ] as const) {
        const whole = BigInt(digits) * BigInt(per);
        const read = parseLength(unit === 'mm' ? `${stated} mm` : stated + unit);
        if (whole > BigInt(LONGEST) * scale) {
          expect(read).toMatchObject({ problem: 'too-large' });
        } else {
          expect(read.ok && read.exact).toBe(whole % scale === 0n);
          const error = read.ok ? BigInt(read.ticks) * scale - whole : scale;
          expect(2n * error <= scale && 2n * error > -scale).toBe(true);
        }
      }
    }),
  );
});
