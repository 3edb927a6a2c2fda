import { Cancellation, DocumentState, URI } from 'langium';
import type { SlatServerSharedServices } from '../services.ts';
import type { Totals } from './totals.ts';

/** What is known of the totals of an open document. */
export interface KnownTotals {
  /** Of the text as it stands, or as it was before the last change; missing while nothing is known. */
  readonly totals?: Totals;
  /** They belong to a text before the last change. */
  readonly stale: boolean;
}

/** Typing rests this long before totals are begun, in milliseconds. */
const REST = 150;
/** The first of all wait longer: what starts is not to be slowed. */
const FIRST_REST = 1000;

interface Entry {
  totals?: Totals;
  stale: boolean;
  /** Someone waits for those of the text as it stands. */
  wanted: boolean;
  /** Someone looks at them all the time. */
  followed: boolean;
  textVersion: number;
  timer?: ReturnType<typeof setTimeout>;
  work?: Cancellation.CancellationTokenSource;
}

/**
 * The last known totals of open documents. They are worked out when someone wants them and typing rests, never on the
 * way of a key; a change cancels what is being worked out for the text before.
 */
export class TotalsKeeper {
  private readonly shared: SlatServerSharedServices;
  private readonly entries = new Map<string, Entry>();
  private begun = false;
  private readonly hearers = new Set<(uri: string, other: 'text' | 'file') => void>();

  constructor(shared: SlatServerSharedServices) {
    this.shared = shared;
    const { DocumentBuilder, TextDocuments } = shared.workspace;
    DocumentBuilder.onDocumentPhase(DocumentState.Validated, ({ uri }) => this.changed(uri.toString()));
    TextDocuments.onDidClose(({ document }) => this.forget(document.uri));
  }

  of(uri: string): KnownTotals {
    const entry = this.entries.get(uri);
    return { ...(entry?.totals ? { totals: entry.totals } : {}), stale: entry?.stale ?? true };
  }

  /** Has those of the text as it stands worked out, soon. */
  want(uri: string): void {
    const entry = this.entryOf(uri);
    if (!entry || entry.wanted || (!entry.stale && entry.totals)) return;
    entry.wanted = true;
    this.schedule(uri, entry);
  }

  /** Keeps them up to date from now on, until `leave`. */
  follow(uri: string): void {
    const entry = this.entryOf(uri);
    if (entry) entry.followed = true;
    this.want(uri);
  }

  leave(uri: string): void {
    const entry = this.entries.get(uri);
    if (entry) entry.followed = false;
  }

  isFollowed(uri: string): boolean {
    return this.entries.get(uri)?.followed ?? false;
  }

  /** Hears when what is known of a document is other than before: worked out anew, or stale because of another file. */
  onChanged(hear: (uri: string, other: 'text' | 'file') => void): void {
    this.hearers.add(hear);
  }

  private entryOf(uri: string): Entry | undefined {
    const text = this.shared.workspace.TextDocuments.get(uri);
    if (!text) return undefined;
    let entry = this.entries.get(uri);
    if (!entry) {
      entry = { stale: true, wanted: false, followed: false, textVersion: text.version };
      this.entries.set(uri, entry);
    }
    return entry;
  }

  private changed(uri: string): void {
    const entry = this.entries.get(uri);
    const kept = this.shared.work.Keeper.of(uri);
    if (!entry || !kept) return;
    this.stop(entry);
    const typed = kept.textVersion !== entry.textVersion;
    entry.textVersion = kept.textVersion;
    entry.stale = true;
    const again = entry.followed || entry.wanted;
    entry.wanted = again;
    if (again) this.schedule(uri, entry);
    // A client asks anew after each change of the text, but does not know of one in a used file.
    if (!typed) this.tell(uri, 'file');
  }

  private schedule(uri: string, entry: Entry): void {
    clearTimeout(entry.timer);
    entry.timer = setTimeout(() => void this.reckon(uri, entry), this.begun ? REST : FIRST_REST);
    entry.timer.unref?.();
  }

  private async reckon(uri: string, entry: Entry): Promise<void> {
    this.begun = true;
    const source = new Cancellation.CancellationTokenSource();
    entry.work = source;
    const take = (totals: Totals, over: boolean): void => {
      if (entry.work !== source) return;
      entry.totals = totals;
      entry.stale = false;
      if (over) entry.wanted = false;
      this.tell(uri, 'text');
    };
    try {
      await this.shared.work.Keeper.untilLinked(uri, source.token);
      const told = (totals: Totals) => take(totals, false);
      const totals = await this.shared.work.Reckoner.reckon(uri, { kind: 'totals' }, told, source.token);
      if (totals) take(totals, true);
    } catch (error) {
      if (!source.token.isCancellationRequested)
        console.error(`totals of ${uri} cannot be worked out:`, error);
    } finally {
      if (entry.work === source) {
        delete entry.work;
        entry.wanted = false;
      }
    }
  }

  private tell(uri: string, other: 'text' | 'file'): void {
    for (const hear of this.hearers) hear(uri, other);
  }

  private stop(entry: Entry): void {
    clearTimeout(entry.timer);
    entry.work?.cancel();
    delete entry.work;
  }

  private forget(address: string): void {
    const uri = URI.parse(address).toString();
    const entry = this.entries.get(uri);
    if (entry) this.stop(entry);
    this.entries.delete(uri);
  }
}
