import type { Answers, Ask, AskKind } from './ask.ts';

/** A text as the server knows it. */
export interface SeenFile {
  readonly uri: string;
  readonly text: string;
}

/** To the worker: something asked for of the first of the files, which sees the others; or that an answer is no longer wanted. */
export type ToWorker =
  | { readonly type: 'ask'; readonly id: number; readonly ask: Ask; readonly files: readonly SeenFile[] }
  | { readonly type: 'cancel'; readonly id: number };

/** From the worker: what is found so far, the answer, or why there is none. */
export type FromWorker =
  | { readonly type: 'found' | 'answer'; readonly id: number; readonly found: Answers[AskKind] }
  | { readonly type: 'canceled'; readonly id: number }
  | { readonly type: 'failed'; readonly id: number; readonly why: string };
