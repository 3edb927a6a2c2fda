import { Lexer } from 'chevrotain';
import { expect, it } from 'vitest';
import { AMOUNT_PATTERN, LENGTH_PATTERN } from '../units/index.ts';
import { SlatTerminals } from './generated/ast.ts';
import { createSlatCoreServices } from './index.ts';

const { slat } = createSlatCoreServices();
const { Lexer: lexer, LangiumParser: parser } = slat.parser;

function image(text: string): string[] {
  return lexer.tokenize(text).tokens.map((token) => `${token.tokenType.name} ${token.image}`);
}

it('reads lengths by the very pattern that units/ judges', () => {
  expect(SlatTerminals.LENGTH.source).toBe(LENGTH_PATTERN.source);
  expect(SlatTerminals.LENGTH.flags).toBe(LENGTH_PATTERN.flags);
});

it('reads amounts by the very pattern that units/ judges, and lengths beside them', () => {
  expect(SlatTerminals.AMOUNT.source).toBe(AMOUNT_PATTERN.source);
  expect(image('50 m/s 50 m 15 psf 20 °C 30° 115 mph')).toEqual([
    'AMOUNT 50 m/s',
    'LENGTH 50 m',
    'AMOUNT 15 psf',
    'AMOUNT 20 °C',
    'NUMBER 30',
    '° °',
    'AMOUNT 115 mph',
  ]);
});

it('lets the lexer tell every token by its first character', () => {
  // A terminal written so that this fails would slow down the whole lexer without a word.
  expect(() => new Lexer(Object.values(lexer.definition), { ensureOptimizations: true })).not.toThrow();
});

it.each(['\n', '\r\n', '\r'])('parses a file whose lines end in %j', (eol) => {
  const text = ['// note', 'run bank {', '  length 24\' 3"', "  height 6'", '}', ''].join(eol);
  const { parserErrors, lexerErrors, value } = parser.parse(text);
  expect([...parserErrors, ...lexerErrors]).toEqual([]);
  expect(value).toMatchObject({ elements: [{ name: 'bank', statements: [{}, {}] }] });
});

it('does not take a length mark for the start of a text', () => {
  expect(image(`12' 3-1/2"    made`)).toEqual([`LENGTH 12' 3-1/2"`, 'made made']);
});

it('tells of a quote that is not closed and of no other', () => {
  const told = (text: string) => lexer.tokenize(text).report?.diagnostics.map(({ message }) => message);
  expect(told('use "a.slat"\nuse \u201Cb.slat\u201D')).toEqual([]);
  expect(told('use "a.slat\n')).toEqual(['The quote " is not closed in this line.']);
  expect(told('"')).toEqual(['The quote " is not closed in this line.']);
});

it('reads a misspelled first word as the one it must mean, and says so', () => {
  const result = lexer.tokenize('boar a {\n  widt 5"\n}');
  expect(result.tokens.map((token) => token.tokenType.name)).toEqual([
    'board',
    'ID',
    '{',
    'width',
    'LENGTH',
    'END',
    '}',
  ]);
  expect(result.report?.diagnostics.map(({ message }) => message)).toEqual([
    '`boar` begins nothing that a file holds; did you mean `board`?',
    '`widt` is no statement of a board; did you mean `width`?',
  ]);
});

it('leaves a word alone that could mean two, or that is a name', () => {
  const kinds = (text: string) => lexer.tokenize(text).tokens.map((token) => token.tokenType.name);
  // One letter from `rip`, `run`'s neighbor, or from both of `fill` and `fit`.
  expect(kinds('run a {\n  fil p\n}')[3]).toBe('ID');
  expect(kinds('board a {\n  made of widt\n}')[5]).toBe('ID');
});

it('keeps words as typed for completion', () => {
  const { tokens, report } = lexer.tokenize('boar a {', { mode: 'partial' });
  expect(tokens[0]?.tokenType.name).toBe('ID');
  expect(report?.diagnostics).toEqual([]);
});
