import {
  type AstNode,
  createParser,
  type LangiumCoreServices,
  LangiumParser,
  type ParseResult,
  type ParserOptions,
} from 'langium';
import { explainErrors } from './explain-errors.ts';
import { SlatLexer } from './lexer.ts';
import { SyntaxWords } from './syntax-words.ts';

/** Langium's parser, whose error messages say what to write instead. */
export class SlatParser extends LangiumParser {
  private readonly words: SyntaxWords;

  constructor(services: LangiumCoreServices) {
    super(services);
    this.words = new SyntaxWords(services.Grammar);
  }

  override parse<T extends AstNode>(input: string, options: ParserOptions = {}): ParseResult<T> {
    const result = super.parse<T>(input, options);
    if (result.parserErrors.length === 0 || options.rule) return result;
    const { errors, strays } = explainErrors(this.wrapper.input, result.parserErrors, this.words);
    if (strays.size === 0 || !(this.lexer instanceof SlatLexer)) return { ...result, parserErrors: errors };
    // The parser took a word such as `posts` in a broken `length 18' ovr posts` for a statement.
    const again = this.lexer.avoiding(strays, () => super.parse<T>(input, options));
    return { ...again, parserErrors: errors };
  }
}

export function createSlatParser(services: LangiumCoreServices): SlatParser {
  const parser = createParser(services.Grammar, new SlatParser(services), services.parser.Lexer.definition);
  parser.finalize();
  return parser;
}
