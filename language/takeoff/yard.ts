import type { HandStock, Job } from '../model/index.ts';
import type { Ticks } from '../units/index.ts';

/** Boards in the yard as they can be cut: whole, or what is usable between defects, which needs no trim. */
export interface YardBoard {
  readonly stock: string;
  /** Of what can be used. */
  readonly length: Ticks;
  readonly count: number;
  /** To be trimmed off it. */
  readonly trim: Ticks;
  /** As it is stated. */
  readonly of: HandStock;
}

/** What lies in the yard of some stocks, in the order it is stated. */
export function yardOf({ onHand, saw }: Job, names: ReadonlySet<string>): readonly YardBoard[] {
  const trim = saw.trim?.value ?? 0;
  return onHand.flatMap((of) => {
    if (!names.has(of.stock)) return [];
    const { stock, length, count, usable } = of;
    if (!usable) return [{ stock, length, count, trim, of }];
    return usable.map((part) => ({ stock, length: part, count, trim: 0, of }));
  });
}
