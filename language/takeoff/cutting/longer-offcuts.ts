import { spaceOf } from './column-pool.ts';
import { patternOf } from './fillings.ts';
import { solveKnapsacks } from './knapsack.ts';
import type { Pattern, Problem } from './problem.ts';

/**
 * The same pieces on the same boards, with as much as possible of what is left in one piece: the board with the longest
 * offcut gives pieces to others that they have room for, or exchanges with them, as long as that makes it longer.
 */
export function longerOffcuts(problem: Problem, boards: readonly Pattern[]): Pattern[] {
  const { sizes, capacities } = problem;
  const left = (pattern: Pattern) => (capacities[pattern.stock] as number) - spaceOf(pattern, problem);
  const result = [...boards];
  if (result.length < 2) return result;
  for (let round = 0; round < 20; round++) {
    const most = result.reduce(
      (held, pattern, at) => (left(pattern) > left(result[held] as Pattern) ? at : held),
      0,
    );
    let gained = false;
    for (let at = 0; at < result.length; at++) {
      const giver = result[most] as Pattern;
      const taker = result[at] as Pattern;
      if (at === most || left(taker) === 0) continue;
      const both = together(sizes.length, giver, taker);
      const knapsack = solveKnapsacks(sizes, both, sizes, [capacities[taker.stock] as number], {
        above: [spaceOf(taker, problem)],
        steps: 2_000,
      });
      if ((knapsack.best[0] as number) <= spaceOf(taker, problem)) continue;
      const counts = knapsack.filling(0);
      const rest = both.map((count, i) => count - (counts[i] as number));
      result[at] = patternOf(taker.stock, counts);
      result[most] = patternOf(giver.stock, rest);
      gained = true;
    }
    if (!gained) break;
  }
  return result.filter((pattern) => pattern.items.length > 0);
}

function together(sizes: number, ...patterns: readonly Pattern[]): number[] {
  const counts = new Array<number>(sizes).fill(0);
  for (const { items, counts: many } of patterns)
    for (const [k, item] of items.entries()) counts[item] = (counts[item] as number) + (many[k] as number);
  return counts;
}
