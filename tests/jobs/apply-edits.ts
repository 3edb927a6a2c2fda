import type { LangiumDocument } from 'langium';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { changeToEdit, type TextChange } from '../../language/grammar/index.ts';

/** The text of a document with changes applied, as an editor applies them. Each must still have its place. */
export function textAfter(document: LangiumDocument, changes: readonly TextChange[]): string {
  const edits = changes.map((change) => {
    if (change.uri !== document.uri.toString()) throw new Error(`a change of ${change.uri}`);
    const edit = changeToEdit(document, change);
    if (!edit) throw new Error(`no place for ${change.text} at ${change.path}`);
    return edit;
  });
  const { textDocument } = document;
  const copy = TextDocument.create(document.uri.toString(), 'slat', 1, textDocument.getText());
  return TextDocument.applyEdits(copy, edits);
}

/** A text with one passage replaced; the passage must be there, once. */
export function replaceText(text: string, passage: string, by: string): string {
  const parts = text.split(passage);
  if (parts.length !== 2) throw new Error(`${parts.length - 1} times in the text: ${passage}`);
  return parts.join(by);
}
