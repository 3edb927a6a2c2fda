import { GAPS_ALIKE, infillOf } from '../figures/index.ts';
import type { FitResult, Layout, RunLayout } from '../layout/index.ts';
import type { Job, Origin } from '../model/index.ts';
import { fineLength } from '../units/index.ts';
import { commonPractice, type LimitedLayoutCheck, thresholdOf } from './define.ts';
import type { Finding } from './finding.ts';
import { meetingsOf } from './joints.ts';

/** Over this between any two panels of a run, and over the threshold between neighbors, gaps are seen to differ. */
const OVER_NEIGHBORS = 2;

/** Panels with the same pattern, in sight of one another, whose gaps differ so that it is seen. */
export const gapsDiffer: LimitedLayoutCheck = {
  kind: {
    code: 'gaps-differ',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('gaps of panels side by side are alike within 1/16", of one run within 1/8"'),
    threshold: {
      is: 'length',
      ...GAPS_ALIKE,
      says: 'how far gaps of neighboring panels may differ; of a whole run, twice that',
    },
    message: (a) =>
      `Gaps of ${a.pattern} are ${a.gap} in ${a.first} and ${a.other} in ${a.second}${a.beside ? ', side by side' : ''}: over ${a.limit} is seen. ` +
      'Make the panels alike, or keep the gaps and let the edges or a ripped slat take up the rest.',
  },
  check: (layout, job) => {
    const beside = thresholdOf(job, gapsDiffer.kind);
    const ofRuns = layout.runs.flatMap((run) => {
      const panels = panelsOf(run);
      const next = neighborsOf(panels, run);
      const told = next.find((pair) => differs(pair, beside));
      if (told) return [tell(told, beside, true, job)];
      const far = farthest(panels);
      return far && differs(far, OVER_NEIGHBORS * beside)
        ? [tell(far, OVER_NEIGHBORS * beside, false, job)]
        : [];
    });
    return [...ofRuns, ...atJoints(layout, job, beside)];
  },
};

interface Panel {
  readonly name: string;
  /** Bays it fills; a leaf, the bay it hangs in. */
  readonly bays: readonly number[];
  readonly pattern: string;
  readonly upright: boolean;
  readonly gap: number;
  readonly at: Origin;
}

type Pair = readonly [Panel, Panel];

/** What is filled by each fit that closes; upright, bay by bay. Of two leaves the left one before the right one. */
function panelsOf(run: RunLayout): readonly Panel[] {
  if (!run.sound) return [];
  const fits = run.fits.filter(({ mirrored, chosen }) => !mirrored && chosen);
  const base = ({ gate, upright, chosen }: FitResult) => {
    const { pattern, fill } = infillOf(run, gate);
    return { pattern: pattern.name, upright, gap: chosen?.gap ?? 0, at: fill };
  };
  const own = fits.flatMap((fit): Panel[] => {
    if (fit.gate !== undefined) return [];
    if (!fit.upright) return [{ ...base(fit), name: run.spec.name, bays: fit.bays }];
    return fit.bays.map((bay) => ({ ...base(fit), name: `bay ${bay}`, bays: [bay], at: placeOf(run, bay) }));
  });
  const hung = [...run.leaves]
    .sort((a, b) => a.x0 - b.x0)
    .flatMap(({ gate, bay }) =>
      fits
        .filter((fit) => fit.gate === gate)
        .map((fit): Panel => ({ ...base(fit), name: `gate ${gate}`, bays: [bay] })),
    );
  return [...own, ...hung];
}

/** Where a bay was measured, or what fills it. */
function placeOf({ spec }: RunLayout, bay: number): Origin {
  return spec.measured?.bays.find(({ number }) => number === bay)?.origin ?? spec.infill.fill;
}

/** From left to right, panels that one comes to right after the other. */
function neighborsOf(panels: readonly Panel[], { bays }: RunLayout): readonly Pair[] {
  const along = bays.flatMap(({ number }, at) =>
    panels.filter((panel) => panel.bays.includes(number)).map((panel) => ({ panel, at })),
  );
  return along.slice(1).flatMap((right, index): Pair[] => {
    const left = along[index];
    // Over a bay that does not close they are not side by side.
    if (!left || left.panel === right.panel || right.at > left.at + 1) return [];
    return [[left.panel, right.panel]];
  });
}

/** Of the panels of one pattern the two with the least and the greatest gap, where these are farthest apart. */
function farthest(panels: readonly Panel[]): Pair | undefined {
  const ends = new Map<string, { least: Panel; most: Panel }>();
  for (const panel of panels) {
    const key = `${panel.upright} ${panel.pattern}`;
    const { least, most } = ends.get(key) ?? { least: panel, most: panel };
    ends.set(key, {
      least: panel.gap < least.gap ? panel : least,
      most: panel.gap > most.gap ? panel : most,
    });
  }
  const pairs = [...ends.values()].map(
    ({ least, most }): Pair => (panels.indexOf(least) < panels.indexOf(most) ? [least, most] : [most, least]),
  );
  return pairs.reduce<Pair | undefined>(
    (found, pair) => (found && offOf(found) >= offOf(pair) ? found : pair),
    undefined,
  );
}

/** Where upright patterns of two runs meet; level ones are told by their lines. */
function atJoints(layout: Layout, job: Job, beside: number): readonly Finding[] {
  return meetingsOf(layout).flatMap(({ first, second }) => {
    const [one, other] = [panelAtEnd(first, 'last'), panelAtEnd(second, 'first')];
    if (!one?.upright || !other || !differs([one, other], beside)) return [];
    return [tell([one, other], beside, true, job)];
  });
}

/** The panel next to the shared post, named with its run. */
function panelAtEnd(run: RunLayout, end: 'first' | 'last'): Panel | undefined {
  const bay = (end === 'first' ? run.bays[0] : run.bays.at(-1))?.number;
  const beside = panelsOf(run).filter(({ bays }) => bay !== undefined && bays.includes(bay));
  const panel = end === 'first' ? beside[0] : beside.at(-1);
  const { name } = run.spec;
  return panel && { ...panel, name: panel.name === name ? name : `${panel.name} of ${name}` };
}

const isAlike = ([one, other]: Pair): boolean =>
  one.pattern === other.pattern && one.upright === other.upright;
const offOf = ([one, other]: Pair): number => Math.abs(one.gap - other.gap);
/** A tick more or less is what spreading in whole ticks leaves. */
const differs = (pair: Pair, limit: number): boolean => isAlike(pair) && offOf(pair) > limit + 1;

function tell([one, other]: Pair, limit: number, beside: boolean, job: Job): Finding {
  const show = (ticks: number) => fineLength(ticks, job.measure.value);
  const args = {
    pattern: one.pattern,
    first: one.name,
    second: other.name,
    gap: show(one.gap),
    other: show(other.gap),
    limit: show(limit),
    beside: beside ? 1 : 0,
  };
  const related = [{ at: one.at, note: `${one.name}: ${args.gap}` }];
  return { code: 'gaps-differ', at: other.at, args, related };
}
