import { baysOf, type Piece, type RunLayout } from '../layout/index.ts';
import type { FlatStock, Job } from '../model/index.ts';
import { ceilToStep, type Ticks } from '../units/index.ts';
import { moreWithin } from './angled-kerf.ts';
import { kerfOf } from './board-plan.ts';
import { planCuts } from './cutting/index.ts';
import { boughtFor, sawnWidth } from './demand.ts';
import { yardOf } from './yard.ts';

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
 * How much of a run's bays can be filled from the boards on hand alone, cut whole and ripped as it goes best; pieces with
 * angled ends take their room from tip to tip, though laid well they might need a little less. Pure.
 */
export function pileOf(run: RunLayout, job: Job): Pile {
  const slats = run.pieces.filter(
    ({ role, gate, bay }) => (role === 'slat' || role === 'trim') && gate === undefined && bay !== undefined,
  );
  const bays = [...new Set(slats.flatMap(baysOf))].sort((a, b) => a - b);
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

function lackingOf(pieces: readonly Piece[], run: RunLayout, job: Job): Pile['missing'] {
  const stocks = new Map<string, FlatStock>();
  for (const { value } of run.spec.infill.pattern.repeat) stocks.set(value.name, value);
  const byBought = new Map<string, Piece[]>();
  for (const piece of pieces) {
    const stock = stocks.get(piece.cut.stock);
    const name = stock ? boughtFor(stock).name : piece.cut.stock;
    const held = byBought.get(name);
    if (held) held.push(piece);
    else byBought.set(name, [piece]);
  }
  return [...byBought.values()].flatMap((own) => cutFrom(own, stocks, job));
}

/** Of pieces that are cut from the same boards, those that find none in the yard. */
function cutFrom(
  pieces: readonly Piece[],
  stocks: ReadonlyMap<string, FlatStock>,
  job: Job,
): Pile['missing'] {
  const wanted = new Map<
    string,
    { stock: string; length: Ticks; taken: Ticks; width: Ticks; count: number }
  >();
  const trim = job.saw.trim?.value ?? 0;
  const about = { kerf: kerfOf(job), step: job.measure.value.step };
  const names = new Set(
    pieces.flatMap(({ cut }) => {
      const stock = stocks.get(cut.stock);
      return stock ? [cut.stock, boughtFor(stock).name] : [cut.stock];
    }),
  );
  const yard = yardOf(job, names);
  const longest = Math.max(0, ...yard.map((one) => one.length - one.trim));
  for (const piece of pieces) {
    const stock = stocks.get(piece.cut.stock);
    const bought = stock && boughtFor(stock);
    const width = stock && bought ? sawnWidth(piece, stock, bought) : piece.cut.width;
    const length = ceilToStep(piece.cut.longPoint, about.step);
    const taken = length + moreWithin(piece.cut, length, longest, about);
    const label = `${piece.cut.stock} ${length} ${taken} ${width}`;
    const held = wanted.get(label) ?? { stock: piece.cut.stock, length, taken, width, count: 0 };
    held.count++;
    wanted.set(label, held);
  }
  const boughtWidth = (name: string) =>
    widthIn(name, stocks) ?? Math.max(...[...wanted.values()].map(({ width }) => width));
  const sources = yard.map((one) => ({ ...one, width: boughtWidth(one.stock) }));
  const fits = ({ taken, width }: { taken: Ticks; width: Ticks }) =>
    sources.some((one) => taken <= one.length - one.trim && width <= one.width);
  const missing = ([, { stock, length, count }]: [
    string,
    { stock: string; length: Ticks; count: number },
  ]) => ({ stock, length, count });
  const lost = [...wanted].filter(([, one]) => !fits(one)).map(missing);
  const tried = [...wanted].filter(([, one]) => fits(one));
  if (tried.length === 0) return lost;
  let steps = 0;
  const plan = planCuts(
    {
      kerf: about.kerf,
      trim,
      pieces: tried.map(([label, { taken, width, count }]) => ({ label, length: taken, width, count })),
      stock: sources.map(({ length, width, count, trim: own }) => ({
        length: length + trim - own,
        width,
        price: Math.round(length / 800),
        available: count,
      })),
    },
    () => ++steps > STEPS,
  );
  if ('boards' in plan) return lost;
  if (plan.kind !== 'too-few-boards' || plan.lacking.length === 0) return [...lost, ...tried.map(missing)];
  return [
    ...lost,
    ...plan.lacking.flatMap(({ label, count }) => {
      const one = wanted.get(label);
      return one ? [{ stock: one.stock, length: one.length, count }] : [];
    }),
  ];
}

/** Of a stock of the pattern, or of the board that one of them is ripped from. */
function widthIn(name: string, stocks: ReadonlyMap<string, FlatStock>): Ticks | undefined {
  for (const stock of stocks.values())
    for (let one: FlatStock | undefined = stock; one; one = one.parent)
      if (one.name === name) return one.width.value;
  return undefined;
}
