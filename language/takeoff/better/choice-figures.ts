import { lookOf, seeThrough } from '../../figures/index.ts';
import type { FitChoice, Layout, RunLayout } from '../../layout/index.ts';
import type { FlatStock, HideDemand, Job } from '../../model/index.ts';
import type { Money, Ticks } from '../../units/index.ts';
import { searchBoards } from '../board-plan.ts';
import { demandOf, demandsByBought } from '../demand.ts';
import { screenAlone } from '../used-again.ts';

/** What a choice comes to; of each figure less is better. */
export interface ChoiceFigures {
  /** Length of the boards and posts that the run takes, bought for it alone. */
  readonly bought: Ticks;
  /** Their price, where each of them has one; the same currency throughout. */
  readonly cost?: Money;
  /** Share of what is bought that becomes neither a piece nor an offcut worth keeping, 0 to 1. */
  readonly waste: number;
  /** Share open straight on, 0 to 1. */
  readonly seeThrough: number;
  /** Of each place that the job wants hidden beside this run. */
  readonly seen: readonly SeenShare[];
  /** How far gaps and single slats are from what the pattern states, and bays from one another, added up. */
  readonly uneven: Ticks;
}

/** The share of a place that is seen at worst, and that may be seen, 0 to 1. */
export interface SeenShare {
  readonly place: string;
  readonly viewer: string;
  readonly share: number;
  readonly allowed: number;
}

/** A plan of boards is improved by so many steps: enough for one stock of a run, and the same whenever it is asked. */
const STEPS = 24;

/** What a run as laid out comes to; undefined when a piece of it is longer than its stock. */
export function figuresOf(run: RunLayout, layout: Layout, job: Job): ChoiceFigures | undefined {
  const material = materialOf(run, layout, job);
  if (!material) return undefined;
  const slats = run.pieces.filter(({ role }) => role === 'slat');
  return {
    ...material,
    seeThrough: seeThrough(run.openings, slats),
    seen: job.hides.flatMap((demand) => seenOf(demand, run, layout) ?? []),
    uneven: unevennessOf(run),
  };
}

function materialOf(
  run: RunLayout,
  layout: Layout,
  job: Job,
): Pick<ChoiceFigures, 'bought' | 'cost' | 'waste'> | undefined {
  let [bought, wasted, minor, priced] = [0, 0, 0, true];
  let currency: string | undefined;
  // Everything is bought for the run, so that what lies in the yard favors no choice.
  const { cutFor, ...others } = job;
  // A choice is weighed by what it costs; few settings at that cost are found when it is cut.
  const alone: Job = { ...(cutFor?.value === 'settings' ? others : job), onHand: [] };
  for (const demands of demandsByBought(demandOf({ ...layout, runs: [screenAlone(run)] }, job))) {
    const { search, plan } = searchBoards(demands, alone);
    let steps = 0;
    search?.run(() => search.proven() || ++steps > STEPS);
    const { none, buy, waste, cost } = plan();
    if (none?.kind === 'no-lengths') {
      bought += demands.reduce((sum, { total }) => sum + total, 0);
      priced = false;
      continue;
    }
    if (none) return undefined;
    const length = [...buy].reduce((sum, [each, count]) => sum + each * count, 0);
    bought += length;
    wasted += waste * length;
    if (cost && (currency === undefined || currency === cost.currency)) {
      minor += cost.minor;
      currency = cost.currency;
    } else priced = false;
  }
  return {
    bought,
    waste: bought > 0 ? Math.min(1, wasted / bought) : 0,
    ...(priced && currency !== undefined ? { cost: { minor, currency } } : {}),
  };
}

/** Undefined where the demand is beside other runs, or cannot be judged. */
function seenOf({ place, viewer, share }: HideDemand, run: RunLayout, layout: Layout): SeenShare | undefined {
  const names = [place.at.run, viewer.at.run, ...(viewer.to ? [viewer.to.run] : [])];
  if (!names.includes(run.spec.name)) return undefined;
  const look = lookOf(layout, viewer, place);
  if (look === undefined || look === 'apart') return undefined;
  return { place: place.name, viewer: viewer.name, share: look.sight.seen, allowed: 1 - share.value };
}

/** See `ChoiceFigures.uneven`. */
export function unevennessOf(run: RunLayout): Ticks {
  const clears = run.bays.flatMap(({ gate, clear }) => (gate === undefined ? [clear] : []));
  const bays = clears.length > 0 ? Math.max(...clears) - Math.min(...clears) : 0;
  const widths = widthsOf(run);
  const fits = run.fits.flatMap(({ chosen, gate }) => (chosen && gate === undefined ? [chosen] : []));
  return bays + Math.max(0, ...fits.map((fit) => Math.round(fit.gapChange) + changeOfSlat(fit, widths)));
}

/** How much narrower than the others of its stock a slat is made; a trim board is wholly unlike. */
function changeOfSlat({ kind, slat, width }: FitChoice, widths: ReadonlyMap<string, Ticks>): Ticks {
  if (width === undefined || slat === undefined) return 0;
  return kind === 'trim' ? width : Math.abs((widths.get(slat) ?? width) - width);
}

function widthsOf({ spec }: RunLayout): ReadonlyMap<string, Ticks> {
  return new Map(
    spec.infill.pattern.repeat.map(({ value }: { readonly value: FlatStock }) => [
      value.name,
      value.width.value,
    ]),
  );
}
