import { seeThrough } from '../../language/figures/index.ts';
import type { Layout, RunLayout } from '../../language/layout/index.ts';
import type { Job } from '../../language/model/index.ts';
import { type BoardPlan, screenAlone, searchTakeoff } from '../../language/takeoff/index.ts';
import { formatLength, formatMoney, type Money } from '../../language/units/index.ts';
import { countsOf, percent } from './words.ts';

/** What one run comes to, in words. */
export interface RunTotals {
  readonly run: string;
  readonly text: string;
  /** How it was counted. */
  readonly tip: string;
}

/** Looks at each stock's plan: as many as a search for better choices spends, so that both tell the same. */
const STEPS = 24;

/** Slats, what is bought for this run alone, its length, how open it is, and what its boards cost where all have prices. */
export function runTotals(run: RunLayout, layout: Layout, job: Job): RunTotals {
  const { name, length } = run.spec;
  if (!run.sound)
    return { run: name, text: 'cannot be worked out as it stands', tip: 'Problems says what it lacks.' };
  const slats = run.pieces.filter(({ role }) => role === 'slat');
  const plans = plansOf(run, layout, job);
  const cost = costOf(plans);
  const bought = countsOf(plans);
  return {
    run: name,
    text: [
      `${slats.length} ${slats.length === 1 ? 'slat' : 'slats'}`,
      ...(bought === '' ? [] : [`${bought}${cost ? ` for ${formatMoney(cost)}` : ''}`]),
      `${formatLength(length.value, job.measure.value)} long`,
      `${percent(seeThrough(run.openings, slats))} open`,
    ].join(', '),
    tip: 'Boards as bought for this run alone, nothing from the yard; open straight on. Show what is bought for the job.',
  };
}

function plansOf(run: RunLayout, layout: Layout, job: Job): readonly BoardPlan[] {
  const search = searchTakeoff({ ...layout, runs: [screenAlone(run)] }, { ...job, onHand: [] });
  let steps = 0;
  search.run(() => ++steps > STEPS);
  return search.takeoff().plans;
}

/** Undefined where something of it has no price, or prices are in several currencies. */
function costOf(plans: readonly BoardPlan[]): Money | undefined {
  const currency = plans[0]?.cost?.currency;
  if (currency === undefined || plans.some(({ cost }) => cost?.currency !== currency)) return undefined;
  return { minor: plans.reduce((sum, { cost }) => sum + (cost?.minor ?? 0), 0), currency };
}
