import type { Cancellation } from 'langium';

/** Work that can be gone on with at any time, and left at any time. */
export interface Sliced<T> {
  /** What is found so far. `over`: no more is going to be. */
  found(over: boolean): T;
  done(): boolean;
  /** Goes on until `enough`, which is asked every few milliseconds. */
  run(enough: () => boolean): void;
}

/** How work is parted, in milliseconds. */
export interface Slicing {
  /** Of work at a time. */
  readonly slice: number;
  /** Between two slices, for whatever waits. */
  readonly pause: number;
  /** In all; what is found by then is the answer. */
  readonly most: number;
}

/** What is found is told for the first time after this long, and then this often, if the work is not done by then. */
const FIRST_TOLD = 300;
const TOLD_AGAIN = 1000;

/**
 * Goes on with work until it is done or has taken its time. Between slices everything else has its turn.
 *
 * @param told hears of what is found while the work goes on
 * @returns what was found in the end; undefined where it was canceled before
 */
export async function workInSlices<T>(
  work: Sliced<T>,
  { slice, pause, most }: Slicing,
  told: (found: T) => void,
  cancelToken: Cancellation.CancellationToken,
): Promise<T | undefined> {
  const began = performance.now();
  let tell = began + FIRST_TOLD;
  for (;;) {
    if (cancelToken.isCancellationRequested) return undefined;
    const end = performance.now() + slice;
    work.run(() => performance.now() > end);
    const now = performance.now();
    if (work.done() || now - began > most) return work.found(true);
    if (now > tell) {
      tell = now + TOLD_AGAIN;
      told(work.found(false));
    }
    await new Promise((resume) => setTimeout(resume, pause));
  }
}
