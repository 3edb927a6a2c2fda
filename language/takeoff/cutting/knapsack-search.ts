/** A filling of one board, and what is known of the best one. */
export interface Found {
  readonly value: number;
  /** No filling is worth more. */
  readonly atMost: number;
  readonly counts: Int32Array;
  /** Whether all ways were looked at, so that `value` is the greatest, or nothing is worth more than was asked. */
  readonly finished: boolean;
}

/**
 * A best filling of one board by depth-first search, densest worth first, with the filling by fractions as bound
 * (Dantzig, 1957; Horowitz and Sahni, 1974).
 *
 * Whole values below 2^46 in sum give whole, exact answers: a bound in floats errs there by less than 1/2, so that where
 * it is no more than a whole number held already, no whole number above that is missed.
 *
 * @param above fillings worth no more than this are not looked for
 * @param mostSteps after so many steps it takes what it has
 */
export function searchKnapsack(
  sizes: readonly number[],
  bounds: ArrayLike<number>,
  values: ArrayLike<number>,
  capacity: number,
  above: number,
  mostSteps: number,
): Found {
  const order: number[] = [];
  for (let i = 0; i < sizes.length; i++)
    if ((values[i] as number) > 0 && (bounds[i] as number) > 0 && (sizes[i] as number) <= capacity)
      order.push(i);
  const density = (i: number) => (values[i] as number) / (sizes[i] as number);
  order.sort((a, b) => density(b) - density(a) || a - b);
  const n = order.length;
  const [size, value, most] = [new Float64Array(n), new Float64Array(n), new Int32Array(n)];
  const smallest = new Float64Array(n + 1).fill(Infinity);
  for (let k = n - 1; k >= 0; k--) {
    const item = order[k] as number;
    size[k] = sizes[item] as number;
    value[k] = values[item] as number;
    most[k] = Math.min(bounds[item] as number, Math.floor(capacity / (size[k] as number)));
    smallest[k] = Math.min(size[k] as number, smallest[k + 1] as number);
  }
  const now = new Int32Array(n);
  let best = now.slice();
  let held = above;
  let found = 0;
  let steps = 0;

  /** Most that what comes from k on can add in the room left, fractions allowed. */
  const hope = (k: number, room: number): number => {
    let sum = 0;
    let left = room;
    for (let j = k; j < n; j++) {
      const space = (size[j] as number) * (most[j] as number);
      if (space >= left) return sum + (left / (size[j] as number)) * (value[j] as number);
      sum += (value[j] as number) * (most[j] as number);
      left -= space;
    }
    return sum;
  };

  const descend = (from: number, room: number, sum: number): void => {
    if (sum > held) {
      held = sum;
      found = sum;
      best = now.slice();
    }
    let k = from;
    while (k < n && (size[k] as number) > room) k++;
    if (k >= n || room < (smallest[k] as number) || steps > mostSteps) return;
    steps++;
    if (sum + hope(k, room) <= held) return;
    const [each, worth] = [size[k] as number, value[k] as number];
    for (let many = Math.min(most[k] as number, Math.floor(room / each)); many >= 0; many--) {
      const rest = room - many * each;
      const next = k + 1;
      // Fewer of the densest never give a higher bound.
      if (many > 0 && next < n && sum + many * worth + hope(next, rest) <= held && sum + many * worth <= held)
        break;
      now[k] = many;
      descend(next, rest, sum + many * worth);
    }
    now[k] = 0;
  };
  descend(0, capacity, 0);

  const counts = new Int32Array(sizes.length);
  for (let k = 0; k < n; k++) counts[order[k] as number] = best[k] as number;
  const finished = steps <= mostSteps;
  return { value: found, atMost: finished ? held : Math.max(held, hope(0, capacity)), counts, finished };
}
