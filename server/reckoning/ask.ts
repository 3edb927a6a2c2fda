import type { BetterFound, PileTold, TakeoffFiles } from '../protocol.ts';
import type { Totals } from './totals.ts';

/** What may be asked of a document. Plain data, for it goes to a worker. */
export type Ask =
  | { readonly kind: 'totals' }
  | { readonly kind: 'better'; readonly run: string }
  | { readonly kind: 'pile' }
  | { readonly kind: 'sheets' };

export type AskKind = Ask['kind'];

/** What each is answered with; plain data too. */
export interface Answers {
  readonly totals: Totals;
  /** Null where the run cannot be worked out, or has no fill to change. Without the version of the text, which only the server knows. */
  readonly better: Omit<BetterFound, 'textVersion'> | null;
  readonly pile: PileTold;
  readonly sheets: TakeoffFiles;
}

/** Seconds that an answer may take at most; what is not proven by then is told so. */
export const SECONDS: Readonly<Record<AskKind, number>> = { totals: 10, better: 30, pile: 30, sheets: 10 };
