import { type Disposable, EventEmitter, type TextDocumentContentProvider, Uri } from 'vscode';
import type { SheetFile } from '../../../server/protocol.ts';
import { fileNameOf } from '../../infrastructure/index.ts';

/** Scheme of the addresses of sheets. */
export const SHEET_SCHEME = 'slatwright-sheet';

/** Sheets as documents that can be read and saved elsewhere, each as it was when last asked for. */
export class SheetFiles implements TextDocumentContentProvider, Disposable {
  private readonly changed = new EventEmitter<Uri>();
  readonly onDidChange = this.changed.event;
  private readonly texts = new Map<string, string>();

  /** Keeps a sheet of a document; answers with its address. */
  put(document: Uri, { name, text }: SheetFile): Uri {
    const job = fileNameOf(document).replace(/\.slat$/, '');
    const uri = Uri.from({ scheme: SHEET_SCHEME, path: `/${job}/${name}`, query: document.toString() });
    this.texts.set(uri.toString(), text);
    this.changed.fire(uri);
    return uri;
  }

  provideTextDocumentContent(uri: Uri): string {
    return this.texts.get(uri.toString()) ?? 'This sheet is from before. Ask for the takeoff again.\n';
  }

  dispose(): void {
    this.changed.dispose();
  }
}
