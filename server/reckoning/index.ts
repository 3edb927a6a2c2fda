/**
 * What is worked out beside typing, because it takes longer than a key may: totals and what is bought, proof of the
 * cutting plan, better choices, what a pile still gives, the sheets of a takeoff. In a worker where the host has
 * them, else in slices between messages; to be canceled at any time.
 *
 * Lives here: who works, for how long, and what is told of it in words. Does not live here: the calculations
 * (language/), anything of Node but `worker-main.ts`, which hosts with threads name for themselves.
 */
export type { Answers, Ask, AskKind } from './ask.ts';
export type { Reckoner } from './reckoner.ts';
export { answerReckoningRequests } from './requests.ts';
export { SlicedReckoner } from './sliced-reckoner.ts';
export type { RunTotals, Totals } from './totals.ts';
export { type KnownTotals, TotalsKeeper } from './totals-keeper.ts';
export { WorkerReckoner } from './worker-reckoner.ts';
