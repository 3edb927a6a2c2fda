import { expect, it } from 'vitest';
import { createSlatCoreServices, grammarWords, type StatementEnding, statementEnds } from './index.ts';

const { slat } = createSlatCoreServices();
const { starters } = grammarWords(slat.Grammar);

/** The visible tokens, line ends as `|` and marks as `;`. */
function ended(text: string, way: StatementEnding = 'line'): string {
  // The lexer behind the language's own, which has dropped nothing yet.
  const raw = slat.parser.Lexer as unknown as {
    chevrotainLexer: { tokenize(text: string): { tokens: never[] } };
  };
  const { tokens } = raw.chevrotainLexer.tokenize(text);
  return statementEnds(tokens, starters, way)
    .map((token) => (token.tokenType.name === 'END' ? token.image.replace(/[\r\n]+/, '|') : token.image))
    .join(' ');
}

it.each([
  ['ends a statement at the end of its line', 'gap a\nend on b', 'gap a | end on b'],
  ['ends it at a semicolon', 'gap a; end on b', 'gap a ; end on b'],
  ['drops what stands at the start and what is repeated', '\n\n;gap a\n\n;\n\nend on b', 'gap a | end on b'],
  ['goes on after a comma', 'repeat a,\n  b', 'repeat a , b'],
  ['goes on before a comma', 'repeat a\n  , b', 'repeat a , b'],
  ['goes on before else', 'fit move ends\n  else short repeat', 'fit move ends else short repeat'],
  ['goes on inside parentheses', 'fill p(\n a\n =\n 3"\n)\nflip over', 'fill p ( a = 3" ) | flip over'],
  ['begins nothing after an opening brace', 'run a {\n gap', 'run a { gap'],
  ['ends before a closing brace', 'gap a\n}', 'gap a | }'],
  ['ends after a comma when a statement begins', 'repeat a,\ngap 1"', 'repeat a , | gap 1"'],
  ['goes on with `end for end` after a comma', 'flip over,\nend for end', 'flip over , end for end'],
  ['but not with `end gap`', 'flip over,\nend gap 1"', 'flip over , | end gap 1"'],
  [
    'goes on with a point after a comma',
    `ground at 0' up 1",\nat 9' down 2"`,
    `ground at 0' up 1" , at 9' down 2"`,
  ],
  ['but not with a spot', `eye 5',\nat 9' along b`, `eye 5' , | at 9' along b`],
  ['is not held by parentheses never closed', 'fill p(a = b\nflip over\n}', 'fill p ( a = b | flip over | }'],
  ['keeps a mark after a comma', 'repeat a,; b', 'repeat a , ; b'],
  ['reads a lone carriage return', 'gap a\rend on b', 'gap a | end on b'],
  ['reads carriage return and line feed as one', 'gap a\r\nend on b\r\n', 'gap a | end on b |'],
])('%s', (_title, text, expected) => {
  expect(ended(text)).toBe(expected);
});

it('counts marks only, or nothing, when asked to', () => {
  expect(ended('gap a\nend on b; fit move ends\n', 'mark')).toBe('gap a end on b ; fit move ends');
  expect(ended('gap a\nend on b; fit move ends\n', 'none')).toBe('gap a end on b fit move ends');
});
