import {
  type Disposable,
  Range,
  Selection,
  type TextEditor,
  TextEditorRevealType,
  ThemeColor,
  Uri,
  ViewColumn,
  window,
} from 'vscode';
import type { Place } from '../../server/protocol.ts';

/** How long a revealed statement stays marked. */
const MARKED_MS = 1600;

/**
 * Leads from pieces to the text: puts the cursor there and marks the statement for a moment. The
 * focus stays where it is, nothing is selected that a key could overwrite.
 */
export class SourceReveal implements Disposable {
  private readonly mark = window.createTextEditorDecorationType({
    backgroundColor: new ThemeColor('editor.findMatchHighlightBackground'),
    borderRadius: '2px',
  });
  private timer: ReturnType<typeof setTimeout> | undefined;
  /** Where the cursor was last put from here, so that its moving there is not taken for the user's. */
  private put = '';

  /** `echoes`: what was clicked is lit in the picture already, so the cursor's moving there lights nothing anew. */
  async show({ uri, start, end }: Place, echoes = true): Promise<void> {
    const range = new Range(start.line, start.character, end.line, end.character);
    const editor = await this.editorOf(Uri.parse(uri), true);
    const cursor = new Selection(range.start, range.start);
    this.put = echoes ? placeOf(editor, cursor) : '';
    editor.selection = cursor;
    editor.revealRange(range, TextEditorRevealType.InCenterIfOutsideViewport);
    editor.setDecorations(this.mark, [range]);
    clearTimeout(this.timer);
    this.timer = setTimeout(() => {
      for (const shown of window.visibleTextEditors) shown.setDecorations(this.mark, []);
    }, MARKED_MS);
  }

  /** Shows a document's text and gives it the focus. */
  async showDocument(uri: Uri): Promise<void> {
    await this.editorOf(uri, false);
  }

  /** Whether an editor's cursor stands where it was put from here. */
  isEcho(editor: TextEditor): boolean {
    return this.put !== '' && this.put === placeOf(editor, editor.selection);
  }

  /** The user has moved the cursor: what comes next is no echo. */
  forget(): void {
    this.put = '';
  }

  dispose(): void {
    clearTimeout(this.timer);
    this.mark.dispose();
  }

  /** The editor that shows a document already, or one in a column of texts rather than over the picture. */
  private async editorOf(uri: Uri, preserveFocus: boolean): Promise<TextEditor> {
    const shown = window.visibleTextEditors.filter(({ viewColumn }) => viewColumn !== undefined);
    const own = shown.find(({ document }) => document.uri.toString() === uri.toString());
    const viewColumn = own?.viewColumn ?? shown[0]?.viewColumn ?? ViewColumn.One;
    if (own && preserveFocus) return own;
    return window.showTextDocument(uri, { viewColumn, preserveFocus });
  }
}

function placeOf({ document }: TextEditor, { start, end }: Selection): string {
  return `${document.uri} ${start.line}:${start.character}-${end.line}:${end.character}`;
}
