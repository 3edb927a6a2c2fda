// Where values of a job come from, and what is wrong with the text they come from.
import type { Ticks } from '../units/index.ts';

export type { TextChange } from '../grammar/index.ts';

/**
 * Where a value comes from. `path` names a node of the syntax tree by names, never by positions in
 * the file (see `nodePath` in grammar/), so that a line inserted above disturbs nothing; it is
 * resolved to a range only when something is published.
 */
export interface Origin {
  readonly uri: string;
  readonly path: string;
  readonly why: 'stated' | 'default' | 'derived' | 'measured';
}

/** A value that remembers where it is stated, or why it is what it is. */
export interface Sourced<T> {
  readonly value: T;
  readonly origin: Origin;
}

/** A length with a least and a greatest allowed value; both the same when one length is stated. */
export interface Band {
  readonly low: Ticks;
  readonly high: Ticks;
}

/** What is wrong with the text itself or with what it refers to, before any piece exists. */
export interface Problem {
  readonly code: string;
  readonly origin: Origin;
  /** Values for the message; texts and numbers only, so that messages can be made in any language. */
  readonly args: Readonly<Record<string, string | number>>;
  readonly related?: readonly { readonly origin: Origin; readonly note: string }[];
}
