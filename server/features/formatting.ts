import { AstUtils, type LangiumDocument, type Lexer, TextDocument } from 'langium';
import type { Formatter } from 'langium/lsp';
import type {
  DocumentFormattingParams,
  DocumentOnTypeFormattingParams,
  DocumentRangeFormattingParams,
} from 'vscode-languageserver';
import type { FormattingOptions, Range, TextEdit } from 'vscode-languageserver-types';
import type { SlatServices } from '../services.ts';
import { layOutText, type Word } from './format-text.ts';

const COMMENTS: ReadonlySet<string> = new Set(['BLOCK_COMMENT', 'LINE_COMMENT']);

/** Lays out a file, a part of it, or the line of a brace just typed. Text it cannot read it leaves alone. */
export class SlatFormatter implements Formatter {
  private readonly lexer: Lexer;

  constructor(services: SlatServices) {
    this.lexer = services.parser.Lexer;
  }

  get formatOnTypeOptions() {
    return { firstTriggerCharacter: '}' };
  }

  formatDocument(document: LangiumDocument, { options }: DocumentFormattingParams): TextEdit[] {
    return this.edits(document, options);
  }

  formatDocumentRange(
    document: LangiumDocument,
    { options, range }: DocumentRangeFormattingParams,
  ): TextEdit[] {
    return this.edits(document, options).filter((edit) => isWithin(edit.range, range));
  }

  formatDocumentOnType(
    document: LangiumDocument,
    { options, position }: DocumentOnTypeFormattingParams,
  ): TextEdit[] {
    return this.edits(document, options).filter(({ range }) => range.end.line === position.line);
  }

  private edits(document: LangiumDocument, options: FormattingOptions): TextEdit[] {
    const { textDocument } = document;
    const words = this.words(document);
    if (!words) return [];
    const step = options.insertSpaces ? ' '.repeat(options.tabSize) : '\t';
    const edits = layOutText(textDocument, words, step);
    const after = TextDocument.applyEdits(textDocument, edits);
    // White space can hold tokens apart; should a text be read otherwise now, it stays as it is.
    return this.images(after) === this.images(textDocument.getText()) ? edits : [];
  }

  /** Undefined when there is something in the text that is no token at all. */
  private words(document: LangiumDocument): Word[] | undefined {
    const { tokens, hidden, errors } = this.lexer.tokenize(document.textDocument.getText());
    if (errors.length > 0) return undefined;
    const begins = beginnings(document);
    const comments = hidden.filter((token) => COMMENTS.has(token.tokenType.name));
    const words: Word[] = [];
    let ended = true;
    for (const token of [...tokens, ...comments].sort((a, b) => a.startOffset - b.startOffset)) {
      const { startOffset: offset, image, tokenType } = token;
      if (tokenType.name === 'END') ended = true;
      else if (COMMENTS.has(tokenType.name))
        words.push({ offset, image, kind: 'comment', begins: false, ended });
      else {
        words.push({
          offset,
          image,
          kind: 'token',
          begins: begins.has(offset),
          ended: ended || image === '}',
        });
        ended = image === '{';
      }
    }
    return words;
  }

  private images(text: string): string {
    const { tokens, hidden } = this.lexer.tokenize(text);
    const comments = hidden.filter((token) => COMMENTS.has(token.tokenType.name));
    const image = (token: { image: string; tokenType: { name: string } }) =>
      token.tokenType.name === 'END' ? '\n' : token.image;
    // A line end at the end of the file ends no statement that was not over anyway.
    const last = tokens.findLastIndex(({ tokenType }) => tokenType.name !== 'END');
    return [...tokens.slice(0, last + 1).map(image), ...comments.map(image)].join('\u0000');
  }
}

function beginnings(document: LangiumDocument): ReadonlySet<number> {
  const found = new Set<number>();
  for (const node of AstUtils.streamAst(document.parseResult.value)) {
    const inList = node.$containerProperty === 'statements' || node.$containerProperty === 'elements';
    if (inList && node.$cstNode) found.add(node.$cstNode.offset);
  }
  return found;
}

function isWithin(inner: Range, outer: Range): boolean {
  const after =
    inner.start.line > outer.start.line ||
    (inner.start.line === outer.start.line && inner.start.character >= outer.start.character);
  const before =
    inner.end.line < outer.end.line ||
    (inner.end.line === outer.end.line && inner.end.character <= outer.end.character);
  return after && before;
}
