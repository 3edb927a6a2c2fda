import {
  type FitChoice,
  fitEdits,
  gapTolerance,
  type Restated,
  type RestatedRemedy,
  type RunLayout,
  refitUpright,
  type TextChange,
  TRIED,
} from '../layout/index.ts';
import { isMetric, type Job, limitOf } from '../model/index.ts';
import { ceilToStep, floorToStep, inches, mm, type Ticks } from '../units/index.ts';
import { type BuiltPanel, builtPanels } from './as-built.ts';
import { infillOf } from './infill-of.ts';
import { oncePerRun } from './workings/remember.ts';

/** More ways than this are not worked out for the bays of one run. */
const MOST_WAYS = 12;

/** One way to take up what came out otherwise than planned. */
export interface BuiltWay {
  /** Of the panel that it changes most. */
  readonly choice: FitChoice;
  /** How each panel closes; missing where it does not. */
  readonly panels: readonly { readonly bay?: number; readonly choice?: FitChoice; readonly gap: number }[];
  /** Whether every panel closes. */
  readonly closes: boolean;
  /** Greatest change of any gap from the planned one. */
  readonly gapChange: number;
  /** Greatest difference of gaps between panels next to one another. */
  readonly between: number;
  /** How far an end of the infill, or the space at an edge of a panel, is from where it was planned, at most. */
  readonly edgeChange: Ticks;
  /** How far a gap may be from the planned one and be hardly seen: less where one as planned is beside it. */
  readonly limit: Ticks;
  /** What is seen most of it, as a multiple of what is hardly seen. */
  readonly seen: number;
  /** What that is: gaps off the planned, gaps from bay to bay, an edge, or a slat of another width. */
  readonly seenBy: 'gaps' | 'between' | 'edges' | 'width';
  /** How much of that is hardly seen. */
  readonly seenOver: Ticks;
  /** Whether it closes and all of it is hardly seen. */
  readonly within: boolean;
  /** What is built now. */
  readonly built: boolean;
  readonly changes: readonly TextChange[];
}

/** Ways of one pattern to take up what came out otherwise. */
export interface BuiltWays {
  readonly gate?: string;
  readonly panels: readonly BuiltPanel[];
  /** Best first: those that are hardly seen in the order builders try them, then the others by what is seen. */
  readonly ways: readonly BuiltWay[];
  /** What is built now, which may not close. */
  readonly built: BuiltWay | undefined;
}

/** Within this, gaps of panels side by side look alike (common practice). */
export const GAPS_ALIKE = { imperial: inches(1 / 16), metric: mm(1.5) } as const;

/** How far gaps may be off; the habits of the trade where a job says nothing else. */
interface BuiltLimits {
  /** From the planned gap, where nothing nearby shows that. */
  readonly alone: Ticks;
  /** From it, or from the gap of the next panel, where it is beside. */
  readonly beside: Ticks;
  /** How far the space at the edge of an upright panel may be from the planned one. */
  readonly edge: Ticks;
}

/** As the job states them, or as is usual. */
function builtLimits({ spec: { measure } }: RunLayout, job: Job): BuiltLimits {
  return {
    alone: gapTolerance({ measure, besideNominal: false }),
    beside: limitOf(job, 'gaps-differ', 'length', GAPS_ALIKE),
    // Bays that differ by so much look alike (common practice); so do their edges.
    edge: isMetric(measure) ? mm(6) : inches(1 / 4),
  };
}

/**
 * The ways of each pattern of a run, its own first, then those of its gates; none where nothing was measured. Worked
 * out once for a run in a job: what is found, the figures and what is cut again ask for the same.
 */
export const builtWays = oncePerRun(workOutWays);

function workOutWays(run: RunLayout, job: Job): readonly BuiltWays[] {
  const limits = builtLimits(run, job);
  const all = builtPanels(run);
  return [...new Set(all.map(({ gate }) => gate))].flatMap((gate) => {
    const panels = all.filter((panel) => panel.gate === gate);
    const others = all.filter((panel) => panel.gate !== gate);
    const drafts = panels.some(({ bay }) => bay !== undefined)
      ? uprightDrafts(run, panels)
      : levelDrafts(panels[0] as BuiltPanel);
    const found = drafts.flatMap((draft) => wayOf(draft, panels, others, limits, run) ?? []).sort(byLook);
    // One that leaves a bay open is none, as long as another closes them all.
    const ways = found.some(({ closes }) => closes) ? found.filter((way) => way.closes || way.built) : found;
    const built = ways.find((way) => way.built);
    return [{ ...(gate === undefined ? {} : { gate }), panels, ways, built }];
  });
}

interface Draft {
  /** In the order of the panels. */
  readonly choices: readonly (FitChoice | undefined)[];
  readonly changes: readonly TextChange[];
  readonly built: boolean;
}

function levelDrafts({ built: { fit, choice } }: BuiltPanel): readonly Draft[] {
  return [
    ...(choice ? [{ choices: [choice], changes: [], built: true }] : []),
    ...fit.choices.map((one) => ({ choices: [one], changes: one.changes, built: false })),
  ];
}

/** What is offered for one bay is asked of all, and gaps in one band that holds for all. */
function uprightDrafts(run: RunLayout, panels: readonly BuiltPanel[]): readonly Draft[] {
  const asks = new Map<string, readonly RestatedRemedy[]>();
  const add = (remedies: readonly RestatedRemedy[] | undefined) => {
    if (remedies) asks.set(JSON.stringify(remedies), remedies);
  };
  const fits = panels.map(({ built }) => built.fit);
  add(commonGaps(run, panels));
  for (const fit of fits) for (const choice of fit.choices) add(choice.restated?.remedies);
  const drafts = [...asks.values()].slice(0, MOST_WAYS).map((remedies): Draft => {
    const restated: Restated = { remedies };
    const closed = refitUpright(run, restated);
    const choices = panels.map(({ bay }) => (bay === undefined ? undefined : closed.get(bay)));
    return { choices, changes: fitEdits(run, remedies), built: false };
  });
  const now = { choices: panels.map(({ built }) => built.choice), changes: [], built: true };
  const known = new Set([figuresOf(now)]);
  const unlike = drafts.filter((draft) => {
    const figures = figuresOf(draft);
    return !known.has(figures) && known.add(figures);
  });
  return [now, ...unlike];
}

/** A band that takes in, for each bay, the gap nearest to the planned one. */
function commonGaps(run: RunLayout, panels: readonly BuiltPanel[]): readonly RestatedRemedy[] | undefined {
  const gaps = panels.flatMap(({ built, planned }): number[] => {
    const all = [...(built.choice ? [built.choice] : []), ...built.fit.choices];
    const found = all
      .filter(({ kind }) => kind === 'gaps' || kind === 'as-drawn')
      .map(({ gap }) => gap)
      .sort((a, b) => Math.abs(a - planned.gap) - Math.abs(b - planned.gap));
    return found.slice(0, 1);
  });
  if (gaps.length < panels.length) return undefined;
  const { step } = run.spec.measure;
  const low = floorToStep(Math.floor(Math.min(...gaps)), step);
  return [{ kind: 'gaps', low, high: ceilToStep(Math.ceil(Math.max(...gaps)), step) }];
}

const figuresOf = ({ choices }: Draft): string =>
  choices
    .map(
      (choice) =>
        choice && [choice.count, choice.gap, choice.lead, choice.tail, choice.width, choice.edge].join(),
    )
    .join('|');

function wayOf(
  { choices, changes, built }: Draft,
  panels: readonly BuiltPanel[],
  others: readonly BuiltPanel[],
  { alone, beside, edge }: BuiltLimits,
  run: RunLayout,
): BuiltWay | undefined {
  const { measure } = run.spec;
  const closed = panels.map(({ bay, planned, built: now }, index) => {
    const choice = choices[index];
    const gap = choice?.gap ?? now.gap;
    const off = Math.abs(gap - planned.gap);
    return { ...(bay === undefined ? {} : { bay }), ...(choice ? { choice } : {}), gap, off, planned };
  });
  const most = closed.reduce<(typeof closed)[number] | undefined>(
    (worst, panel) => (panel.choice && (!worst || panel.off > worst.off) ? panel : worst),
    undefined,
  );
  if (!most?.choice) return undefined;
  // Beside a panel whose gaps are as planned, a change is seen sooner.
  const asPlanned = (off: number) => off <= measure.step / 4;
  const shown =
    closed.some(({ off }) => asPlanned(off)) ||
    others.some(({ built: other, planned }) => asPlanned(Math.abs(other.gap - planned.gap)));
  const limit = shown ? beside : alone;
  const between = Math.max(
    0,
    ...closed.slice(1).map(({ gap }, index) => Math.abs(gap - (closed[index]?.gap ?? gap))),
  );
  const upright = panels.some(({ bay }) => bay !== undefined);
  const closes = closed.every(({ choice }) => choice !== undefined);
  const edgeChange = Math.max(0, ...closed.map(({ choice, planned }) => edgesOff(choice, planned.choice)));
  const narrowed = most.choice.kind === 'change-width' ? widthOff(most.choice, run, panels[0]?.gate) : 0;
  const looked: readonly Pick<BuiltWay, 'seen' | 'seenBy' | 'seenOver'>[] = [
    { seenBy: 'gaps', seen: most.off / limit, seenOver: limit },
    { seenBy: 'between', seen: between / beside, seenOver: beside },
    { seenBy: 'edges', seen: upright ? edgeChange / edge : 0, seenOver: edge },
    { seenBy: 'width', seen: narrowed / alone, seenOver: alone },
  ];
  const seen = looked.reduce((one, other) => (other.seen > one.seen ? other : one));
  return {
    choice: most.choice,
    panels: closed.map(({ bay, choice, gap }) => ({
      ...(bay === undefined ? {} : { bay }),
      ...(choice ? { choice } : {}),
      gap,
    })),
    closes,
    gapChange: most.off,
    between,
    edgeChange,
    limit,
    ...seen,
    within: closes && seen.seen <= 1,
    built,
    changes,
  };
}

/** How far a slat that is made narrower, or wider, is from how it came: that is seen in every repeat. */
function widthOff({ slat, width }: FitChoice, run: RunLayout, gate: string | undefined): Ticks {
  const own = infillOf(run, gate).pattern.repeat.find(({ value }) => value.name === slat)?.value;
  return own && width !== undefined ? Math.abs(own.width.value - width) : 0;
}

function edgesOff(choice: FitChoice | undefined, planned: FitChoice | undefined): Ticks {
  if (!choice || !planned) return 0;
  const ends = (['lead', 'tail', 'bottom', 'height'] as const).map((end) =>
    Math.abs((choice[end] ?? 0) - (planned[end] ?? 0)),
  );
  return Math.max(...ends);
}

function byLook(a: BuiltWay, b: BuiltWay): number {
  if (a.closes !== b.closes) return a.closes ? -1 : 1;
  if (a.within !== b.within) return a.within ? -1 : 1;
  const tried = TRIED.indexOf(a.choice.kind) - TRIED.indexOf(b.choice.kind);
  const seen = a.seen - b.seen || a.edgeChange - b.edgeChange;
  return (a.within ? tried || seen : seen || tried) || Number(b.built) - Number(a.built);
}

/** Whether a pattern comes out just as it was planned. */
export function isAsPlanned({ panels, built }: BuiltWays): boolean {
  return (
    built?.closes === true &&
    built.gapChange < 1 &&
    built.edgeChange === 0 &&
    panels.every(({ planned, built: now }) => figureOf(planned.choice) === figureOf(now.choice))
  );
}

const figureOf = (choice: FitChoice | undefined): string | undefined =>
  choice && [choice.kind, choice.count, choice.width, choice.edge].join();
