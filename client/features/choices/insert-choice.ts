import { Range, type TextDocument, Uri, WorkspaceEdit, window, workspace } from 'vscode';
import type { BetterFound } from '../../../server/protocol.ts';

/** Puts a choice into the text, as one change that can be taken back; not into a text that has moved on meanwhile. */
export async function insertChoice(
  document: TextDocument,
  { textVersion }: BetterFound,
  { edits }: BetterFound['choices'][number],
): Promise<void> {
  if (document.isClosed || document.version !== textVersion) {
    void window.showWarningMessage(
      'The text has changed since these choices were found. Look for them again.',
    );
    return;
  }
  const change = new WorkspaceEdit();
  for (const { uri, start, end, text } of edits)
    change.replace(Uri.parse(uri), new Range(start.line, start.character, end.line, end.character), text);
  if (!(await workspace.applyEdit(change)))
    void window.showWarningMessage('The choice could not be put into the text.');
}
