import { alongOf } from './board-parts.ts';
import { keptOf, longestOf } from './longer-offcuts.ts';
import type { Problem, Ripping, Segment } from './problem.ts';

/** So often a board is looked at that might give something. */
const ROUNDS = 40;

/** A board with its parts. */
export interface RippedBoard {
  readonly stock: number;
  readonly segments: readonly Segment[];
}

/**
 * As `longerOffcuts`, with parts in place of pieces: the board with the longest offcut gives parts to others that have
 * room, or exchanges them for shorter ones.
 */
export function longerRippedOffcuts(
  boards: readonly RippedBoard[],
  problem: Problem & { readonly ripping: Ripping },
): RippedBoard[] {
  const { room, acrossOf } = problem.ripping;
  const result = boards.map(({ stock, segments }) => ({ stock, segments: [...segments] }));
  const left = ({ stock, segments }: RippedBoard) => (room[stock] as number) - alongOf(segments);
  const settled = new Set<number>();
  for (let round = 0; round < ROUNDS && settled.size < result.length - 1; round++) {
    const most = longestOf(result.map(left), settled);
    const giver = result[most] as (typeof result)[number];
    let gained = false;
    for (const [place, taker] of result.entries()) {
      if (place === most || settled.has(place) || acrossOf[taker.stock] !== acrossOf[giver.stock]) continue;
      for (const [at, part] of [...giver.segments.entries()].reverse()) {
        const free = left(taker);
        const gives = part.along <= free ? -1 : shortestThat(taker.segments, part.along - free, part.along);
        if (gives === undefined) continue;
        const by = part.along - (gives >= 0 ? (taker.segments[gives] as Segment).along : 0);
        const after = keptOf([free - by, left(giver) + by], problem);
        if (after < keptOf([free, left(giver)], problem)) continue;
        giver.segments.splice(at, 1);
        if (gives >= 0) giver.segments.push(...taker.segments.splice(gives, 1));
        taker.segments.push(part);
        gained = true;
        break;
      }
    }
    if (!gained) settled.add(most);
  }
  return result.filter(({ segments }) => segments.length > 0);
}

/** The shortest part that is at least so long, yet shorter than what comes for it. */
function shortestThat(parts: readonly Segment[], least: number, below: number): number | undefined {
  let best: number | undefined;
  for (const [at, { along }] of parts.entries())
    if (
      along >= least &&
      along < below &&
      along < (parts[best ?? at] as Segment).along + (best === undefined ? 1 : 0)
    )
      best = at;
  return best;
}
