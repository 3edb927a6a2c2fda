import { spaceOf } from './column-pool.ts';
import { patternOf } from './fillings.ts';
import { solveKnapsacks } from './knapsack.ts';
import type { Pattern, Problem } from './problem.ts';

/** So often a board is looked at that might give something. */
const ROUNDS = 40;

/**
 * The same pieces on the same boards, with as much as possible of what is left in one piece: the board with the longest
 * offcut gives pieces to others that they have room for, or exchanges with them, as long as that makes it longer and
 * nothing is lost of what is worth keeping; then the board with the next longest, and so on.
 */
export function longerOffcuts(problem: Problem, boards: readonly Pattern[]): Pattern[] {
  const { sizes, capacities } = problem;
  const left = (pattern: Pattern) => (capacities[pattern.stock] as number) - spaceOf(pattern, problem);
  const result = [...boards];
  const settled = new Set<number>();
  for (let round = 0; round < ROUNDS && settled.size < result.length - 1; round++) {
    const most = longestOf(result.map(left), settled);
    let gained = false;
    // Of boards cut alike one is asked, until the giver has changed.
    let refused = new Set<Pattern>();
    for (let at = 0; at < result.length; at++) {
      const giver = result[most] as Pattern;
      const taker = result[at] as Pattern;
      if (at === most || settled.has(at) || refused.has(taker) || left(taker) === 0) continue;
      refused.add(taker);
      const both = together(sizes.length, giver, taker);
      const knapsack = solveKnapsacks(sizes, both, sizes, [capacities[taker.stock] as number], {
        above: [spaceOf(taker, problem)],
        steps: 2_000,
      });
      if ((knapsack.best[0] as number) <= spaceOf(taker, problem)) continue;
      const counts = knapsack.filling(0);
      const rest = both.map((count, i) => count - (counts[i] as number));
      const [taken, given] = [patternOf(taker.stock, counts), patternOf(giver.stock, rest)];
      if (keptOf([left(taken), left(given)], problem) < keptOf([left(taker), left(giver)], problem)) continue;
      result[at] = taken;
      result[most] = given;
      refused = new Set();
      gained = true;
    }
    if (!gained) settled.add(most);
  }
  return result.filter((pattern) => pattern.items.length > 0);
}

/** The place of the longest, those settled left out. */
export function longestOf(lefts: readonly number[], settled: ReadonlySet<number>): number {
  let most = -1;
  for (const [at, left] of lefts.entries())
    if (!settled.has(at) && (most < 0 || left > (lefts[most] as number))) most = at;
  return most;
}

/** Of what is left, as much as is worth keeping. */
export const keptOf = (lefts: readonly number[], { keep }: Pick<Problem, 'keep'>): number =>
  lefts.reduce((sum, left) => sum + (left >= keep ? left : 0), 0);

function together(sizes: number, ...patterns: readonly Pattern[]): number[] {
  const counts = new Array<number>(sizes).fill(0);
  for (const { items, counts: many } of patterns)
    for (const [k, item] of items.entries()) counts[item] = (counts[item] as number) + (many[k] as number);
  return counts;
}
