import { type TextDocument, Uri, window, workspace } from 'vscode';

/** The document a command is about: the one named, by its address, else that of the active editor; else says what to do. */
export async function askedDocument(asked: unknown): Promise<TextDocument | undefined> {
  if (asked instanceof Uri) return workspace.openTextDocument(asked);
  if (typeof asked === 'string') return workspace.openTextDocument(Uri.parse(asked));
  const editors = [window.activeTextEditor, ...window.visibleTextEditors];
  const slat = editors.find((editor) => editor?.document.languageId === 'slat');
  if (!slat) void window.showInformationMessage('Open a .slat file first.');
  return slat?.document;
}
