import type { CutDemand, CutInstance } from '../problem.ts';
import { squareEnds, tipOf } from './ends.ts';

/**
 * The instance with pieces as long as what each is taken to need of a board, all ends square: the planner then knows no
 * angles. At 1 each needs all from tip to tip, and the wider of its cuts: so pieces fit in any order that has the widest cuts
 * first. At 0 each needs the least it can have however they are laid, so that no plan costs less than the bound of this
 * one; between them, something between. Whole marks: up at 1, down at 0.
 *
 * The least: two ends that meet are nowhere nearer than the wider of their cuts, `max(k, k') >= (k + k') / 2`, so half of
 * each end's cut belongs to its piece, besides the length of its middle. At an end of the board there is no cut, but half of
 * the end's tip stands out; of a cut that is wider than a square one by more than its tips are apart, only so much is counted.
 * So `sum(middle + (k + k') / 2) <= board + kerf`, as if they were square.
 */
export function withShares(instance: CutInstance, nearness: number): CutInstance {
  const { kerf, trim = 0, mark = 0, stock } = instance;
  const longest = stock.reduce((most, { length }) => Math.max(most, length - trim), 0);
  return {
    ...instance,
    pieces: instance.pieces.map((piece) => {
      if (!piece.ends) return piece;
      const [low, high] = [leastShare(piece, kerf), greatestShare(piece, kerf, mark, longest)];
      const length =
        nearness === 1 ? high : toMark(low + nearness * (high - low), mark, nearness === 0 ? 'down' : 'near');
      const { ends: _, ...square } = piece;
      return { ...square, length: Math.max(length, mark, piece.length / 1000) };
    }),
  };
}

/**
 * The least that pieces can need (see `withShares`), and yet none on a board that is shorter than it is from tip to tip: so
 * that no plan costs less than the bound of this instance. Such a piece is taken to need a mark more than the longest board
 * that is too short for it; and boards that are long enough are taken to be longer by what all such pieces that could
 * lie on them need more than the least, so that whatever can lie on them still does.
 */
export function withLeastShares(instance: CutInstance): CutInstance {
  const { kerf, trim = 0, mark = 0, stock } = instance;
  const least = withShares(instance, 0);
  const rooms = stock.map(({ length }) => length - trim);
  const [grown, more]: [number[], { least: number; by: number; tips: number }[]] = [[], []];
  for (const [at, { length }] of least.pieces.entries()) {
    const tips = instance.pieces[at]?.length ?? length;
    const short = rooms.filter((room) => room < tips - 1e-9).reduce((most, room) => Math.max(most, room), 0);
    const by = Math.max(0, short + Math.max(mark, 1e-3) - length);
    grown.push(length + by);
    if (by > 0) more.push({ least: length, by, tips });
  }
  if (more.length === 0) return least;
  const allowance = (room: number): number => {
    const fitting = more.filter(({ tips }) => tips <= room + 1e-9);
    if (fitting.length === 0) return 0;
    const shortest = Math.min(...fitting.map((one) => one.least));
    return Math.floor((room + kerf) / (shortest + kerf)) * Math.max(...fitting.map(({ by }) => by));
  };
  return {
    ...least,
    pieces: least.pieces.map((piece, at) => ({ ...piece, length: grown[at] ?? piece.length })),
    stock: stock.map((board, at) => ({ ...board, length: board.length + allowance(rooms[at] ?? 0) })),
  };
}

function leastShare({ length, ends }: CutDemand, kerf: number): number {
  const [first, second] = ends ?? squareEnds(kerf);
  const cut = (end: typeof first) => Math.min(end.kerf, kerf + 2 * tipOf(end));
  return length - tipOf(first) - tipOf(second) + (cut(first) + cut(second)) / 2 - kerf;
}

/** A piece as long as a board needs no cut beside it. */
function greatestShare({ length, ends }: CutDemand, kerf: number, mark: number, longest: number): number {
  const [first, second] = ends ?? squareEnds(kerf);
  const more = toMark(Math.max(first.kerf, second.kerf) - kerf, mark, 'up');
  return length + Math.min(Math.max(0, more), Math.max(0, longest - length));
}

function toMark(length: number, mark: number, way: 'up' | 'down' | 'near'): number {
  if (mark <= 0) return length;
  const marks = length / mark;
  if (way === 'near') return Math.round(marks) * mark;
  return (way === 'up' ? Math.ceil(marks - 1e-9) : Math.floor(marks + 1e-9)) * mark;
}
