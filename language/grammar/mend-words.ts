import { type BlockWords, elementType, type GrammarWords } from './grammar-words.ts';
import { editDistance } from './near-names.ts';
import type { Token } from './statement-ends.ts';

/** A word read as another: misspelled, or out of place. */
export interface Mended {
  /** Place in the list of tokens. */
  readonly place: number;
  /** The word it is read as; none for a word that may not count as one where it stands. */
  readonly as?: string;
  /** Node type of the block it stands in; none at the top of the file. */
  readonly block?: string;
}

/**
 * Finds single misspelled words that would cost much more than themselves. `boar larch-5 {` without
 * its `d` would lose the whole block, `post` for `posts` in a run would end the run. Each is one
 * letter away from the only word it can be meant for; it is read as that and told of. A word such as
 * `post` within a statement is kept from ending the block.
 *
 * @param tokens with the ends of statements settled
 */
export function findMendedWords(tokens: readonly Token[], words: GrammarWords): Mended[] {
  const mended: Mended[] = [];
  let block: BlockWords | undefined;
  let head = '';
  let second: string | undefined;
  let starts = true;
  for (const [place, token] of tokens.entries()) {
    const word = token.tokenType.name;
    if (word === 'END' || word === '{' || word === '}') {
      if (word === '{') block ??= words.blocks.get(elementType(words, head, second) ?? '');
      else if (word === '}') block = undefined;
      starts = true;
      continue;
    }
    const element = words.elements.has(word);
    if (starts && !block) {
      const meant =
        word === 'ID' && bracedLine(tokens, place) ? oneLetterOff(token.image, words.elements) : undefined;
      if (meant) mended.push({ place, as: meant });
      head = meant ?? word;
      second = tokens[place + 1]?.tokenType.name;
    } else if (starts && block && !block.starters.has(word) && (element || word === 'ID')) {
      const meant = bracedLine(tokens, place) ? undefined : oneLetterOff(token.image, block.starters);
      if (meant) mended.push({ place, as: meant, block: block.type });
      else if (element) {
        block = undefined;
        head = word;
        second = tokens[place + 1]?.tokenType.name;
      }
    } else if (block && element && !block.words.has(word)) mended.push({ place, block: block.type });
    starts = false;
  }
  return mended;
}

/** Whether a brace opens before the line ends: then it is the head of a block. */
function bracedLine(tokens: readonly Token[], from: number): boolean {
  for (let place = from; place < tokens.length; place++) {
    const word = tokens[place]?.tokenType.name;
    if (word === '{') return true;
    if (word === 'END' || word === '}') return false;
  }
  return false;
}

function oneLetterOff(image: string, words: ReadonlySet<string>): string | undefined {
  const near = [...words].filter((word) => editDistance(image, word, 1) === 1);
  return near.length === 1 ? near[0] : undefined;
}
