import { globSync, readFileSync } from 'node:fs';
import { beforeAll, expect, it } from 'vitest';
import type { IGrammar } from 'vscode-textmate';
import { AMOUNT_PATTERN, LENGTH_PATTERN } from '../../language/units/index.ts';
import { type Colored, colorLines, loadGrammar } from './testing/tokenize.ts';

let grammar: IGrammar;
beforeAll(async () => {
  grammar = await loadGrammar();
});

const LENGTH = 'constant.numeric.length.slat';
const line = (text: string): Colored[] => colorLines(grammar, text)[0] ?? [];
const scopeOf = (text: string, part: string): string | undefined =>
  line(text).find((token) => token.text.trim() === part)?.scope;

it.each([
  `12' 3-1/2"`,
  `7' 6-1/2"`,
  `7'6 1/2"`,
  `7'-6 1/2"`,
  `12'3"`,
  `90-1/2"`,
  `1/2"`,
  `7.5'`,
  `7'`,
  `6.5"`,
  '2.4 m',
  '240 cm',
  '2400 mm',
  '2400mm',
  '7\u2019 6-1/2\u201D',
  '7\u2032 6\u2033',
  `7' 6''`,
  `10 - 1/2"`,
  '4,200 mm',
])('colors %s as one length and the statement after it as a statement', (length) => {
  const tokens = line(`  height ${length}    bottom ${length} above ground`);
  expect(tokens.filter(({ scope }) => scope === LENGTH).map(({ text }) => text)).toEqual([length, length]);
  expect(tokens.filter(({ scope }) => scope.startsWith('string'))).toEqual([]);
  expect(tokens.find(({ text }) => text === 'bottom')?.scope).toBe('keyword.other.statement.slat');
});

it('colors every length of a list by itself', () => {
  const lengths = line(`  lengths 8', 10', 12' // no 14'`).filter(({ scope }) => scope === LENGTH);
  expect(lengths.map(({ text }) => text)).toEqual(["8'", "10'", "12'"]);
});

it('takes for a length what the lexer takes for one', () => {
  const path = new URL('./slat.tmLanguage.json', import.meta.url);
  const { repository } = JSON.parse(readFileSync(path, 'utf8'));
  const spelled = LENGTH_PATTERN.source.replaceAll(/\\u([0-9A-F]{4})/g, '\\x{$1}');
  expect(repository.length.match).toBe(spelled);
  const amount = AMOUNT_PATTERN.source.replaceAll(/\\u([0-9A-F]{4})/g, '\\x{$1}');
  expect(repository.amount.match).toBe(amount);
});

it('colors loads, speeds and temperatures as amounts, beside lengths', () => {
  const wind = '  wind 115 mph, exposure B, by ASCE 7-16    frost 36"';
  expect(scopeOf(wind, '115 mph')).toBe('constant.numeric.amount.slat');
  expect(scopeOf(wind, 'ASCE 7-16')).toBe('constant.language.slat');
  expect(scopeOf(wind, 'frost')).toBe('keyword.other.statement.slat');
  expect(scopeOf('  wind 50 m/s, exposure C, by ASCE 7-22', '50 m/s')).toBe('constant.numeric.amount.slat');
});

it('colors strings in both quotes, and ends an unclosed one at its line', () => {
  expect(scopeOf('use "library/stock.slat"', '"library/stock.slat"')).toBe('string.quoted.double.slat');
  expect(scopeOf("use 'stock.slat'", "'stock.slat'")).toBe('string.quoted.single.slat');
  const [open, next] = colorLines(grammar, 'use "library/stock\nrun bank {');
  expect(open?.at(-1)).toEqual({ text: '"library/stock', scope: 'string.quoted.double.slat' });
  expect(next?.[0]).toMatchObject({ scope: expect.stringContaining('keyword') });
});

it('colors comments, a mark inside them opening nothing', () => {
  expect(line(`// the 7' 6" bay isn't wide`)).toEqual([
    { text: `// the 7' 6" bay isn't wide`, scope: 'comment.line.double-slash.slat' },
  ]);
  const [, middle, after] = colorLines(grammar, `/* first\n it's 5" */ gap 1/2"\nend whole`);
  expect(middle?.map(({ scope }) => scope)).toEqual([
    'comment.block.slat',
    'comment.block.slat',
    'keyword.other.statement.slat',
    LENGTH,
  ]);
  expect(after?.[0]?.scope).toBe('keyword.other.statement.slat');
});

it('colors names by what they are', () => {
  expect(scopeOf('board cedar-6 {', 'cedar-6')).toBe('entity.name.type.slat');
  expect(scopeOf('pattern even(slat = cedar-6) {', 'even')).toBe('entity.name.function.slat');
  expect(scopeOf('pattern even(slat = cedar-6) {', 'slat')).toBe('variable.parameter.slat');
  expect(scopeOf('  fill even(slat = cedar-4)', 'even')).toBe('entity.name.function.slat');
  expect(scopeOf('  repeat end-board, 2 of top-strip', 'end-board')).toBe('variable.other.slat');
  expect(scopeOf('  repeat end-board, 2 of top-strip', 'top-strip')).toBe('variable.other.slat');
});

it('colors every word of the language', () => {
  const generated = new URL('../../language/grammar/generated/grammar.ts', import.meta.url);
  const keywords = readFileSync(generated, 'utf8').matchAll(/"\$type":"Keyword","value":"([^"]+)"/g);
  const words = [...new Set([...keywords].map(([, word]) => word as string))];
  expect(words.length).toBeGreaterThan(60);
  const plain = words.filter((word) => {
    const token = line(`  ${word} `).find(({ text }) => text.trim() === word);
    return !token || !/^(keyword|constant|punctuation)/.test(token.scope);
  });
  expect(plain).toEqual([]);
});

it('leaves no visible text of the examples without a color', () => {
  const examples = globSync('examples/**/*.slat');
  expect(examples.length).toBeGreaterThan(2);
  for (const path of examples) {
    const bare = colorLines(grammar, readFileSync(path, 'utf8')).flat();
    expect(bare.filter(({ scope }) => scope === 'source.slat')).toEqual([]);
  }
});
