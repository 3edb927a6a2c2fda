import type { Layout, RunLayout } from '../layout/index.ts';
import type { Job, Origin } from '../model/index.ts';
import { inches, mm } from '../units/index.ts';
import { fineLength } from './as-built-text.ts';
import { commonPractice, type LimitedLayoutCheck, thresholdOf } from './define.ts';
import type { Finding } from './finding.ts';

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
      imperial: inches(1 / 16),
      metric: mm(1.5),
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

/** What is filled by each fit that closes; upright, bay by bay. */
function panelsOf(run: RunLayout): readonly Panel[] {
  if (!run.sound) return [];
  return run.fits
    .filter(({ mirrored, chosen }) => !mirrored && chosen)
    .flatMap((fit) => {
      const gate = run.spec.gates.find(({ name }) => name === fit.gate);
      const { pattern, fill } = (gate ?? run.spec).infill;
      const base = { pattern: pattern.name, upright: fit.upright, gap: fit.chosen?.gap ?? 0 };
      if (gate) {
        const bays = run.bays.flatMap((bay) => (bay.gate === gate.name ? [bay.number] : []));
        return [{ ...base, name: `gate ${gate.name}`, bays, at: gate.infill.fill }];
      }
      if (!fit.upright) return [{ ...base, name: run.spec.name, bays: fit.bays, at: fill }];
      return fit.bays.map((bay) => ({ ...base, name: `bay ${bay}`, bays: [bay], at: placeOf(run, bay) }));
    });
}

/** Where a bay was measured, or what fills it. */
function placeOf({ spec }: RunLayout, bay: number): Origin {
  return spec.measured?.bays.find(({ number }) => number === bay)?.origin ?? spec.infill.fill;
}

function neighborsOf(panels: readonly Panel[], { bays }: RunLayout): readonly Pair[] {
  return bays.flatMap(({ number }, index): Pair[] => {
    const next = bays[index + 1]?.number;
    const [left, right] = [number, next].map((bay) =>
      panels.find((panel) => bay !== undefined && panel.bays.includes(bay)),
    );
    return left && right && left !== right ? [[left, right]] : [];
  });
}

function farthest(panels: readonly Panel[]): Pair | undefined {
  let found: Pair | undefined;
  for (const [index, one] of panels.entries())
    for (const other of panels.slice(index + 1))
      if (isAlike([one, other]) && (!found || offOf([one, other]) > offOf(found))) found = [one, other];
  return found;
}

/** Where upright patterns of two runs meet; level ones are told by their lines. */
function atJoints({ runs, joints }: Layout, job: Job, beside: number): readonly Finding[] {
  return joints.flatMap(({ first, second }) => {
    const [one, other] = [first, second].map((key, side) => {
      const run = runs.find((candidate) => candidate.key === key);
      const bay = run && (side === 0 ? run.bays.at(-1) : run.bays[0])?.number;
      const panel = run && panelsOf(run).find(({ bays }) => bay !== undefined && bays.includes(bay));
      return (
        panel &&
        run && {
          ...panel,
          name: panel.name === run.spec.name ? panel.name : `${panel.name} of ${run.spec.name}`,
        }
      );
    });
    if (!one?.upright || !other || !differs([one, other], beside)) return [];
    return [tell([one, other], beside, true, job)];
  });
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
