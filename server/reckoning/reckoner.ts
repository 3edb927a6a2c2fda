import type { Cancellation } from 'langium';
import type { Answers, Ask } from './ask.ts';

/** Who works out what is asked for, beside typing. */
export interface Reckoner {
  /**
   * Works out what is asked for of an open document.
   *
   * @param told hears of what is found while the work goes on
   * @returns the answer; undefined where it was canceled, or the document is not there
   * @throws where it cannot be worked out
   */
  reckon<A extends Ask>(
    uri: string,
    ask: A,
    told: (found: Answers[A['kind']]) => void,
    cancelToken: Cancellation.CancellationToken,
  ): Promise<Answers[A['kind']] | undefined>;
  /** Ends whatever works. */
  dispose(): void;
}
