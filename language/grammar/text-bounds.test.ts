import { expect, it } from 'vitest';
import { createSlatCoreServices, type SlatFile } from './index.ts';
import { boundText, LONGEST_FILE, LONGEST_LINE } from './text-bounds.ts';

const { slat } = createSlatCoreServices();
const parse = (text: string) => slat.parser.LangiumParser.parse<SlatFile>(text);
const RUN = "run r {\n  height 6'\n}\n";

it('leaves a text within the bounds as it is', () => {
  const text = `${'x'.repeat(LONGEST_LINE)}\n`.repeat(20);
  expect(boundText(text)).toEqual({ text, unread: [] });
});

it('blanks the rest of a long line and of a long file, and says so', () => {
  const text = `${'a'.repeat(LONGEST_LINE + 7)}\r\n${'b\n'.repeat(LONGEST_FILE / 2)}`;
  const bounded = boundText(text);
  expect(bounded.text).toHaveLength(text.length);
  expect(bounded.text.slice(LONGEST_LINE, LONGEST_LINE + 9)).toBe('       \r\n');
  expect(bounded.unread.map(({ from, to }) => [from, to])).toEqual([
    [LONGEST_LINE, LONGEST_LINE + 7],
    [LONGEST_FILE, text.length],
  ]);
  expect(bounded.text.slice(LONGEST_FILE).trim()).toBe('');
});

it('reads on after a long line, and up to where a long file is cut', () => {
  const { value, lexerReport } = parse(`// ${'x'.repeat(LONGEST_LINE)}\n${RUN}`);
  expect(value.elements).toHaveLength(1);
  expect(lexerReport?.diagnostics[0]).toMatchObject({ line: 1, column: LONGEST_LINE + 1, length: 3 });
  const long = parse(RUN + '\n'.repeat(LONGEST_FILE) + RUN);
  expect(long.value.elements).toHaveLength(1);
  expect(long.lexerReport?.diagnostics.map(({ message }) => message)).toEqual([
    `This file is longer than ${LONGEST_FILE} characters; the rest is not read. Split it and join the parts with use.`,
  ]);
});

it.each([
  ['words that begin nothing', `run r {\n${'garbage 5\n'.repeat(6000)}}\n`],
  ['words at the top', 'garbage 5\n'.repeat(6000)],
  ['opening braces', '{'.repeat(6000)],
  ['closing braces', '}\n'.repeat(6000)],
  ['half-typed statements on one line', `run r { ${'length ovr posts '.repeat(6000)}}\n`],
  ['heads within heads', 'run r '.repeat(6000)],
  ['nested parentheses', `run r {\n fill p${'('.repeat(900)}${')'.repeat(900)}\n}\n`],
  ['unfinished lists', `run r {\n${'flip over,\nend\n'.repeat(6000)}`],
  ['comments never closed', '/*'.repeat(6000)],
  ['numbers with points', '1.'.repeat(6000)],
])('survives thousands of %s, and reads the next text as ever', { timeout: 30_000 }, (_title, text) => {
  const { value, parserErrors } = parse(text + RUN);
  expect(value.$type).toBe('SlatFile');
  expect(parserErrors.length).toBeLessThanOrEqual(200);
  const after = parse(RUN);
  expect(after.parserErrors).toEqual([]);
  expect(after.value.elements).toHaveLength(1);
});
