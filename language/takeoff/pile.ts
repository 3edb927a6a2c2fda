import type { Piece, RunLayout } from '../layout/index.ts';
import type { FlatStock, Job } from '../model/index.ts';
import { ceilToStep, type Ticks } from '../units/index.ts';
import { kerfOf, stripsOf } from './board-plan.ts';
import { planCuts } from './cutting/index.ts';

/** So much of what is there can be had. */
export interface PartOf {
  readonly can: number;
  readonly of: number;
}

/** What the boards on hand give of a run's slats and trim; posts, rails, cleats and gates are left out. */
export interface Pile {
  /** Whole bays, from station 0. */
  readonly bays: PartOf;
  /** Whole courses through all bays, from the first of the pattern. */
  readonly courses: PartOf;
  /** Pieces that find no board when all of the run is cut, by stock and length. */
  readonly missing: readonly { readonly stock: string; readonly length: Ticks; readonly count: number }[];
}

/** A plan is sought so many steps; where none is found by then, what is told is less than could be had. */
const STEPS = 60;

/**
 * How much of a run's bays can be filled from the boards on hand alone. Boards are cut whole first; what is then
 * left over is ripped, so that of boards wanted both ways a little more may be had. Pure.
 */
export function pileOf(run: RunLayout, job: Job): Pile {
  const slats = run.pieces.filter(
    ({ role, gate, bay }) => (role === 'slat' || role === 'trim') && gate === undefined && bay !== undefined,
  );
  const bays = [...new Set(slats.map(({ bay }) => bay ?? 0))].sort((a, b) => a - b);
  const courses = [...new Set(slats.flatMap(({ course }) => course ?? []))].sort((a, b) => a - b);
  const fits = (pieces: readonly Piece[]) => lackingOf(pieces, run, job).length === 0;
  return {
    bays: most(bays, (last) => fits(slats.filter(({ bay = 0 }) => bay <= last))),
    courses: most(courses, (last) =>
      fits(slats.filter(({ course }) => course !== undefined && course <= last)),
    ),
    missing: lackingOf(slats, run, job),
  };
}

/** The most from the first on, by halving: who can have more can have fewer. */
function most(numbers: readonly number[], can: (last: number) => boolean): PartOf {
  let [low, high] = [0, numbers.length];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (can(numbers[middle - 1] ?? 0)) low = middle;
    else high = middle - 1;
  }
  return { can: low, of: numbers.length };
}

interface Board {
  readonly length: Ticks;
  count: number;
}

function lackingOf(pieces: readonly Piece[], run: RunLayout, job: Job): Pile['missing'] {
  const kerf = kerfOf(job);
  const hand = new Map<string, Board[]>();
  for (const { stock, length, count } of job.onHand)
    hand.set(stock, [...(hand.get(stock) ?? []), { length, count }]);
  const stocks = new Map<string, FlatStock>();
  for (const { value } of run.spec.infill.pattern.repeat) stocks.set(value.name, value);
  const names = [...new Set(pieces.map(({ cut }) => cut.stock))];
  const isRip = (name: string) => stocks.get(name)?.parent !== undefined;
  const order = [...names.filter((name) => !isRip(name)), ...names.filter(isRip)];
  return order.flatMap((name) => {
    const own = pieces.filter(({ cut }) => cut.stock === name);
    const parent = stocks.get(name)?.parent;
    const widest = own.reduce((width, { cut }) => Math.max(width, cut.width), 0);
    const strips = parent ? stripsOf(widest, parent, kerf) : 1;
    const sources = [
      ...(hand.get(name) ?? []).map((board) => ({ board, strips: 1 })),
      ...(parent ? (hand.get(parent.name) ?? []).map((board) => ({ board, strips })) : []),
    ];
    return cutFrom(name, own, sources, kerf, job);
  });
}

/** Takes boards for the pieces, and tells which find none. */
function cutFrom(
  stock: string,
  pieces: readonly Piece[],
  sources: readonly { readonly board: Board; readonly strips: number }[],
  kerf: Ticks,
  job: Job,
): Pile['missing'] {
  const counts = new Map<Ticks, number>();
  for (const { cut } of pieces) {
    const length = ceilToStep(cut.longPoint, job.measure.value.step);
    counts.set(length, (counts.get(length) ?? 0) + 1);
  }
  const missing: { stock: string; length: Ticks; count: number }[] = [];
  const longest = Math.max(0, ...sources.map(({ board }) => (board.count > 0 ? board.length : 0)));
  const wanted = [...counts].filter(([length, count]) => {
    const goes = length <= longest - (job.saw.trim?.value ?? 0);
    if (!goes) missing.push({ stock, length, count });
    return goes;
  });
  if (wanted.length === 0) return missing;
  let steps = 0;
  const plan = planCuts(
    {
      kerf,
      trim: job.saw.trim?.value ?? 0,
      pieces: wanted.map(([length, count]) => ({ label: String(length), length, count })),
      stock: sources.map(({ board, strips }) => ({
        length: board.length,
        price: Math.round(board.length / 800),
        available: board.count * strips,
      })),
    },
    () => ++steps > STEPS,
  );
  if ('boards' in plan) {
    for (const [at, { board, strips }] of sources.entries())
      board.count -= Math.ceil(plan.boards.filter((one) => one.stock === at).length / strips);
    return missing;
  }
  const lacking =
    plan.kind === 'too-few-boards' && plan.lacking.length > 0
      ? plan.lacking.map(({ label, count }) => ({ stock, length: Number(label), count }))
      : wanted.map(([length, count]) => ({ stock, length, count }));
  for (const { board } of sources) board.count = 0;
  return [...missing, ...lacking];
}
