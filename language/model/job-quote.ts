// Rates, prices, and what lies in the yard.
import type { Money, Ticks } from '../units/index.ts';
import type { Origin, Sourced } from './job-origin.ts';
import type { TaskCount } from './read-quote.ts';

/** What labor and materials cost, and how a price is made of that. */
export interface Quote {
  readonly origin?: Origin;
  /** For an hour. */
  readonly labor?: Sourced<Money>;
  readonly tasks: readonly {
    readonly name: string;
    readonly minutes: number;
    readonly per: TaskCount;
    readonly origin: Origin;
  }[];
  /** Of what is bought besides boards, by name; `unit` as written. */
  readonly prices: readonly {
    readonly item: string;
    readonly price: Money;
    readonly unit: string;
    readonly origin: Origin;
  }[];
  readonly extras: readonly {
    readonly what: string;
    readonly count: number;
    readonly price: Money;
    readonly origin: Origin;
  }[];
  /** Shares from 0 to 1: overhead and markup of what it costs, margin of what is asked, tax of that. */
  readonly overhead: Sourced<number> | undefined;
  readonly markup: Sourced<number> | undefined;
  readonly margin: Sourced<number> | undefined;
  readonly tax: Sourced<number> | undefined;
  readonly deposit?: { readonly share: Sourced<number>; readonly most?: Sourced<Money> };
}

/** Boards of a stock that are there already. */
export interface HandStock {
  readonly stock: string;
  readonly length: Ticks;
  readonly count: number;
  /** Of a board with knots or splits: the lengths between them that can be used. */
  readonly usable?: readonly Ticks[];
  readonly origin: Origin;
}
