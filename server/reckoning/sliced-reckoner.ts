import { type Cancellation, URI } from 'langium';
import type { SlatServerSharedServices } from '../services.ts';
import { type Answers, type Ask, SECONDS } from './ask.ts';
import { beginWork } from './begin-work.ts';
import type { Reckoner } from './reckoner.ts';
import { workInSlices } from './sliced.ts';

/** A key that comes meanwhile waits for no more than a slice, in milliseconds. */
const SLICE = 6;
const PAUSE = 4;

/** Works in this thread, in slices between messages, on what is kept of open documents. */
export class SlicedReckoner implements Reckoner {
  private readonly shared: SlatServerSharedServices;

  constructor(shared: SlatServerSharedServices) {
    this.shared = shared;
  }

  async reckon<A extends Ask>(
    uri: string,
    ask: A,
    told: (found: Answers[A['kind']]) => void,
    cancelToken: Cancellation.CancellationToken,
  ): Promise<Answers[A['kind']] | undefined> {
    const { work: keeping, workspace } = this.shared;
    const document = workspace.LangiumDocuments.getDocument(URI.parse(uri));
    const kept = keeping.Keeper.of(uri);
    if (!document || !kept || cancelToken.isCancellationRequested) return undefined;
    const work = beginWork({ shared: this.shared, document, work: kept.work }, ask);
    const slicing = { slice: SLICE, pause: PAUSE, most: SECONDS[ask.kind] * 1000 };
    return workInSlices(work, slicing, told, cancelToken);
  }

  dispose(): void {
    // Slices end with the work they are of.
  }
}
