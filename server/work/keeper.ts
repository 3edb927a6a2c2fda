import { type Cancellation, DocumentState, type LangiumDocument, URI } from 'langium';
import type { Connection } from 'vscode-languageserver';
import type { View, ViewKind } from '../../language/drawing/index.ts';
import { createLayoutMemo, type LayoutMemo, type RunLayout } from '../../language/layout/index.ts';
import { type Picture, PictureChanged } from '../protocol.ts';
import type { SlatServerSharedServices } from '../services.ts';
import { FollowedPicture } from './followed-picture.ts';
import { goodRuns, type LastGood, shownRuns, viewsOfShown } from './picture.ts';
import { type Work, workOut } from './work-out.ts';

/** What is kept of one open document. */
export interface Kept {
  readonly uri: string;
  /** Version of the text it was worked out from. */
  readonly textVersion: number;
  readonly work: Work;
  /** Runs as shown: those laid out, and the last good ones of those that cannot be. */
  readonly runs: readonly RunLayout[];
  readonly stale: ReadonlySet<RunLayout>;
}

/**
 * Works out every open document as soon as its names are linked, sends what changed in the pictures
 * that are looked at, and keeps the work for findings, hovers and requests. Nothing is kept of a
 * document that is not open.
 */
export class WorkKeeper {
  /** How often each document was worked out, for tests and measurements. */
  readonly counts = new Map<string, number>();
  private readonly shared: SlatServerSharedServices;
  private readonly kept = new Map<string, Kept>();
  private readonly memos = new Map<string, LayoutMemo>();
  private readonly lastGood = new Map<string, LastGood>();
  private readonly followed = new Map<string, FollowedPicture>();

  constructor(shared: SlatServerSharedServices) {
    this.shared = shared;
    const { DocumentBuilder, TextDocuments } = shared.workspace;
    DocumentBuilder.onDocumentPhase(DocumentState.Linked, (document) => this.linked(document));
    TextDocuments.onDidClose(({ document }) => this.forget(document.uri));
  }

  /** The work on an open document; undefined for any other. */
  of(uri: string): Kept | undefined {
    return this.kept.get(uri);
  }

  /** Addresses of documents something is kept of. */
  keptUris(): string[] {
    return [...this.kept.keys()];
  }

  /** Begins to follow some views of a picture, and answers with all of them as they are once the text is linked. */
  async follow(
    uri: string,
    cancelToken?: Cancellation.CancellationToken,
    kinds: readonly ViewKind[] = ['front'],
  ): Promise<Picture> {
    const picture = new FollowedPicture(kinds);
    this.followed.set(uri, picture);
    if (this.isOpen(uri)) await this.untilLinked(uri, cancelToken);
    const kept = this.kept.get(uri);
    const delta = picture.whole(kept ? this.views(kept, kinds) : []);
    return { uri, textVersion: kept?.textVersion ?? 0, delta };
  }

  leave(uri: string): void {
    this.followed.delete(uri);
  }

  /** Waits until the names of an open document are linked, so that the work on it is up to date. */
  async untilLinked(uri: string, cancelToken?: Cancellation.CancellationToken): Promise<void> {
    await this.shared.workspace.WorkspaceManager.ready;
    const { DocumentBuilder, WorkspaceLock } = this.shared.workspace;
    await DocumentBuilder.waitUntil(DocumentState.Linked, URI.parse(uri), cancelToken);
    // It may have been linked before it was opened; then it comes up again after what is being built.
    if (!this.kept.has(uri) && this.isOpen(uri)) await WorkspaceLock.read(() => undefined);
  }

  private isOpen(uri: string): boolean {
    return this.shared.workspace.TextDocuments.get(uri) !== undefined;
  }

  private linked(document: LangiumDocument): void {
    const uri = document.uri.toString();
    const text = this.shared.workspace.TextDocuments.get(document.uri);
    // The text moves on under a document that is being built; what is linked is superseded then.
    if (!text || text.getText() !== document.parseResult.value.$cstNode?.root.fullText) return;
    try {
      const kept = this.workOut(document, uri, text.version);
      this.kept.set(uri, kept);
      this.send(kept);
    } catch (error) {
      // What cannot be worked out at all must not keep names and findings of the text from the editor.
      console.error(`${uri} cannot be worked out:`, error);
    }
  }

  private workOut(document: LangiumDocument, uri: string, textVersion: number): Kept {
    let memo = this.memos.get(uri);
    if (!memo) {
      memo = createLayoutMemo();
      this.memos.set(uri, memo);
    }
    this.counts.set(uri, (this.counts.get(uri) ?? 0) + 1);
    const work = workOut(this.shared, document, memo);
    const { lexerErrors, parserErrors } = document.parseResult;
    const halfTyped = lexerErrors.length + parserErrors.length > 0;
    const { runs, stale } = shownRuns(work, this.lastGood.get(uri) ?? new Map(), halfTyped);
    this.lastGood.set(uri, goodRuns(runs));
    return { uri, textVersion, work, runs, stale };
  }

  private send(kept: Kept): void {
    const connection: Connection | undefined = this.shared.lsp.Connection;
    const picture = this.followed.get(kept.uri);
    const delta = picture?.change(this.views(kept, picture.kinds));
    if (!delta) return;
    const changed: Picture = { uri: kept.uri, textVersion: kept.textVersion, delta };
    void connection?.sendNotification(PictureChanged, changed);
  }

  private views({ runs, stale, work }: Kept, kinds: readonly ViewKind[]): readonly View[] {
    return viewsOfShown(runs, stale, work.job, kinds);
  }

  private forget(uri: string): void {
    this.kept.delete(uri);
    this.memos.delete(uri);
    this.lastGood.delete(uri);
    this.followed.delete(uri);
    this.counts.delete(uri);
  }
}
