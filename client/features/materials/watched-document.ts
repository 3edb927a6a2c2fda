import { type Disposable, EventEmitter, type TextDocument, window, workspace } from 'vscode';
import { DisposableStore } from '../../infrastructure/index.ts';

/**
 * The .slat document someone works on: the one in the active editor, or the last that was, as long as it is open; so
 * that a click into a picture or a panel changes nothing.
 */
export class WatchedDocument implements Disposable {
  private readonly store = new DisposableStore();
  private readonly changed = this.store.add(new EventEmitter<void>());
  readonly onChanged = this.changed.event;
  private document: TextDocument | undefined;

  constructor() {
    this.document = slatOf(window.activeTextEditor?.document);
    this.store.add(window.onDidChangeActiveTextEditor((editor) => this.take(slatOf(editor?.document))));
    this.store.add(
      workspace.onDidCloseTextDocument((closed) => {
        if (closed !== this.document) return;
        this.document = undefined;
        this.take(window.visibleTextEditors.flatMap(({ document }) => slatOf(document) ?? [])[0]);
        this.changed.fire();
      }),
    );
  }

  get uri(): string | undefined {
    return this.document?.uri.toString();
  }

  /** File name. */
  get name(): string | undefined {
    const path = this.document?.uri.path;
    return path?.slice(path.lastIndexOf('/') + 1);
  }

  dispose(): void {
    this.store.dispose();
  }

  private take(document: TextDocument | undefined): void {
    if (!document || document === this.document) return;
    this.document = document;
    this.changed.fire();
  }
}

function slatOf(document: TextDocument | undefined): TextDocument | undefined {
  return document?.languageId === 'slat' ? document : undefined;
}
