import {
  type Disposable,
  Uri,
  ViewColumn,
  type WebviewPanel,
  type WebviewPanelSerializer,
  window,
  workspace,
} from 'vscode';
import { DisposableStore, type Log, type SourceReveal } from '../../infrastructure/index.ts';
import { PREVIEW_VIEW_TYPE, type PreviewState } from '../../preview-protocol.ts';
import type { PictureSource } from '../language-client/index.ts';
import { PicturePanel } from './picture-panel.ts';

/** All panels, one for each document at most; makes them, finds them, and takes them back after a reload. */
export class PanelManager implements WebviewPanelSerializer, Disposable {
  private readonly panels = new Map<string, PicturePanel>();
  private readonly store = new DisposableStore();
  private readonly extension: Uri;
  private readonly source: PictureSource;
  private readonly reveal: SourceReveal;
  private readonly log: Log;

  constructor(extension: Uri, source: PictureSource, reveal: SourceReveal, log: Log) {
    this.extension = extension;
    this.source = source;
    this.reveal = reveal;
    this.log = log;
    this.store.add(
      workspace.onDidRenameFiles(({ files }) => {
        for (const { oldUri, newUri } of files) this.rename(oldUri, newUri);
      }),
    );
  }

  /** Opens a document's picture beside its text, or shows the one there is. The text keeps the focus. */
  open(uri: Uri): void {
    const there = this.panels.get(uri.toString());
    if (there) {
      there.panel.reveal(undefined, true);
      return;
    }
    const where = { viewColumn: ViewColumn.Beside, preserveFocus: true };
    this.adopt(window.createWebviewPanel(PREVIEW_VIEW_TYPE, '', where), uri);
  }

  async deserializeWebviewPanel(
    panel: WebviewPanel,
    state: Partial<PreviewState> | undefined,
  ): Promise<void> {
    if (typeof state?.uri !== 'string' || this.panels.has(state.uri)) {
      panel.dispose();
      return;
    }
    this.adopt(panel, Uri.parse(state.uri));
  }

  of(uri: string): PicturePanel | undefined {
    return this.panels.get(uri);
  }

  /** The one that has the focus. */
  get active(): PicturePanel | undefined {
    return [...this.panels.values()].find(({ panel }) => panel.active);
  }

  dispose(): void {
    this.store.dispose();
  }

  private adopt(panel: WebviewPanel, uri: Uri): void {
    const made = new PicturePanel(panel, uri, this.extension, this.source, this.log, {
      pick: (from, piece) => void this.pick(from, piece),
      closed: (closed) => this.panels.delete(closed.uri.toString()),
    });
    this.panels.set(uri.toString(), made);
  }

  private async pick(uri: Uri, piece: string): Promise<void> {
    const place = await this.source.locate(uri.toString(), piece);
    if (place) await this.reveal.show(place);
  }

  private rename(from: Uri, to: Uri): void {
    const panel = this.panels.get(from.toString());
    if (!panel || this.panels.has(to.toString())) return;
    this.panels.delete(from.toString());
    panel.rename(to);
    this.panels.set(to.toString(), panel);
  }
}
