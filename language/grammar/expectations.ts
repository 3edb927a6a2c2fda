import type { NameKind } from './kinds.ts';
import type { Expectation } from './syntax-words.ts';

const LENGTH = 'a length such as 24\' 3" or 2400 mm';
const MOST_LISTED = 5;

const NAME_OF: Readonly<Record<NameKind, string>> = {
  stock: 'the name of stock',
  cap: 'the name of a cap',
  material: 'the name of a material',
  pattern: 'the name of a pattern',
  deck: 'the name of a deck',
  run: 'the name of a run',
  gate: 'the name of a gate',
  viewer: 'the name of a viewer',
  place: 'the name of a place',
  option: 'the name of an option',
  parameter: 'the name of a parameter',
};

/** What blocks are called in messages. */
export function blockWord(type: string): string {
  return type.replace(/(?<=[a-z])(?=[A-Z])/g, ' ').toLowerCase();
}

/** `a, b or c`, cut short after five. */
export function oneOf(words: readonly string[]): string {
  const listed = words.slice(0, MOST_LISTED);
  if (words.length > MOST_LISTED) return `${listed.join(', ')} or others`;
  const last = listed.at(-1) ?? '';
  return listed.length > 1 ? `${listed.slice(0, -1).join(', ')} or ${last}` : last;
}

export function code(text: string): string {
  return `\`${text}\``;
}

/** What to say of a misspelled first word of a statement, or without a block of an element. */
export function misspelled(image: string, meant: string, block?: string): string {
  const wrong = block ? `is no statement of a ${blockWord(block)}` : 'begins nothing that a file holds';
  return `${code(image)} ${wrong}; did you mean ${code(meant)}?`;
}

/** What may stand at a place, in words. `mayEnd` when the statement may be over there too. */
export function describe(expected: readonly Expectation[], mayEnd: boolean): string {
  const lengthToo = expected.some((expectation) => expectation.kind === 'length');
  const parts = new Set<string>();
  for (const expectation of expected) {
    // A parameter may stand for every length; saying so each time would only confuse.
    if (lengthToo && expectation.kind === 'name' && expectation.of === 'parameter') continue;
    parts.add(described(expectation, lengthToo));
  }
  if (mayEnd) parts.add('the end of the line');
  return oneOf([...parts]);
}

function described(expectation: Expectation, lengthToo: boolean): string {
  switch (expectation.kind) {
    case 'word':
      return code(expectation.word);
    case 'name':
      return expectation.of ? NAME_OF[expectation.of] : 'a name';
    case 'length':
      return LENGTH;
    case 'token':
      if (expectation.token === 'NUMBER') return lengthToo ? LENGTH : 'a number';
      return expectation.token === 'STRING' ? 'a text in quotes' : 'a word';
  }
}
