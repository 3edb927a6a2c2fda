import { expect, it } from 'vitest';
import { LENGTH_PATTERN, parseLength } from './index.ts';

// The literal in parts. It is one literal in the source because a grammar file can hold no other form.
const space = String.raw`[ \t\u00A0\u2009\u202F]`;
const dash = String.raw`[-\u2010-\u2015\u2212]`;
const footMark = String.raw`['\u2018\u2019\u2032]`;
const inchMark = String.raw`(?:["\u201C\u201D\u2033]|${footMark}{2})`;
const letter = String.raw`[A-Za-z_\u00B5\u00C0-\u1FFF\u3040-\uD7FF]`;
const nameChar = String.raw`[\w\u00AA-\u1FFF\u3040-\uD7FF-]`;
const wordEnd = String.raw`(?!${nameChar})\.?`;
const number = String.raw`\d+(?:[.,]\d+)*\.?`;
const fraction = String.raw`\d+\/\d+`;
const between = `(?:${space}+(?:${dash}${space}*)?|${dash}${space}*)`;
const vulgar = String.raw`[\u00BC-\u00BE\u2153-\u215E]`;
const mixed = `(?:${fraction}|${number}(?:${between}${fraction}|${space}*${vulgar})?)`;
const inchWord = `(?:inch(?:es)?|ins?)${wordEnd}`;
const footWord = `(?:feet|foot|ft)${wordEnd}`;
const unitWord = `(?:inch(?:es)?|ins?|yards?|yds?|[cdk]?m|mm|mils?|thou|(?:milli|centi)?met(?:er|re)s?)${wordEnd}`;
// A number without a mark is taken only where nothing follows that could be its own unit, name or rest.
const alone = String.raw`(?!${space}*(?:${nameChar}|${footMark}|${dash}|["\u201C\u201D\u2033%\u00B0]|\/\d|[.,]\d))`;
const afterFeet = `${footMark}(?:${space}*(?:${dash}${space}*)?${mixed}(?:${inchMark}|${space}*${inchWord}|${alone}))?`;
const afterFeetWord = `${footWord}(?:${space}*${mixed}(?:${inchMark}|${space}*${inchWord}))?`;
const attached = `${letter}${nameChar}*\\.?(?:${inchMark}|${footMark})?`;
const composed =
  `(?:${number}${space}*${dash}${space}*)?${mixed}` +
  `(?:${inchMark}|${afterFeet}|${space}*(?:${afterFeetWord}|${unitWord})|${attached})` +
  `|${number}${between}${fraction}${alone}`;

const sticky = new RegExp(LENGTH_PATTERN.source, 'y');
/** What the lexer takes for a length at the start of a text. */
function token(text: string): string | undefined {
  sticky.lastIndex = 0;
  return sticky.exec(text)?.[0];
}

it('is what its parts say', () => {
  expect(LENGTH_PATTERN.source).toBe(composed);
  expect(LENGTH_PATTERN.flags).toBe('');
});

const accepted = [
  `7' 6-1/2"`,
  `7'6 1/2"`,
  `7'-6 1/2"`,
  `7'-6-1/2"`,
  `7' 6"`,
  `7' 1/2"`,
  `7'0-1/2"`,
  `90-1/2"`,
  `90 1/2"`,
  `1/2"`,
  `7.5'`,
  `7'`,
  `6.5"`,
  `0"`,
  `2.4 m`,
  `240 cm`,
  `2400 mm`,
  `2400mm`,
  `2.4m`,
  `7\u2019 6-1/2\u201D`,
  `7\u2018 6\u201C`,
  `7\u2032 6\u2033`,
  `7''`,
  `7\u2032\u2032`,
  `7' 6''`,
  `7'\u00A06-1/2"`,
  `7'\u20096"`,
  `2400\u202Fmm`,
  `7'\t6"`,
  `0.1 mm`,
  `0.083"`,
  `7' 6.5"`,
];

const refused = [
  `6-1/2`,
  `6 1/2`,
  `7' 14"`,
  `7'14"`,
  `10 - 1/2"`,
  `10 -1/2"`,
  `10- 1/2"`,
  `7' - 6"`,
  `7' - 6-1/2"`,
  `10 - 6"`,
  `10-6"`,
  `600-800 mm`,
  `4,200 mm`,
  `1,234,567 mm`,
  `1,200"`,
  `2,4 m`,
  `7' 6,5"`,
  `12' 3`,
  `12'3`,
  `12' 3-1/2`,
  `12' 3 1/2`,
  `12' 3/4`,
  `12' 3 - 1/2"`,
  `5/4"`,
  `1-5/4"`,
  `1/0"`,
  `7.5' 3"`,
  `1/2'`,
  `6-1/2'`,
  `6 1/2'`,
  `6½"`,
  `6 ½"`,
  `7' 6½"`,
  `10\u20131/2"`,
  `7."`,
  `1.2.3"`,
  `6 in`,
  `6 in.`,
  `6 ins`,
  `6 inch`,
  `6 inches`,
  `6-1/2 in`,
  `1/2 inch`,
  `6 ft`,
  `6 ft.`,
  `1 foot`,
  `6 feet`,
  `7 ft 6 in`,
  `7 ft. 6-1/2 in.`,
  `7ft 6in`,
  `7ft6in`,
  `7' 6 in`,
  `7'6in`,
  `2 yd`,
  `2 yard`,
  `2 yards`,
  `3 dm`,
  `3 km`,
  `3 meter`,
  `3 meters`,
  `3 metre`,
  `3 metres`,
  `30 millimeter`,
  `30 millimeters`,
  `30 millimetres`,
  `30 centimeters`,
  `30 centimetre`,
  `4 mil`,
  `4 thou`,
  `1/2 m`,
  `12in`,
  `4zz`,
  `2x4`,
  `2x4-treated`,
  `2×4`,
  `4zz"`,
  `1e5`,
  `3MM`,
  `99999999999 mm`,
  `3.5x`,
];

it.each([...accepted, ...refused])('takes the whole of %s', (text) => {
  expect(token(text)).toBe(text);
  for (const next of ['\n', '\r\n', ' }', ';', ', 4"', ')', ' // note', '\n3 m', '\n6"', `\n1/2"`]) {
    expect(token(text + next)).toBe(text);
  }
});

it.each(accepted)('takes %s before a word, a number or a string', (text) => {
  for (const next of [' over posts', ' to 3"', ' above ground', ' $4.20 each', ' "name"', ' 20 %']) {
    expect(token(text + next)).toBe(text);
  }
});

it('takes only what it judges: accepted spellings are accepted, refused ones are not', () => {
  for (const text of accepted) expect([text, parseLength(text).ok]).toEqual([text, true]);
  for (const text of refused) expect([text, parseLength(text).ok]).toEqual([text, false]);
});

it.each([
  [`12', 3'`, `12'`],
  [`8' 10'`, `8'`],
  [`8' 10' 6"`, `8'`],
  [`8',10'`, `8'`],
  [`0" down 1"`, `0"`],
  [`0' down 1"`, `0'`],
  [`12' 3 posts`, `12'`],
  [`12' 3 m`, `12'`],
  [`12' 3 mm`, `12'`],
  [`12' 2 of strip`, `12'`],
  [`12' 20 %`, `12'`],
  [`12' 31/2'`, `12'`],
  [`12' 3 1/2'`, `12'`],
  [`12' 3x`, `12'`],
  [`12' 90°`, `12'`],
  [`12'\n3"`, `12'`],
  [`8' 'name'`, `8'`],
  [`8' "name"`, `8'`],
  [`12' 3, 4'`, `12' 3`],
  [`12' 3 // 4"`, `12' 3`],
  [`6" 7'`, `6"`],
  [`4 m, 5 m`, `4 m`],
  [`10 mm to 12 mm`, `10 mm`],
  [`4 mm\u202Fover`, `4 mm`],
  [`2x4 posts`, `2x4`],
  [`7 ft 3 posts`, `7 ft`],
])('takes from %j only %j', (text, length) => {
  expect(token(text)).toBe(length);
});

it.each([
  '7',
  '7.5',
  '1/2',
  '3 max',
  '3 m-foo',
  '3 inner',
  '3 footings',
  '2 of strip',
  '20 %',
  '20%',
  '5 bays',
  '4 posts',
  '90°',
  '3\nm',
  '10 -\n1/2"',
  '7 "name"',
  `7 'name'`,
  'x7"',
  `'7'`,
  '"7"',
  '-7"',
  '.5"',
  '',
  '8, 10',
  '4 m2',
  '6 1/2 posts',
  '1/16\n',
])('takes nothing from %j', (text) => {
  expect(token(text)).toBeUndefined();
});

it('takes no longer for long texts than they are long', () => {
  const long = 20_000;
  const traps = [
    '1'.repeat(long),
    `7'${' '.repeat(long)}`,
    '1.'.repeat(long),
    '1,1'.repeat(long),
    `1${' '.repeat(long)}-`,
    `4${'z'.repeat(long)}`,
  ];
  const start = performance.now();
  for (const trap of traps) token(trap);
  // Linear work takes a few milliseconds; quadratic work on this length takes seconds.
  expect(performance.now() - start).toBeLessThan(500);
});
