import { CstUtils, type LangiumDocument } from 'langium';
import { DefaultRenameProvider } from 'langium/lsp';
import {
  LSPErrorCodes,
  type RenameParams,
  ResponseError,
  type TextDocumentPositionParams,
} from 'vscode-languageserver';
import type { Range, TextEdit, WorkspaceEdit } from 'vscode-languageserver-types';
import type { SlatServices } from '../services.ts';
import { WrittenNames } from './written-names.ts';

/** Renames a thing and everything that refers to it, in all files, in quotes where the new name needs them. */
export class SlatRename extends DefaultRenameProvider {
  private readonly names: WrittenNames;

  constructor(services: SlatServices) {
    super(services);
    this.names = new WrittenNames(services.Grammar);
  }

  override async rename(document: LangiumDocument, params: RenameParams): Promise<WorkspaceEdit | undefined> {
    const name = this.names.read(params.newName);
    if (name === '')
      throw new ResponseError(LSPErrorCodes.RequestFailed, 'A name needs at least one letter.');
    const found = await super.rename(document, { ...params, newName: this.names.write(name) });
    if (!found?.changes) return found;
    const changes = Object.entries(found.changes).map(([uri, edits]) => [uri, distinct(edits)]);
    return { changes: Object.fromEntries(changes) };
  }

  override prepareRename(document: LangiumDocument, params: TextDocumentPositionParams): Range | undefined {
    const range = this.renameNodeRange(document, params.position);
    const root = document.parseResult.value.$cstNode;
    if (!range || !root) return undefined;
    // The whole of a name that is made of several words of the grammar, quotes and all.
    const leaf = CstUtils.findLeafNodeAtOffset(root, document.textDocument.offsetAt(range.start));
    return leaf ? (CstUtils.getDatatypeNode(leaf)?.range ?? range) : range;
  }

  protected override isNameNode(leaf: Parameters<DefaultRenameProvider['isNameNode']>[0]): boolean {
    if (!leaf) return false;
    const name = this.nameProvider.getNameNode(leaf.astNode);
    return name !== undefined && leaf.offset >= name.offset && leaf.end <= name.end;
  }
}

/** A definition that is also found as a reference would be edited twice. */
function distinct(edits: readonly TextEdit[]): TextEdit[] {
  const seen = new Map(edits.map((edit) => [`${edit.range.start.line}:${edit.range.start.character}`, edit]));
  return [...seen.values()];
}
