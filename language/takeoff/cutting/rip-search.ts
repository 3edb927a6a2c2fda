import type { Ripping, Segment, Strip } from './problem.ts';
import type { RipTables } from './rip-tables.ts';

/** Which fillings of a board are looked for. */
export interface RipsWanted {
  readonly stock: number;
  /** How many of each size may be taken. */
  readonly bounds: ArrayLike<number>;
  readonly values: ArrayLike<number>;
  /** Made of these bounds and values. */
  readonly tables: RipTables;
  /** Fillings worth more than this, or as much too. */
  readonly least: number;
  readonly orMore: boolean;
  readonly steps: number;
  /** Room along, where it is less than the board's. */
  readonly room?: number;
}

/** Told of each filling; the segments are made only when asked for. It may answer with a higher worth to look above. */
export type OnRips = (
  worth: number,
  counts: Int32Array,
  segments: () => Segment[],
) => number | 'stop' | undefined;

/** Boards with the same pieces left are not gone on with twice; so many are remembered. */
const MOST_REMEMBERED = 200_000;

/**
 * Looks at every filling of a board that is worth enough: parts from long to short, the strips of each from wide to
 * narrow, the pieces of each from long to short. It turns back where the tables say that nothing comes of it.
 */
export function searchRips(
  { along, widthOf, widths, room, acrossOf, across }: Ripping,
  { stock, bounds, values, tables, least: first, orMore, steps: mostSteps, room: given }: RipsWanted,
  visit: OnRips,
): 'finished' | 'stopped' | 'unfinished' {
  const a = acrossOf[stock] as number;
  const [part, board] = [tables.part[a] as Float64Array, tables.board[a] as Float64Array];
  const left = Int32Array.from(bounds);
  const counts = new Int32Array(left.length);
  const value = Float64Array.from(left, (_, item) => Math.max(0, values[item] as number));
  const itemsOf = widths.map((_, width) => [...along.keys()].filter((item) => widthOf[item] === width));
  const wide = given ?? (room[stock] as number);
  const lengths = reachable(wide);
  const segments: { along: number; strips: Strip[] }[] = [];
  const tried = new Set<string>();
  let least = first;
  let steps = 0;
  let stopped = false;
  const isEnough = (worth: number) => (orMore ? worth >= least : worth > least);

  /** Sums of lengths of one width, longest first: what a part can be as long as. */
  function reachable(most: number): number[] {
    const any = new Uint8Array(most + 1);
    for (const items of itemsOf) {
      const own = new Uint8Array(most + 1);
      own[0] = 1;
      for (const item of items)
        for (
          let many = Math.min(left[item] as number, Math.floor(most / (along[item] as number)));
          many > 0;
          many--
        )
          for (let at = most; at >= (along[item] as number); at--)
            if (own[at - (along[item] as number)]) own[at] = 1;
      for (let at = 1; at <= most; at++) any[at] = (any[at] as number) | (own[at] as number);
    }
    return [...any.keys()].filter((at) => any[at]).reverse();
  }

  /** Most that strips give in room across and of these lengths, from this width on. */
  const memo = new Map<number, number>();
  const across1 = (across[a] as number) + 1;
  const beside = (length: number, free: number, from: number): number => {
    if (from >= widths.length) return 0;
    const key = (length * widths.length + from) * across1 + free;
    const held = memo.get(key);
    if (held !== undefined) return held;
    let best = 0;
    const width = widths[from] as number;
    for (let many = Math.floor(free / width); many >= 0; many--)
      best = Math.max(
        best,
        many * ((tables.strip[from] as Float64Array)[length] as number) +
          beside(length, free - many * width, from + 1),
      );
    memo.set(key, best);
    return best;
  };

  const boardFrom = (free: number, longest: number, worth: number): void => {
    if (counts.length > 0 && isEnough(worth)) {
      const answer = visit(worth, counts, () =>
        segments.map((one) => ({ along: one.along, strips: [...one.strips] })),
      );
      if (answer === 'stop') stopped = true;
      else if (answer !== undefined) least = Math.max(least, answer);
    }
    const state = `${free} ${longest} ${counts.join()}`;
    if (tried.has(state)) return;
    if (tried.size < MOST_REMEMBERED) tried.add(state);
    for (const length of lengths) {
      if (stopped || steps > mostSteps) return;
      if (length > longest || length > free) continue;
      if (!isEnough(worth + (part[length] as number) + (board[free - length] as number))) continue;
      segments.push({ along: length, strips: [] });
      partFrom(length, free - length, across[a] as number, 0, worth, undefined, false);
      segments.pop();
    }
  };

  /** Goes on with a part: another strip of this width or a narrower one, or the next part. */
  const partFrom = (
    length: number,
    free: number,
    beyond: number,
    from: number,
    worth: number,
    before: readonly number[] | undefined,
    reached: boolean,
  ): void => {
    if (stopped || steps > mostSteps) return;
    const rest = board[free] as number;
    for (let width = from; width < widths.length; width++) {
      if ((widths[width] as number) > beyond) continue;
      const behind = beyond - (widths[width] as number);
      const hope = rest + beside(length, behind, width);
      const items = itemsOf[width] as number[];
      const now: number[] = items.map(() => 0);
      const strip = tables.strip[width] as Float64Array;
      const fillFrom = (k: number, space: number, sum: number, tied: boolean): void => {
        if (stopped || ++steps > mostSteps) return;
        if (!isEnough(sum + (strip[space] as number) + hope)) return;
        if (k === items.length) {
          if (space === length) return;
          const used = [...now.keys()].filter((at) => (now[at] as number) > 0);
          const made: Strip = {
            width,
            items: used.map((at) => items[at] as number),
            counts: used.map((at) => now[at] as number),
          };
          segments[segments.length - 1]?.strips.push(made);
          partFrom(length, free, behind, width, sum, [...now], reached || space === 0);
          segments[segments.length - 1]?.strips.pop();
          return;
        }
        const item = items[k] as number;
        const each = along[item] as number;
        let many = Math.min(left[item] as number, Math.floor(space / each));
        // Of strips alike the fuller one first, so that each set of them comes once.
        const bound = width === from && before && tied ? (before[k] as number) : Infinity;
        many = Math.min(many, bound);
        for (; many >= 0; many--) {
          now[k] = many;
          left[item] = (left[item] as number) - many;
          counts[item] = (counts[item] as number) + many;
          fillFrom(k + 1, space - many * each, sum + many * (value[item] as number), tied && many === bound);
          left[item] = (left[item] as number) + many;
          counts[item] = (counts[item] as number) - many;
        }
        now[k] = 0;
      };
      fillFrom(0, length, worth, true);
    }
    if (reached) boardFrom(free, length, worth);
  };

  boardFrom(wide, wide, 0);
  return stopped ? 'stopped' : steps > mostSteps ? 'unfinished' : 'finished';
}
