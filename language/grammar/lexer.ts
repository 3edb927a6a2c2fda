import {
  DefaultLexer,
  type LangiumCoreServices,
  type LexerResult,
  type LexingDiagnostic,
  type TokenizeOptions,
} from 'langium';
import { misspelled } from './expectations.ts';
import { type GrammarWords, grammarWords } from './grammar-words.ts';
import { findMendedWords } from './mend-words.ts';
import { isClosed } from './names.ts';
import { type StatementEnding, statementEnds, type Token } from './statement-ends.ts';
import { boundText, type Unread } from './text-bounds.ts';

/**
 * Langium's lexer, with the ends of lines kept only where they end a statement, and with misspelled
 * first words read as what they are meant for. What it forgives it tells of in the lexer's report.
 */
export class SlatLexer extends DefaultLexer {
  private readonly words: GrammarWords;
  private readonly way: StatementEnding;
  private strays: ReadonlySet<number> = new Set();

  constructor(services: LangiumCoreServices, way: StatementEnding = 'line') {
    super(services);
    this.words = grammarWords(services.Grammar);
    this.way = way;
  }

  override tokenize(text: string, options?: TokenizeOptions): LexerResult {
    const { text: bounded, unread } = boundText(text);
    const result = super.tokenize(bounded, options);
    const visible = result.tokens.filter((token) => !this.strays.has(token.startOffset));
    const tokens = statementEnds(visible, this.words.starters, this.way);
    const diagnostics = [
      ...unread.map((part) => tooLong(text, part)),
      ...result.tokens.filter(isUnclosed).map(unclosed),
    ];
    // For completion the words stand as typed.
    if (options?.mode !== 'partial') diagnostics.push(...this.mend(tokens));
    return { ...result, tokens, report: { diagnostics } };
  }

  /** Tokenizes within `use` as if the words at the given offsets were not there. */
  avoiding<T>(offsets: ReadonlySet<number>, use: () => T): T {
    this.strays = offsets;
    try {
      return use();
    } finally {
      this.strays = new Set();
    }
  }

  private mend(tokens: Token[]): LexingDiagnostic[] {
    const told: LexingDiagnostic[] = [];
    for (const { place, as, block } of findMendedWords(tokens, this.words)) {
      const token = tokens[place];
      // No rule takes white space: a word of that kind is an error where it stands and nothing more.
      const kind = this.tokenTypes[as ?? 'WS'];
      if (!token || kind?.tokenTypeIdx === undefined) continue;
      tokens[place] = { ...token, tokenType: as ? kind : token.tokenType, tokenTypeIdx: kind.tokenTypeIdx };
      if (as) told.push(report(token, misspelled(token.image, as, block)));
    }
    return told;
  }
}

function isUnclosed(token: Token): boolean {
  return token.tokenType.name === 'STRING' && !isClosed(token.image);
}

function tooLong(text: string, { from, to, message }: Unread): LexingDiagnostic {
  const before = text.slice(0, from).split(/\r\n|\r|\n/);
  const column = (before.at(-1)?.length ?? 0) + 1;
  const length = /[\r\n]/.test(text.slice(from, to)) ? 1 : to - from;
  return { severity: 'error', message, offset: from, line: before.length, column, length };
}

function unclosed(token: Token): LexingDiagnostic {
  return report(token, `The quote ${token.image.charAt(0)} is not closed in this line.`);
}

function report(token: Token, message: string): LexingDiagnostic {
  return {
    severity: 'error',
    message,
    offset: token.startOffset,
    line: token.startLine,
    column: token.startColumn,
    length: token.image.length,
  };
}
