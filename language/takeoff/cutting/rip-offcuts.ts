import { alongOf } from './board-parts.ts';
import type { Problem, Ripping, Segment } from './problem.ts';

/** A board with its parts. */
export interface RippedBoard {
  readonly stock: number;
  readonly segments: readonly Segment[];
}

/**
 * The same parts on the same boards, with as much as possible of what is left in one piece: the board with the longest
 * offcut gives parts to others that have room, or exchanges them for shorter ones, as long as that makes it longer.
 */
export function longerRippedOffcuts(
  boards: readonly RippedBoard[],
  { ripping }: Problem & { readonly ripping: Ripping },
): RippedBoard[] {
  const result = boards.map(({ stock, segments }) => ({ stock, segments: [...segments] }));
  const left = ({ stock, segments }: RippedBoard) => (ripping.room[stock] as number) - alongOf(segments);
  const sameWidth = (a: RippedBoard, b: RippedBoard) =>
    ripping.acrossOf[a.stock] === ripping.acrossOf[b.stock];
  for (let round = 0; round < 20; round++) {
    const [giver] = [...result].sort((a, b) => left(b) - left(a));
    if (!giver) break;
    let gained = false;
    for (const taker of result) {
      if (taker === giver || !sameWidth(taker, giver)) continue;
      for (const [at, part] of [...giver.segments.entries()].reverse()) {
        const room = left(taker);
        const gives = part.along <= room ? -1 : shortestThat(taker.segments, part.along - room, part.along);
        if (gives === undefined) continue;
        giver.segments.splice(at, 1);
        if (gives >= 0) giver.segments.push(...taker.segments.splice(gives, 1));
        taker.segments.push(part);
        gained = true;
        break;
      }
    }
    if (!gained) break;
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
