import { DefaultLexer, type LangiumCoreServices, type LexerResult, type LexingDiagnostic } from 'langium';
import { grammarWords } from './grammar-words.ts';
import { isClosed } from './names.ts';
import { type StatementEnding, statementEnds } from './statement-ends.ts';

/** Langium's lexer, with the ends of lines kept only where they end a statement. */
export class SlatLexer extends DefaultLexer {
  private readonly starters: ReadonlySet<string>;
  private readonly way: StatementEnding;

  constructor(services: LangiumCoreServices, way: StatementEnding = 'line') {
    super(services);
    this.starters = grammarWords(services.Grammar).starters;
    this.way = way;
  }

  override tokenize(text: string): LexerResult {
    const result = super.tokenize(text);
    const diagnostics: LexingDiagnostic[] = [...(result.report?.diagnostics ?? [])];
    for (const token of result.tokens) {
      if (token.tokenType.name === 'STRING' && !isClosed(token.image)) {
        diagnostics.push({
          severity: 'error',
          message: `The quote ${token.image.charAt(0)} is not closed in this line.`,
          offset: token.startOffset,
          line: token.startLine,
          column: token.startColumn,
          length: token.image.length,
        });
      }
    }
    return {
      ...result,
      report: { diagnostics },
      tokens: statementEnds(result.tokens, this.starters, this.way),
    };
  }
}
