import { type Cancellation, URI } from 'langium';
import type { SlatServerSharedServices } from '../services.ts';
import { type Answers, type Ask, type AskKind, SECONDS } from './ask.ts';
import type { Reckoner } from './reckoner.ts';
import type { FromWorker, SeenFile, ToWorker } from './worker-messages.ts';

/** A worker as threads of Node are; nothing else of them is used. */
export interface WorkerLike {
  postMessage(message: ToWorker): void;
  on(event: 'message', hear: (message: FromWorker) => void): unknown;
  on(event: 'error', hear: (error: Error) => void): unknown;
  on(event: 'exit', hear: () => void): unknown;
  terminate(): unknown;
}

/** After so many crashes no other worker is started. */
const MOST_CRASHES = 3;
/** A worker that has not left canceled work by then is ended, in milliseconds: it is in a step that has no end. */
const PATIENCE = 5000;
/** The same for work that was not canceled, after the time it may take; a worker may have to start first, on a busy machine. */
const LONG_PATIENCE = 60_000;
/** What Node calls it when a thread has used up what it was given. */
const OUT_OF_MEMORY = 'ERR_WORKER_OUT_OF_MEMORY';

interface Asked {
  readonly id: number;
  readonly told: (found: Answers[AskKind]) => void;
  readonly answer: (found: Answers[AskKind] | undefined) => void;
  readonly fail: (error: Error) => void;
  /** Works it out without the worker. */
  readonly instead: () => Promise<Answers[AskKind] | undefined>;
}

/**
 * Has things worked out in a worker, which starts with the first of them. What a worker that crashes was asked for is
 * worked out by the fallback instead, and the next is asked of a new one. What takes all memory or has no end is not
 * tried again: this thread would be lost with it.
 */
export class WorkerReckoner implements Reckoner {
  /** How often a worker was lost in a way that may happen again to any other. */
  crashes = 0;
  private readonly shared: SlatServerSharedServices;
  private readonly makeWorker: () => WorkerLike;
  private readonly fallback: Reckoner;
  private worker: WorkerLike | undefined;
  private readonly asked = new Map<number, Asked>();
  private last = 0;
  private ended = false;

  constructor(shared: SlatServerSharedServices, makeWorker: () => WorkerLike, fallback: Reckoner) {
    this.shared = shared;
    this.makeWorker = makeWorker;
    this.fallback = fallback;
  }

  async reckon<A extends Ask>(
    uri: string,
    ask: A,
    told: (found: Answers[A['kind']]) => void,
    cancelToken: Cancellation.CancellationToken,
  ): Promise<Answers[A['kind']] | undefined> {
    const files = filesSeenBy(this.shared, uri);
    if (files.length === 0 || cancelToken.isCancellationRequested) return undefined;
    const instead = () => this.fallback.reckon(uri, ask, told, cancelToken);
    const worker = this.running();
    if (!worker) return instead();
    const id = ++this.last;
    const endless = () => this.lost(worker, 'it does not come to an end', false);
    let patience = setTimeout(endless, SECONDS[ask.kind] * 1000 + LONG_PATIENCE);
    const canceled = cancelToken.onCancellationRequested(() => {
      worker.postMessage({ type: 'cancel', id });
      clearTimeout(patience);
      patience = setTimeout(endless, PATIENCE);
    });
    try {
      return (await new Promise<Answers[AskKind] | undefined>((answer, fail) => {
        this.asked.set(id, { id, told: told as Asked['told'], answer, fail, instead });
        worker.postMessage({ type: 'ask', id, ask, files });
      })) as Answers[A['kind']] | undefined;
    } finally {
      this.asked.delete(id);
      clearTimeout(patience);
      canceled.dispose();
    }
  }

  dispose(): void {
    this.ended = true;
    const { worker } = this;
    this.worker = undefined;
    for (const { answer } of this.asked.values()) answer(undefined);
    worker?.terminate();
    this.fallback.dispose();
  }

  private running(): WorkerLike | undefined {
    if (this.worker || this.ended || this.crashes >= MOST_CRASHES) return this.worker;
    try {
      const worker = this.makeWorker();
      worker.on('message', (message) => this.hear(message));
      worker.on('error', (error) =>
        this.lost(worker, String(error), !('code' in error && error.code === OUT_OF_MEMORY)),
      );
      worker.on('exit', () => this.lost(worker, 'it has ended', true));
      this.worker = worker;
    } catch (error) {
      this.crashes++;
      console.error('no worker can be started:', error);
    }
    return this.worker;
  }

  private hear(message: FromWorker): void {
    const asked = this.asked.get(message.id);
    switch (message.type) {
      case 'found':
        asked?.told(message.found);
        break;
      case 'answer':
        asked?.answer(message.found);
        break;
      case 'canceled':
        asked?.answer(undefined);
        break;
      case 'failed':
        asked?.fail(new Error(message.why));
        break;
    }
  }

  /** `again`: what it was at can be tried without it. */
  private lost(worker: WorkerLike, why: string, again: boolean): void {
    if (this.worker !== worker) return;
    this.worker = undefined;
    if (again) this.crashes++;
    worker.terminate();
    console.error('the worker was lost:', why);
    const lost = [...this.asked.values()];
    this.asked.clear();
    for (const { instead, answer, fail } of lost) {
      if (again) instead().then(answer, fail);
      else fail(new Error(`It takes too much: ${why}`));
    }
  }
}

/** A document and everything it sees through `use`, as the server has read them; none where it is not there. */
function filesSeenBy({ workspace }: SlatServerSharedServices, uri: string): readonly SeenFile[] {
  const { LangiumDocuments, UseGraph } = workspace;
  if (!LangiumDocuments.hasDocument(URI.parse(uri))) return [];
  return [...UseGraph.closure(uri).files].flatMap((address) => {
    const document = LangiumDocuments.getDocument(URI.parse(address));
    return document ? [{ uri: address, text: document.textDocument.getText() }] : [];
  });
}
