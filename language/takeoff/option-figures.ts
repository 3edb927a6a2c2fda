import { seeThrough, workingsOf } from '../figures/index.ts';
import type { Layout } from '../layout/index.ts';
import type { Job } from '../model/index.ts';
import type { Money } from '../units/index.ts';
import { takeoffOf } from './takeoff.ts';

/** What one alternative comes to, to be laid beside the others. */
export interface OptionFigures {
  /** Name of the option; undefined for the job as it stands. */
  readonly option?: string;
  /** Runs that cannot be worked out that way. */
  readonly broken: readonly string[];
  readonly pieces: number;
  /** Patterns with their gaps as built, in words. */
  readonly look: readonly string[];
  /** Greatest share of a run's bays that is open straight on. */
  readonly open: number;
  /** What each viewer does not see of each place, by their names. */
  readonly hidden: readonly { readonly pair: string; readonly share: number }[];
  readonly boards: number;
  /** Of the length bought, all stock together. */
  readonly waste: number;
  readonly hours: number;
  readonly price?: Money;
  /** Whether the price lacks something. */
  readonly priceWhole: boolean;
  readonly proven: boolean;
}

/** What a job comes to as laid out: figures from its pieces, boards and price from its takeoff. Pure. */
export function optionFigures(
  job: Job,
  layout: Layout,
  option: string | undefined,
  enough: () => boolean,
): OptionFigures {
  const takeoff = takeoffOf(layout, job, enough);
  const boards = takeoff.plans.flatMap((plan) => plan.boards);
  const bought = boards.reduce((sum, { length }) => sum + length, 0);
  const wasted = takeoff.plans.reduce(
    (sum, plan) => sum + plan.waste * plan.boards.reduce((all, { length }) => all + length, 0),
    0,
  );
  const { price } = takeoff;
  return {
    ...(option === undefined ? {} : { option }),
    broken: job.runs.flatMap((run) => ('broken' in run ? [run.name] : [])),
    pieces: layout.runs.reduce((sum, run) => sum + run.pieces.length, 0),
    look: [...new Set(layout.runs.map(({ spec }) => spec.infill.pattern.name))],
    open: Math.max(
      0,
      ...layout.runs.map((run) =>
        seeThrough(
          run.openings,
          run.pieces.filter(({ role }) => role === 'slat'),
        ),
      ),
    ),
    hidden: workingsOf(layout, job)
      .filter(({ code }) => code === 'privacy')
      .map(({ where, figure }) => ({ pair: where.label, share: figure.value / 100 })),
    boards: takeoff.plans.reduce(
      (sum, { buy }) => sum + [...buy.values()].reduce((all, count) => all + count, 0),
      0,
    ),
    waste: bought > 0 ? wasted / bought : 0,
    hours: (price?.minutes ?? 0) / 60,
    ...(price ? { price: { minor: price.gross, currency: price.currency } } : {}),
    priceWhole: price?.whole ?? false,
    proven: takeoff.proven,
  };
}
