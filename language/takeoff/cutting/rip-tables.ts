import type { Ripping } from './problem.ts';

/** Most that can be worth having, by length, as if every strip had all pieces to choose from. */
export interface RipTables {
  /** By width: of a strip so long. */
  readonly strip: readonly Float64Array[];
  /** By room across: of a part so long, and which way of ripping it. */
  readonly part: readonly Float64Array[];
  readonly way: readonly Int32Array[];
  /** By room across: of a board with so much room; and the last part of it, 0 where a step is left over. */
  readonly board: readonly Float64Array[];
  readonly last: readonly Int32Array[];
}

/**
 * Worths of strips by knapsacks, of parts by the ways of ripping, and of boards by knapsacks over parts (the two-stage
 * scheme of Gilmore and Gomory, "Multistage cutting stock problems of two and more dimensions", 1965; from memory).
 * Within a strip no piece is taken more often than there is; from strip to strip it may be: so these are bounds.
 */
export function ripTables(
  { along, widthOf, widths, room, across, ways }: Ripping,
  bounds: ArrayLike<number>,
  values: ArrayLike<number>,
): RipTables {
  const longest = Math.max(0, ...room);
  const strip = widths.map(() => new Float64Array(longest + 1));
  for (let item = 0; item < along.length; item++)
    addItem(
      strip[widthOf[item] as number] as Float64Array,
      along[item] as number,
      bounds[item] as number,
      values[item] as number,
    );
  // All pieces of a width together are worth no more than this.
  const whole = widths.map((_, width) =>
    along.reduce(
      (sum, _, item) =>
        sum + (widthOf[item] === width ? (bounds[item] as number) * Math.max(0, values[item] as number) : 0),
      0,
    ),
  );
  const part = across.map(() => new Float64Array(longest + 1));
  const way = across.map(() => new Int32Array(longest + 1));
  for (const [a, all] of ways.entries()) {
    const [best, chosen] = [part[a] as Float64Array, way[a] as Int32Array];
    const sums = new Float64Array(longest + 1);
    for (const [w, counts] of all.entries()) {
      sums.fill(0);
      for (const [width, count] of counts.entries())
        if (count > 0) addStrips(sums, strip[width] as Float64Array, count, whole[width] as number);
      for (let place = 1; place <= longest; place++)
        if ((sums[place] as number) > (best[place] as number)) {
          best[place] = sums[place] as number;
          chosen[place] = w;
        }
    }
  }
  const filled = part.map((worths) => boardsOf(worths));
  return {
    strip,
    part,
    way,
    board: filled.map(({ best }) => best),
    last: filled.map(({ last }) => last),
  };
}

/** A knapsack of all lengths with one more item, taken in powers of two up to its bound. */
function addItem(best: Float64Array, size: number, bound: number, value: number): void {
  if (!(value > 0)) return;
  const longest = best.length - 1;
  let left = Math.min(bound, Math.floor(longest / size));
  for (let many = 1; left > 0; many *= 2) {
    const taken = Math.min(many, left);
    const [space, worth] = [size * taken, value * taken];
    for (let c = longest; c >= space; c--) {
      const withIt = (best[c - space] as number) + worth;
      if (withIt > (best[c] as number)) best[c] = withIt;
    }
    left -= taken;
  }
}

/** So many strips side by side, worth no more than all pieces of their width. */
function addStrips(sums: Float64Array, worths: Float64Array, count: number, most: number): void {
  for (let place = 1; place < sums.length; place++)
    sums[place] = (sums[place] as number) + Math.min(most, count * (worths[place] as number));
}

/** Parts end to end, each as often as it fits; those that two shorter ones replace are not gone on with. */
function boardsOf(part: Float64Array): { best: Float64Array; last: Int32Array } {
  const best = new Float64Array(part.length);
  const last = new Int32Array(part.length);
  const useful: number[] = [];
  for (let room = 1; room < part.length; room++) {
    let most = best[room - 1] as number;
    let chosen = 0;
    for (let k = 0; k < useful.length; k++) {
      const length = useful[k] as number;
      const worth = (part[length] as number) + (best[room - length] as number);
      if (worth > most) {
        most = worth;
        chosen = length;
      }
    }
    if ((part[room] as number) > most) {
      most = part[room] as number;
      chosen = room;
      useful.push(room);
    }
    best[room] = most;
    last[room] = chosen;
  }
  return { best, last };
}
