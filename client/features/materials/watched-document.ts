import {
  type Disposable,
  EventEmitter,
  TabInputText,
  TabInputTextDiff,
  type TextDocument,
  window,
} from 'vscode';
import { DisposableStore, fileNameOf } from '../../infrastructure/index.ts';

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
    // A document is closed some time after its last tab is; it is the tab that people see.
    this.store.add(window.tabGroups.onDidChangeTabs(() => this.leave()));
  }

  get uri(): string | undefined {
    return this.document?.uri.toString();
  }

  /** File name. */
  get name(): string | undefined {
    return this.document && fileNameOf(this.document.uri);
  }

  dispose(): void {
    this.store.dispose();
  }

  /** Lets go of a document that has no tab any more, for another in sight or none. */
  private leave(): void {
    if (this.uri === undefined || hasTab(this.uri)) return;
    // Editors are still told as visible while their tab is being closed.
    const shown = window.visibleTextEditors.flatMap(({ document }) => slatOf(document) ?? []);
    this.document = shown.find(({ uri }) => hasTab(uri.toString()));
    this.changed.fire();
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

function hasTab(uri: string): boolean {
  return window.tabGroups.all.some(({ tabs }) =>
    tabs.some(({ input }) => {
      if (input instanceof TabInputText) return input.uri.toString() === uri;
      return input instanceof TabInputTextDiff && input.modified.toString() === uri;
    }),
  );
}
