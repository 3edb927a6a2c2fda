import { randomBytes } from 'node:crypto';
import { Uri, type WebviewPanel, workspace } from 'vscode';
import type { Picture } from '../../../server/protocol.ts';
import { DisposableStore, fileNameOf, type Log } from '../../infrastructure/index.ts';
import {
  type FromPage,
  isFromPage,
  isShown,
  kindsOf,
  type Shown,
  type ToPage,
} from '../../preview-protocol.ts';
import type { PictureSource } from '../language-client/index.ts';
import { pageHtml } from './page-html.ts';

export interface PanelEvents {
  readonly pick: (uri: Uri, piece: string) => void;
  readonly closed: (panel: PicturePanel) => void;
}

/** One document's picture in one panel. Relays what the server sends; keeps no picture itself. */
export class PicturePanel {
  readonly panel: WebviewPanel;
  private readonly store = new DisposableStore();
  private readonly source: PictureSource;
  private readonly log: Log;
  private shown: Uri;
  /** The page listens, and the server sends what changes. */
  private follows = false;
  /** Only the answer to the latest request counts. */
  private asked = 0;
  /** Until it comes, what changes belongs to the views shown before. */
  private waits = false;
  private show: Shown = 'front';
  /** Asked for before the page could listen. */
  private wanted: Shown | undefined;
  private listens = false;

  constructor(
    panel: WebviewPanel,
    uri: Uri,
    extension: Uri,
    source: PictureSource,
    log: Log,
    events: PanelEvents,
  ) {
    this.panel = panel;
    this.shown = uri;
    this.source = source;
    this.log = log;
    this.store.add(
      panel.onDidDispose(() => {
        this.leave();
        this.store.dispose();
        events.closed(this);
      }),
    );
    this.store.add(
      panel.onDidChangeViewState(() => {
        // A hidden page is gone; it says ready when it is back.
        if (panel.visible) return;
        this.listens = false;
        this.leave();
      }),
    );
    this.store.add(
      panel.webview.onDidReceiveMessage((message: unknown) => {
        if (isFromPage(message)) this.take(message, events);
      }),
    );
    this.store.add(source.onChanged((picture) => this.changed(picture)));
    this.store.add(
      source.onRestarted(() => {
        if (this.follows) void this.follow();
      }),
    );
    this.store.add(
      workspace.onDidCloseTextDocument((document) => {
        // The picture is drawn from an open document: one that nobody else holds is opened again.
        if (this.follows && document.uri.toString() === this.shown.toString()) void this.follow();
      }),
    );
    panel.title = titleOf(uri);
    panel.iconPath = {
      light: Uri.joinPath(extension, 'client', 'icons', 'slat-light.svg'),
      dark: Uri.joinPath(extension, 'client', 'icons', 'slat-dark.svg'),
    };
    const folder = Uri.joinPath(extension, 'dist');
    panel.webview.options = { enableScripts: true, localResourceRoots: [folder] };
    const at = (name: string) => panel.webview.asWebviewUri(Uri.joinPath(folder, name)).toString();
    panel.webview.html = pageHtml({
      cspSource: panel.webview.cspSource,
      nonce: randomBytes(16).toString('hex'),
      script: at('webview.js'),
      style: at('webview.css'),
      uri: uri.toString(),
    });
  }

  get uri(): Uri {
    return this.shown;
  }

  /** The document has moved: its picture goes on under the new address. */
  rename(uri: Uri): void {
    const followed = this.follows;
    this.leave();
    this.shown = uri;
    this.panel.title = titleOf(uri);
    this.send({ type: 'document', uri: uri.toString() });
    if (followed) void this.follow();
  }

  light(pieces: readonly string[]): void {
    this.send({ type: 'highlight', pieces });
  }

  /** Shows other views, as soon as the page listens. */
  showViews(shown: Shown): void {
    if (this.listens) this.send({ type: 'show', show: shown });
    else this.wanted = shown;
  }

  fit(): void {
    this.send({ type: 'fit' });
  }

  private take(message: FromPage, events: PanelEvents): void {
    switch (message.type) {
      case 'ready':
        this.listens = true;
        if (isShown(message.show)) this.show = message.show;
        if (this.wanted) this.send({ type: 'show', show: this.wanted });
        else void this.follow();
        this.wanted = undefined;
        break;
      case 'show':
        if (isShown(message.show)) this.show = message.show;
        void this.follow();
        break;
      case 'askPicture':
        void this.follow();
        break;
      case 'pick':
        if (typeof message.piece === 'string') events.pick(this.shown, message.piece);
        break;
    }
  }

  private async follow(): Promise<void> {
    const mine = ++this.asked;
    const uri = this.shown;
    this.follows = true;
    this.waits = true;
    try {
      // A restored panel may be there before its text: opening it, unseen, hands it to the server.
      await workspace.openTextDocument(uri);
      const picture = await this.source.follow(uri.toString(), kindsOf(this.show));
      if (mine !== this.asked) return;
      this.waits = false;
      this.sendPicture(picture);
    } catch (error) {
      if (mine !== this.asked) return;
      this.log.warn('no picture of', uri.toString(), String(error));
      this.send({ type: 'trouble', text: `${fileNameOf(uri)} cannot be read now.` });
    }
  }

  private changed(picture: Picture): void {
    if (this.follows && !this.waits && picture.uri === this.shown.toString()) this.sendPicture(picture);
  }

  private sendPicture({ textVersion, delta }: Picture): void {
    this.send({ type: 'picture', show: this.show, textVersion, delta });
  }

  private send(message: ToPage): void {
    void this.panel.webview.postMessage(message);
  }

  private leave(): void {
    if (!this.follows) return;
    this.follows = false;
    this.asked++;
    this.source.leave(this.shown.toString());
  }
}

function titleOf(uri: Uri): string {
  return `Picture of ${fileNameOf(uri)}`;
}
