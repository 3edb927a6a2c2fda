import type { PackingSearch } from './exact-packing.ts';
import { Master } from './master.ts';
import type { Packing, Pattern, Problem } from './problem.ts';

/** Some patterns of one stock: those with so many of a size or more, or one alone. */
interface Group {
  readonly stock: number;
  readonly has: (pattern: Pattern, index: number) => boolean;
}

/** Of a stock's boards at most so many are cut by patterns of a group, or by those outside it. */
interface Limit extends Group {
  readonly inside: boolean;
  readonly limit: number;
}

type Branch = readonly Limit[];

/** What is uncovered, by size, beyond which it is more than rounding. */
const UNCOVERED = 1e-6;

/**
 * Whether pieces fit on just these boards by some of these patterns, which must be all there are: branch and bound with
 * the linear program of what stays uncovered. A branch splits by how many boards of a stock are cut with so many of a
 * size or more: at most k of them, or at most all but k + 1 without (after Vanderbeck, 2000). It ends where the dual
 * solution says that something stays uncovered, corrected for how far it fails to be one.
 */
export function* branchOnPatterns(
  problem: Problem,
  counts: readonly number[],
  patterns: readonly Pattern[],
  mostBranches: number,
): Generator<undefined, PackingSearch> {
  const open: Branch[] = [[]];
  for (let branches = 0; open.length > 0; branches++) {
    if (branches >= mostBranches) return { kind: 'unfinished' };
    yield;
    const branch = open.pop() as Branch;
    const times = solveBranch(problem, counts, patterns, branch);
    if (times === 'refuted') continue;
    if (times === 'unclear') return { kind: 'unfinished' };
    const split = splitOf(patterns, times);
    if (!split) {
      const packing = packingOf(problem, patterns, times);
      return packing ? { kind: 'packed', packing } : { kind: 'unfinished' };
    }
    const { group, sum } = split;
    const at = Math.floor(sum + 1e-9);
    const few = [...branch, { ...group, inside: true, limit: at }];
    const many = [...branch, { ...group, inside: false, limit: (counts[group.stock] as number) - at - 1 }];
    // The nearer side last, for it is gone on with first.
    if (sum - at > 0.5) open.push(few, many);
    else open.push(many, few);
  }
  return { kind: 'impossible' };
}

type Times = ReadonlyMap<number, number>;

function solveBranch(
  { sizes, demands, capacities }: Problem,
  counts: readonly number[],
  patterns: readonly Pattern[],
  branch: Branch,
): Times | 'refuted' | 'unclear' {
  if (branch.some(({ limit }) => limit < 0)) return 'refuted';
  const master = new Master(demands, [...counts, ...branch.map(({ limit }) => limit)], sizes);
  for (const [index, pattern] of patterns.entries()) {
    const also: number[] = [];
    for (const [k, one] of branch.entries())
      if (one.stock === pattern.stock && one.has(pattern, index) === one.inside)
        also.push(capacities.length + k);
    master.columns.push({ pattern, cost: 0, also });
  }
  if (!master.optimize()) return 'unclear';
  if (master.uncovered > UNCOVERED) return master.provenUncovered() > UNCOVERED / 2 ? 'refuted' : 'unclear';
  return new Map(master.solutionByIndex().map(({ index, times }) => [index, times]));
}

/** The group whose share of boards is most undecided, of the largest size; where none is, an undecided pattern. */
function splitOf(patterns: readonly Pattern[], times: Times): { group: Group; sum: number } | undefined {
  const sums = new Map<string, { stock: number; item: number; least: number; sum: number }>();
  for (const [index, many] of times) {
    const { stock, items, counts } = patterns[index] as Pattern;
    for (const [k, item] of items.entries()) {
      for (let least = 1; least <= (counts[k] as number); least++) {
        const key = `${stock} ${item} ${least}`;
        const held = sums.get(key);
        if (held) held.sum += many;
        else sums.set(key, { stock, item, least, sum: many });
      }
    }
  }
  let best: { stock: number; item: number; least: number; sum: number } | undefined;
  let most = 1e-6;
  for (const one of sums.values()) {
    const part = Math.abs(one.sum - Math.round(one.sum));
    if (part > most + 0.05 || (best && part > most - 0.05 && part > 0.05 && one.item < best.item))
      [most, best] = [part, one];
  }
  if (best) {
    const { stock, item, least, sum } = best;
    const has = ({ items, counts }: Pattern) => (counts[items.indexOf(item)] ?? 0) >= least;
    return { group: { stock, has }, sum };
  }
  for (const [index, many] of times)
    if (Math.abs(many - Math.round(many)) > 1e-6)
      return {
        group: { stock: (patterns[index] as Pattern).stock, has: (_, at) => at === index },
        sum: many,
      };
  return undefined;
}

/** Whole boards, with pieces cut more often than wanted left off; undefined when some are missing. */
function packingOf({ demands }: Problem, patterns: readonly Pattern[], times: Times): Packing | undefined {
  const left = Int32Array.from(demands);
  const packing: { pattern: Pattern; times: number }[] = [];
  for (const [index, many] of times) {
    const { stock, items, counts } = patterns[index] as Pattern;
    for (let board = Math.round(many); board > 0; board--) {
      const kept = items.map((item, k) => Math.min(counts[k] as number, left[item] as number));
      for (const [k, item] of items.entries()) left[item] = (left[item] as number) - (kept[k] as number);
      const some = items
        .map((item, k) => [item, kept[k] as number] as const)
        .filter(([, count]) => count > 0);
      const pattern = { stock, items: some.map(([item]) => item), counts: some.map(([, count]) => count) };
      packing.push({ pattern, times: 1 });
    }
  }
  return left.some((count) => count > 0) ? undefined : packing;
}
