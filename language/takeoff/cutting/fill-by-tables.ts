import { searchKnapsack } from './knapsack-search.ts';
import type { Ripping, Segment, Strip } from './problem.ts';
import { type RipTables, ripTables } from './rip-tables.ts';

/** Of filling one strip. */
const STRIP_STEPS = 400;
/** What is left of a board is filled anew so often, where pieces ran out. */
const ROUNDS = 3;

/** A filling of one board while it is made. */
export interface Filling {
  readonly counts: Int32Array;
  readonly left: Int32Array;
  readonly segments: Segment[];
  worth: number;
}

export const emptyFilling = (bounds: ArrayLike<number>): Filling => ({
  counts: new Int32Array(bounds.length),
  left: Int32Array.from(bounds),
  segments: [],
  worth: 0,
});

/** Follows the tables; where pieces run out by that, what is left of the board is filled by tables of what is left. */
export function fillByTables(
  ripping: Ripping,
  filling: Filling,
  values: ArrayLike<number>,
  stock: number,
  room: number,
  first: RipTables,
): void {
  const across = ripping.acrossOf[stock] as number;
  let rest = room;
  let tables = first;
  for (let round = 0; round < ROUNDS && rest > 0; round++) {
    const promised = (tables.board[across] as Float64Array)[rest] as number;
    if (promised <= 0) return;
    const before = filling.worth;
    let free = rest;
    for (const length of partsOf(tables.last[across] as Int32Array, rest)) {
      const segment = fillPart(ripping, filling, values, across, Math.min(length, free), tables);
      if (segment) free -= segment.along;
    }
    rest = free;
    if (filling.worth - before >= promised || filling.worth === before) return;
    tables = ripTables(ripping, filling.left, values);
  }
}

/** Longest first. */
function partsOf(last: Int32Array, room: number): number[] {
  const parts: number[] = [];
  for (let at = room; at > 0; ) {
    const length = last[at] as number;
    if (length > 0) parts.push(length);
    at -= Math.max(1, length);
  }
  return parts.sort((a, b) => b - a);
}

/** The way of ripping that gives most of what is left. */
function fillPart(
  ripping: Ripping,
  filling: Filling,
  values: ArrayLike<number>,
  across: number,
  length: number,
  tables: RipTables,
): Segment | undefined {
  const { along, widthOf, widths } = ripping;
  const ways = ripping.ways[across] as readonly (readonly number[])[];
  const [promised, first] = [tables.part[across]?.[length] ?? 0, tables.way[across]?.[length] ?? 0];
  const value = (item: number) => Math.max(0, values[item] as number);
  let best: { strips: Strip[]; worth: number } | undefined;
  for (const way of [ways[first] as readonly number[], ...ways]) {
    if (best && best.worth >= promised * (1 - 1e-9)) break;
    const left = filling.left.slice();
    const strips: Strip[] = [];
    let worth = 0;
    for (const width of widths.keys())
      for (let many = way[width] as number; many > 0; many--) {
        const only = left.map((count, item) => (widthOf[item] === width ? count : 0));
        const found = searchKnapsack(along, only, values, length, 0, STRIP_STEPS);
        if (found.value <= 0) break;
        worth += found.value;
        const items = [...found.counts.keys()].filter((item) => (found.counts[item] as number) > 0);
        for (const item of items) left[item] = (left[item] as number) - (found.counts[item] as number);
        strips.push({ width, items, counts: items.map((item) => found.counts[item] as number) });
      }
    if (worth > (best?.worth ?? 0)) best = { strips, worth };
  }
  if (!best) return undefined;
  for (const { items, counts } of best.strips)
    for (const [k, item] of items.entries()) {
      const count = counts[k] as number;
      filling.left[item] = (filling.left[item] as number) - count;
      filling.counts[item] = (filling.counts[item] as number) + count;
      filling.worth += count * value(item);
    }
  const segment = segmentOf(best.strips, ripping);
  filling.segments.push(segment);
  return segment;
}

/** A part as long as its longest strip. */
export function segmentOf(strips: readonly Strip[], { along }: Ripping): Segment {
  const lengths = strips.map(({ items, counts }) =>
    items.reduce((sum, item, k) => sum + (along[item] as number) * (counts[k] as number), 0),
  );
  return { along: Math.max(0, ...lengths), strips };
}
