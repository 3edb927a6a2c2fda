import type { CutTurn } from '../problem.ts';
import { between, type Ends, tipOf, turnedEnds } from './ends.ts';

/** What lies in a row: its ends as it is not turned, and its length from tip to tip. */
export interface Block {
  readonly ends: Ends;
  readonly length: number;
}

/** A block where it lies; `at` is its tip, from the start of the row. */
export interface Placed<One extends Block> {
  readonly block: One;
  readonly turn: CutTurn;
  readonly ends: Ends;
  readonly at: number;
}

/** A row with what it takes from the first tip to the last. */
export interface Row<One extends Block> {
  readonly placed: readonly Placed<One>[];
  readonly used: number;
}

interface Lying<One extends Block> {
  readonly block: One;
  readonly turn: CutTurn;
  readonly ends: Ends;
}

/** Rounds of improving a row; longer ones take too long, and lose little as they are chained. */
const ROUNDS = 12;
const MOST_MOVED = 24;

/**
 * Lays blocks end to end so that ends cut alike meet: from each of them the nearest match next, then stretches of the row
 * turned or moved as long as that makes it shorter. It never takes more than all from tip to tip with the wider cut
 * between any two. A row so found need not be the shortest.
 *
 * @param turns ways a block may be turned
 */
export function layRow<One extends Block>(blocks: readonly One[], turns: readonly CutTurn[]): Row<One> {
  const lying = (block: One, turn: CutTurn): Lying<One> => ({
    block,
    turn,
    ends: turnedEnds(block.ends, turn),
  });
  const widest = ({ ends }: Block) => Math.max(ends[0].kerf, ends[1].kerf);
  const sorted = [...blocks].sort((a, b) => widest(b) - widest(a) || b.length - a.length);
  const least = leastLost(blocks);
  let best = improved(
    sorted.map((block) => lying(block, 'none')),
    turns,
  );
  const seen = new Set<string>();
  for (const first of sorted)
    for (const turn of turns) {
      if (lostOf(best) <= least + 1e-6) return placedRow(best);
      const start = lying(first, turn);
      const key = JSON.stringify(start.ends);
      if (seen.has(key)) continue;
      seen.add(key);
      const chain = chained(start, sorted, turns);
      const row = lostOf(chain) <= least + 1e-6 ? chain : improved(chain, turns);
      if (lostOf(row) < lostOf(best) - 1e-9) best = row;
    }
  return placedRow(best);
}

/** From a first block on always the one that loses least, of alike ones the longest. */
function chained<One extends Block>(
  start: Lying<One>,
  blocks: readonly One[],
  turns: readonly CutTurn[],
): Lying<One>[] {
  const left = blocks.filter((block) => block !== start.block);
  const row = [start];
  while (left.length > 0) {
    const end = (row[row.length - 1] as Lying<One>).ends[1];
    let next: { at: number; turn: CutTurn; ends: Ends } | undefined;
    let least = Infinity;
    const tried = new Set<Ends>();
    for (const [at, block] of left.entries()) {
      if (tried.has(block.ends)) continue;
      tried.add(block.ends);
      for (const turn of turns) {
        const ends = turnedEnds(block.ends, turn);
        const lost = between(end, ends[0]);
        if (lost < least - 1e-9) [least, next] = [lost, { at, turn, ends }];
      }
    }
    if (!next) break;
    const [block] = left.splice(next.at, 1);
    if (block) row.push({ block, turn: next.turn, ends: next.ends });
  }
  return row;
}

/** What tips and cuts take besides the blocks' middles. */
function lostOf<One extends Block>(row: readonly Lying<One>[]): number {
  const [first, last] = [row[0], row[row.length - 1]];
  if (!first || !last) return 0;
  let lost = tipOf(first.ends[0]) + tipOf(last.ends[1]);
  for (let at = 1; at < row.length; at++)
    lost += between((row[at - 1] as Lying<One>).ends[1], (row[at] as Lying<One>).ends[0]);
  return lost;
}

/** No row loses less: half of the cut at every end, but at two of them the tip instead. */
function leastLost(blocks: readonly Block[]): number {
  const ends = blocks.flatMap((block) => block.ends);
  const outer = ends.map((end) => tipOf(end) - end.kerf / 2).sort((a, b) => a - b);
  const [first = 0, second = 0] = outer;
  return ends.reduce((sum, { kerf }) => sum + kerf / 2, first + second);
}

/** Stretches turned as a whole, and single blocks put elsewhere, while that helps. */
function improved<One extends Block>(row: readonly Lying<One>[], turns: readonly CutTurn[]): Lying<One>[] {
  let best = [...row];
  let lost = lostOf(best);
  if (best.length > MOST_MOVED || best.every(({ ends }) => tipOf(ends[0]) + tipOf(ends[1]) === 0))
    return best;
  const take = (other: Lying<One>[]): boolean => {
    const less = lostOf(other);
    if (less >= lost - 1e-9) return false;
    [best, lost] = [other, less];
    return true;
  };
  for (let round = 0; round < ROUNDS; round++) {
    let gained = false;
    for (let from = 0; from < best.length; from++)
      for (let to = from; to < best.length; to++)
        for (const turn of turns) {
          if (turn === 'none') continue;
          const stretch = turnedRow(best.slice(from, to + 1), turn);
          if (take([...best.slice(0, from), ...stretch, ...best.slice(to + 1)])) gained = true;
        }
    for (let from = 0; from < best.length; from++)
      for (let to = 0; to < best.length; to++)
        for (const turn of turns) {
          const moved = best[from] as Lying<One>;
          const others = best.filter((_, at) => at !== from);
          if (take([...others.slice(0, to), ...turnedRow([moved], turn), ...others.slice(to)])) gained = true;
        }
    if (!gained) break;
  }
  return best;
}

/** All of a stretch turned together: what lay last lies first where it is turned end for end. */
function turnedRow<One extends Block>(row: readonly Lying<One>[], turn: CutTurn): Lying<One>[] {
  const turned = row.map(({ block, turn: before, ends }) => ({
    block,
    turn: afterBoth(before, turn),
    ends: turnedEnds(ends, turn),
  }));
  return turn === 'end' || turn === 'end-over' ? turned.reverse() : turned;
}

/** Two half turns about axes square to one another are one about the third. */
function afterBoth(one: CutTurn, other: CutTurn): CutTurn {
  const parts = (turn: CutTurn) => [
    turn === 'end' || turn === 'end-over',
    turn === 'over' || turn === 'end-over',
  ];
  const [[endA, overA], [endB, overB]] = [parts(one), parts(other)];
  const [end, over] = [endA !== endB, overA !== overB];
  return end ? (over ? 'end-over' : 'end') : over ? 'over' : 'none';
}

function placedRow<One extends Block>(row: readonly Lying<One>[]): Row<One> {
  let at = 0;
  const placed = row.map((one, k): Placed<One> => {
    const before = row[k - 1];
    // From tip to tip: middles are so far apart, and tips stand beyond them.
    if (before) at += between(before.ends[1], one.ends[0]) - tipOf(before.ends[1]) - tipOf(one.ends[0]);
    const place = { ...one, at };
    at += one.block.length;
    return place;
  });
  const ends = placed.map((one) => one.at + one.block.length);
  return { placed, used: Math.max(0, ...ends) };
}
