import { GrammarAST } from 'langium';

/** Whether a word is what a statement or an element after this rule begins with. */
export function isFirstWord(rule: GrammarAST.ParserRule, word: GrammarAST.Keyword): boolean {
  const first = (element: GrammarAST.AbstractElement): boolean => {
    if (element === word) return true;
    if (!GrammarAST.isGroup(element)) return false;
    const begin = element.elements.find((part) => !GrammarAST.isAction(part));
    return begin !== undefined && first(begin);
  };
  return first(rule.definition);
}

/** A word with the words that must follow it: `move ends`, `end for end`, `on center`. */
export function phraseOf(word: GrammarAST.Keyword): string {
  const part: GrammarAST.AbstractElement = GrammarAST.isAssignment(word.$container) ? word.$container : word;
  const around: unknown = part.$container;
  if (!GrammarAST.isGroup(around)) return word.value;
  const words = [word.value];
  for (const next of around.elements.slice(around.elements.indexOf(part) + 1)) {
    if (!GrammarAST.isKeyword(next) || next.cardinality || !/\p{L}/u.test(next.value)) break;
    words.push(next.value);
  }
  return words.join(' ');
}
