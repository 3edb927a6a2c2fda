import { AstUtils, createLangiumParser, type LangiumParser } from 'langium';
import { expect, it } from 'vitest';
import { BRIEF_MESSAGE, raiseBriefly } from './brief-errors.ts';
import { createSlatCoreServices } from './services.ts';

const TEXT = `use "library/stock.slat"
pattern even(space = 1/2") { repeat cedar-6, 2 of cedar-4; gap space; fit gaps 3/8" to 5/8", else rip last }
run court {
  length 23' 6" over posts
  posts fir-4x4, at most 5' clear
  height 6'    bottom 2" to 4" above ground
  fill even(space = 9/16")
}
gate cycles in court { opening 42" from 9' 6"; hinges on left }
`;

/** The library's own parser, less what this language adds to it. */
const plain = createLangiumParser(createSlatCoreServices().slat);
const brief = createLangiumParser(createSlatCoreServices().slat);
raiseBriefly(brief);

/** All that a parser makes of a text, but for what its errors say. */
function readingOf(parser: LangiumParser, text: string) {
  const { value, parserErrors } = parser.parse(text);
  const errors = parserErrors.map(({ name, token, context, resyncedTokens }) => ({
    name,
    at: token.startOffset,
    rules: context.ruleStack,
    skipped: resyncedTokens.map(({ image }) => image),
  }));
  return { errors, nodes: [...AstUtils.streamAst(value)].map((node) => [node.$type, node.$cstNode?.text]) };
}

it('reads and recovers as the library does, where a text is cut off or lacks a letter', () => {
  const names = new Set<string>();
  for (let at = 0; at < TEXT.length; at += 3) {
    for (const damaged of [TEXT.slice(0, at), TEXT.slice(0, at) + TEXT.slice(at + 1)]) {
      const reading = readingOf(brief, damaged);
      expect(reading).toEqual(readingOf(plain, damaged));
      for (const { name } of reading.errors) names.add(name);
    }
  }
  expect(names).toContain('NoViableAltException');
});

it('lists nothing of what could have stood there', () => {
  const text = TEXT.replace('length', 'lenth').replace('cedar-6, ', `cedar-6${', '.repeat(40)}`);
  const messages = brief.parse(text).parserErrors.map(({ message }) => message);
  expect(messages).toContain(BRIEF_MESSAGE);
  expect(messages.filter((message) => message.includes('one of these possible'))).toEqual([]);
  // Were the library ever to list less by itself, this would tell.
  expect(
    plain
      .parse(text)
      .parserErrors.map(({ message }) => message)
      .join(),
  ).toContain('one of these possible');
});
