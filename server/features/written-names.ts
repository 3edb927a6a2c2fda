import { AstUtils, GrammarAST } from 'langium';
import { unquote, writtenName } from '../../language/grammar/index.ts';

/** Writes names as they may stand in a text: bare where they can, else in quotes. */
export class WrittenNames {
  private readonly reserved: ReadonlySet<string>;

  constructor(grammar: GrammarAST.Grammar) {
    this.reserved = reservedWords(grammar);
  }

  write(name: string): string {
    return writtenName(name, this.reserved);
  }

  /** A name as someone types it into a box: with its quotes or without. */
  read(typed: string): string {
    return unquote(typed.trim());
  }
}

/** Words of the language that cannot be names as they are. */
function reservedWords(grammar: GrammarAST.Grammar): ReadonlySet<string> {
  const words = new Set<string>();
  const free = new Set<string>();
  for (const rule of grammar.rules) {
    for (const node of AstUtils.streamAst(rule)) {
      if (GrammarAST.isKeyword(node)) (rule.name === 'Name' ? free : words).add(node.value);
    }
  }
  for (const word of free) words.delete(word);
  return words;
}
