import type { Origin } from '../model/index.ts';
import type { Published } from '../standards/index.ts';
import type { Amount } from '../units/index.ts';

/** A calculation as a checker wants to read it: the same in a hover, on the command line and on paper. */
export interface Working {
  /** Of the kind of calculation: `post-bending`. */
  readonly code: string;
  readonly title: string;
  readonly where: WorkingPlace;
  /** In the symbols of the inputs and steps. */
  readonly formula: string;
  readonly inputs: readonly WorkingInput[];
  readonly steps: readonly WorkingStep[];
  /** What it comes to. */
  readonly figure: Amount;
  /** What the figure is held against; missing where nothing limits it. */
  readonly limit?: WorkingLimit;
  readonly basis: readonly Published[];
  /** What a reader has to know beside it: assumptions, what was left out, whom to ask. */
  readonly notes: readonly string[];
}

export interface WorkingPlace {
  /** The line it concerns. */
  readonly origin: Origin;
  /** In words: `bank, posts`. */
  readonly label: string;
  readonly run?: string;
  readonly pieces?: readonly string[];
}

export interface WorkingInput {
  readonly name: string;
  readonly symbol: string;
  readonly value: Amount | string;
  /** Stated, by which table, or by which habit. */
  readonly from: string;
}

export interface WorkingStep {
  /** A name or an equation in symbols; what it comes to is beside it. */
  readonly says: string;
  readonly value?: Amount;
}

export interface WorkingLimit extends Amount {
  readonly name: string;
  readonly is: 'at most' | 'at least';
}

/** Whether a figure keeps within its limit; undefined where it has none. Figure and limit are of one unit. */
export function keepsWithin({ figure, limit }: Working): boolean | undefined {
  if (!limit) return undefined;
  return limit.is === 'at most' ? figure.value <= limit.value : figure.value >= limit.value;
}
