/**
 * Bounded knapsacks over one set of sizes: for every capacity up to the largest at once, by dynamic programming
 * over whole sizes, counts taken in powers of two (Martello and Toth, Knapsack Problems, 1990, chapter 3).
 */
export interface Knapsacks {
  /** Greatest sum of values for each capacity asked for. Whole values give whole, exact sums. */
  readonly best: Float64Array;
  /** How many of each size a best filling of the capacity of that index has. */
  filling(at: number): Int32Array;
}

/** Above so many cells a table is not made; the search does it then. */
const LARGEST_TABLE = 60_000_000;

/**
 * @param sizes whole and greater than 0
 * @param bounds how many of each may be taken
 * @param values what each is worth; those worth nothing are left out
 */
export function solveKnapsacks(
  sizes: readonly number[],
  bounds: ArrayLike<number>,
  values: ArrayLike<number>,
  capacities: readonly number[],
): Knapsacks {
  const largest = Math.max(0, ...capacities);
  const bundles: { item: number; many: number; size: number }[] = [];
  for (let item = 0; item < sizes.length; item++) {
    if (!((values[item] as number) > 0)) continue;
    const size = sizes[item] as number;
    let left = Math.min(bounds[item] as number, Math.floor(largest / size));
    for (let many = 1; left > 0; many *= 2) {
      const taken = Math.min(many, left);
      bundles.push({ item, many: taken, size: size * taken });
      left -= taken;
    }
  }
  const width = largest + 1;
  if (bundles.length * width > LARGEST_TABLE) return searchKnapsacks(sizes, bounds, values, capacities);
  const best = new Float64Array(width);
  const taken = new Uint8Array(bundles.length * width);
  for (const [row, { item, many, size }] of bundles.entries()) {
    const value = (values[item] as number) * many;
    const start = row * width;
    for (let c = largest; c >= size; c--) {
      const withIt = (best[c - size] as number) + value;
      if (withIt > (best[c] as number)) {
        best[c] = withIt;
        taken[start + c] = 1;
      }
    }
  }
  return {
    best: Float64Array.from(capacities, (capacity) => best[Math.max(0, capacity)] as number),
    filling: (at) => {
      const counts = new Int32Array(sizes.length);
      let c = Math.max(0, capacities[at] as number);
      for (let row = bundles.length - 1; row >= 0; row--) {
        const bundle = bundles[row] as (typeof bundles)[number];
        if (taken[row * width + c] !== 1) continue;
        counts[bundle.item] = (counts[bundle.item] as number) + bundle.many;
        c -= bundle.size;
      }
      return counts;
    },
  };
}

/** The same for large capacities: depth-first with the fractional filling as bound (Horowitz and Sahni, 1974). */
function searchKnapsacks(
  sizes: readonly number[],
  bounds: ArrayLike<number>,
  values: ArrayLike<number>,
  capacities: readonly number[],
): Knapsacks {
  const order = sizes
    .map((_, item) => item)
    .filter((item) => (values[item] as number) > 0 && (bounds[item] as number) > 0)
    .sort(
      (a, b) => (values[b] as number) / (sizes[b] as number) - (values[a] as number) / (sizes[a] as number),
    );
  const found = capacities.map((capacity) => searchOne(order, sizes, bounds, values, capacity));
  return {
    best: Float64Array.from(found, ({ value }) => value),
    filling: (at) => (found[at] as Found).counts,
  };
}

interface Found {
  readonly value: number;
  readonly counts: Int32Array;
}

function searchOne(
  order: readonly number[],
  sizes: readonly number[],
  bounds: ArrayLike<number>,
  values: ArrayLike<number>,
  capacity: number,
): Found {
  let value = 0;
  let counts = new Int32Array(sizes.length);
  const now = new Int32Array(sizes.length);
  const dive = (depth: number, room: number, sum: number): void => {
    if (sum > value) {
      value = sum;
      counts = now.slice();
    }
    const item = order[depth];
    if (item === undefined) return;
    const [size, worth] = [sizes[item] as number, values[item] as number];
    if (sum + (room / size) * worth <= value) return;
    for (let many = Math.min(bounds[item] as number, Math.floor(room / size)); many >= 0; many--) {
      const next = order[depth + 1];
      const rest = room - many * size;
      const hope = next === undefined ? 0 : (rest / (sizes[next] as number)) * (values[next] as number);
      if (sum + many * worth + hope <= value) break;
      now[item] = many;
      dive(depth + 1, rest, sum + many * worth);
    }
    now[item] = 0;
  };
  dive(0, capacity, 0);
  return { value, counts };
}
