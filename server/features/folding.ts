import type { AstNode, LangiumDocument } from 'langium';
import { DefaultFoldingRangeProvider, type FoldingRangeAcceptor } from 'langium/lsp';
import { FoldingRange, FoldingRangeKind } from 'vscode-languageserver-types';

/** Folds blocks, comments over several lines, and comment lines that follow one another. */
export class SlatFolding extends DefaultFoldingRangeProvider {
  protected override readonly commentNames = ['BLOCK_COMMENT'];

  protected override collectObjectFolding(
    document: LangiumDocument,
    node: AstNode,
    acceptor: FoldingRangeAcceptor,
  ): void {
    // A statement broken over lines is short; folding it would only add a sign to the margin.
    if (node.$cstNode?.text.endsWith('}')) super.collectObjectFolding(document, node, acceptor);
  }

  protected override collectCommentFolding(
    document: LangiumDocument,
    node: AstNode,
    acceptor: FoldingRangeAcceptor,
  ): void {
    super.collectCommentFolding(document, node, acceptor);
    const lines = document.textDocument.getText().split(/\r\n|\r|\n/);
    let first = -1;
    for (let line = 0; line <= lines.length; line++) {
      const comment = lines[line]?.trimStart().startsWith('//') ?? false;
      if (comment && first < 0) first = line;
      if (comment || first < 0) continue;
      if (line - first > 1) {
        const range = FoldingRange.create(first, line - 1, undefined, undefined, FoldingRangeKind.Comment);
        acceptor(range);
      }
      first = -1;
    }
  }
}
