import { expect, it } from 'vitest';
import { createSlatCoreServices, quoted, type SlatFile, unquote, writtenName } from './index.ts';

const { slat } = createSlatCoreServices();
const name = (written: string) => {
  const file = slat.parser.LangiumParser.parse<SlatFile>(`run ${written} {\n}`).value;
  return (file.elements[0] as { name?: string } | undefined)?.name;
};

it.each([
  ['bank', 'bank'],
  ['fir-4x4', 'fir-4x4'],
  ['front', 'front'],
  ['"north bank"', 'north bank'],
  ['"2x4"', '2x4'],
  ['"post"', 'post'],
  ['\u201CS\u00FCdhang\u201D', 'S\u00FCdhang'],
  ['L\u00E4rche', 'L\u00E4rche'],
  ['"a\\b"', 'a\\b'],
  ['""', ''],
])('reads the name %s', (written, read) => {
  expect(name(written)).toBe(read);
});

it('forgives a missing closing quote', () => {
  expect(name('"north bank')).toBe('north bank {');
  expect(unquote('"')).toBe('');
  expect(unquote('\u201Copen')).toBe('open');
});

it('writes a name so that it is read back', () => {
  const reserved = new Set(['post']);
  expect(writtenName('bank', reserved)).toBe('bank');
  for (const each of ['post', '2x4', 'north bank', '3/4" lath', "gardener's", '']) {
    expect(unquote(writtenName(each, reserved))).toBe(each);
  }
  expect(quoted('a\nb')).toBe('"a b"');
});
