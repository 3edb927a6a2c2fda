import {
  type AstNode,
  createCompletionParser,
  createParser,
  type LangiumCompletionParser,
  type LangiumCoreServices,
  LangiumParser,
  type ParseResult,
  type ParserOptions,
} from 'langium';
import { raiseBriefly } from './brief-errors.ts';
import { explainErrors } from './explain-errors.ts';
import { SlatLexer } from './lexer.ts';
import { SyntaxWords } from './syntax-words.ts';

/** Langium's parser, whose error messages say what to write instead, and which no text can make throw. */
export class SlatParser extends LangiumParser {
  private readonly words: SyntaxWords;

  constructor(services: LangiumCoreServices) {
    super(services);
    this.words = new SyntaxWords(services.Grammar);
  }

  override parse<T extends AstNode>(input: string, options: ParserOptions = {}): ParseResult<T> {
    const result = this.tryToParse<T>(input, options);
    if (result?.parserErrors.length === 0 || options.rule) return result ?? this.parseNothing();
    const { errors, strays, unreadable } = explainErrors(this.wrapper.input, this.words);
    if (!result) {
      // The parser recovers by recursion: thousands of errors in one block are too many for it.
      const readable = this.parseWithout<T>(unreadable, input, options) ?? this.parseNothing<T>();
      return { ...readable, parserErrors: errors };
    }
    // What the parser objects to and the explanation does not is still told.
    const told = errors.length > 0 ? errors : result.parserErrors.map(unexplained);
    const better = strays.size > 0 ? this.parseWithout<T>(strays, input, options) : undefined;
    return { ...(better ?? result), parserErrors: told };
  }

  private parseWithout<T extends AstNode>(
    offsets: ReadonlySet<number>,
    input: string,
    options: ParserOptions,
  ): ParseResult<T> | undefined {
    if (!(this.lexer instanceof SlatLexer)) return undefined;
    return this.lexer.avoiding(offsets, () => this.tryToParse<T>(input, options));
  }

  private parseNothing<T extends AstNode>(): ParseResult<T> {
    return super.parse<T>('');
  }

  private tryToParse<T extends AstNode>(input: string, options: ParserOptions): ParseResult<T> | undefined {
    try {
      return super.parse<T>(input, options);
    } catch {
      // Nodes half built would be taken for part of the next text.
      (this as unknown as { stack: unknown[] }).stack = [];
      return undefined;
    }
  }
}

function unexplained(error: ParseResult['parserErrors'][number]): ParseResult['parserErrors'][number] {
  return { ...error, name: error.name, message: 'This cannot be read here.' };
}

export function createSlatParser(services: LangiumCoreServices): SlatParser {
  const parser = createParser(services.Grammar, new SlatParser(services), services.parser.Lexer.definition);
  parser.finalize();
  raiseBriefly(parser);
  return parser;
}

/** The parser that finds what may come next; it meets an error wherever a text is still being typed. */
export function createSlatCompletionParser(services: LangiumCoreServices): LangiumCompletionParser {
  const parser = createCompletionParser(services);
  raiseBriefly(parser);
  return parser;
}
