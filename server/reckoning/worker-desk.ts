import { Cancellation, URI } from 'langium';
import { createSlatCoreServices, type SlatSharedServices } from '../../language/grammar/index.ts';
import { createLayoutMemo } from '../../language/layout/index.ts';
import { workOut } from '../work/work-out.ts';
import { type Answers, type Ask, type AskKind, SECONDS } from './ask.ts';
import { beginWork, type Subject } from './begin-work.ts';
import { workInSlices } from './sliced.ts';
import { ToldFiles } from './told-files.ts';
import type { FromWorker, SeenFile, ToWorker } from './worker-messages.ts';

/** Between slices it hears whether it is still wanted; in milliseconds. */
const SLICE = 15;

/**
 * What a worker does: takes texts, works them out and answers. It has the language for itself,
 * so nothing of it is shared with the thread that people type into.
 */
export class WorkerDesk {
  private readonly files = new ToldFiles();
  private readonly shared: SlatSharedServices;
  private readonly answer: (message: FromWorker) => void;
  private readonly wanted = new Map<number, Cancellation.CancellationTokenSource>();
  /** The last document asked for, with what was laid out of it. */
  private last = { uri: '', memo: createLayoutMemo() };
  private opening: Promise<unknown> = Promise.resolve();

  constructor(answer: (message: FromWorker) => void) {
    this.answer = answer;
    const { files } = this;
    this.shared = createSlatCoreServices(
      { fileSystemProvider: () => files },
      {},
      // Whoever sends the files has judged what may be used.
      {
        workspace: {
          WorkspaceBounds: () => ({ setRoots: () => undefined, isInside: (uri) => files.has(uri) }),
        },
      },
    ).shared;
    this.shared.workspace.DocumentBuilder.updateBuildOptions = { validation: false };
  }

  take(message: ToWorker): void {
    if (message.type === 'cancel') {
      this.wanted.get(message.id)?.cancel();
      return;
    }
    const source = new Cancellation.CancellationTokenSource();
    this.wanted.set(message.id, source);
    void this.work(message, source.token);
  }

  private async work(
    { id, ask, files }: Extract<ToWorker, { type: 'ask' }>,
    cancelToken: Cancellation.CancellationToken,
  ): Promise<void> {
    try {
      const slicing = { slice: SLICE, pause: 0, most: SECONDS[ask.kind] * 1000 };
      // One after the other, for they share the documents; what is opened is then worked on side by side.
      const opened = this.opening.then(() =>
        cancelToken.isCancellationRequested ? undefined : this.open(files),
      );
      this.opening = opened.catch(() => undefined);
      const subject = await opened;
      const told = (found: Answers[AskKind]) => this.answer({ type: 'found', id, found });
      const found = subject && (await workInSlices(beginWork<Ask>(subject, ask), slicing, told, cancelToken));
      this.answer(found === undefined ? { type: 'canceled', id } : { type: 'answer', id, found });
    } catch (error) {
      this.answer({ type: 'failed', id, why: String(error instanceof Error ? error.stack : error) });
    } finally {
      this.wanted.delete(id);
    }
  }

  /** Reads what is new of the files, and works out the first. */
  private async open(files: readonly SeenFile[]): Promise<Subject> {
    const { DocumentBuilder, LangiumDocuments } = this.shared.workspace;
    const { changed, gone } = this.files.tell(files);
    const uris = (all: readonly string[]) => all.map((uri) => URI.parse(uri));
    if (changed.length + gone.length > 0) await DocumentBuilder.update(uris(changed), uris(gone));
    const uri = files[0]?.uri ?? '';
    if (this.last.uri !== uri) this.last = { uri, memo: createLayoutMemo() };
    const document = await LangiumDocuments.getOrCreateDocument(URI.parse(uri));
    return { shared: this.shared, document, work: workOut(this.shared, document, this.last.memo) };
  }
}
