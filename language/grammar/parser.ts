import {
  createParser,
  type LangiumCoreServices,
  LangiumParser,
  type ParseResult,
  type ParserOptions,
} from 'langium';
import { explainErrors } from './explain-errors.ts';
import { SyntaxWords } from './syntax-words.ts';

/** Langium's parser, whose error messages say what to write instead. */
export class SlatParser extends LangiumParser {
  private readonly words: SyntaxWords;

  constructor(services: LangiumCoreServices) {
    super(services);
    this.words = new SyntaxWords(services.Grammar);
  }

  override parse<T extends import('langium').AstNode>(
    input: string,
    options: ParserOptions = {},
  ): ParseResult<T> {
    const result = super.parse<T>(input, options);
    if (result.parserErrors.length === 0 || options.rule) return result;
    return { ...result, parserErrors: explainErrors(this.wrapper.input, result.parserErrors, this.words) };
  }
}

export function createSlatParser(services: LangiumCoreServices): SlatParser {
  const parser = createParser(services.Grammar, new SlatParser(services), services.parser.Lexer.definition);
  parser.finalize();
  return parser;
}
