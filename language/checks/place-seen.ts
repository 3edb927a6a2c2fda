import {
  type HidingGap,
  hidingGap,
  type Look,
  lookOf,
  neededTop,
  type Way,
  type WorstSight,
  worstSight,
} from '../figures/index.ts';
import type { Layout } from '../layout/index.ts';
import type { HideDemand, Job, TextChange } from '../model/index.ts';
import { formatLength, spellLength, type Ticks } from '../units/index.ts';
import { JOB, type LayoutCheck } from './define.ts';
import type { Finding } from './finding.ts';
import { replaceAt } from './written-change.ts';

const WAYS: Readonly<Record<Way, string>> = {
  gates: 'through gates',
  through: 'through the gaps',
  over: 'over the top',
  under: 'underneath',
  past: 'past the ends',
};

/** More of a place is seen than the job's `hide` allows. */
export const placeSeen: LayoutCheck = {
  kind: {
    code: 'place-seen',
    severity: 'warning',
    stage: 'layout',
    basis: JOB,
    message: (a) =>
      `${a.hidden} % of ${a.place} is hidden from ${a.viewer}${a.where}; this job asks for ${a.asked} %. One sees ${a.ways}.` +
      (a.top === '' ? '' : ` Nothing is seen over a top ${a.top}.`) +
      (a.gap === '' ? '' : ` A gap of ${a.gap} would do${a.fit === '' ? '' : `, with \`fit ${a.fit}\``}.`),
  },
  check: (layout, job) => job.hides.flatMap((demand) => judged(layout, job, demand)),
};

/** A demand that cannot be judged, because no one knows how two runs stand to one another. */
export const sightUnclear: LayoutCheck = {
  kind: {
    code: 'sight-unclear',
    severity: 'warning',
    stage: 'layout',
    basis: JOB,
    message: (a) =>
      `Of ${a.first}, beside which ${a.viewer} stands, and ${a.second}, beside which ${a.place} lies, no one knows how they stand to one another. ` +
      'Give both a place on the plan with `placed at` or `after`.',
  },
  check: (layout, job) =>
    job.hides.flatMap((demand): Finding[] => {
      const { viewer, place } = demand;
      if (lookOf(layout, viewer, place) !== 'apart') return [];
      const args = { viewer: viewer.name, place: place.name, first: viewer.at.run, second: place.at.run };
      return [{ code: 'sight-unclear', at: demand.origin, args }];
    }),
};

/** What is told of a look, by what is asked of it; looks are remembered, so this is too. */
const remembered = new WeakMap<Look, Map<string, readonly Finding[]>>();

function judged(layout: Layout, job: Job, demand: HideDemand): readonly Finding[] {
  const look = lookOf(layout, demand.viewer, demand.place);
  if (look === undefined || look === 'apart') return [];
  const key = JSON.stringify([demand.share, demand.origin, job.measure.value]);
  const told = remembered.get(look) ?? new Map<string, readonly Finding[]>();
  remembered.set(look, told);
  const held = told.get(key);
  if (held) return held;
  const found = judge(look, job, demand);
  told.set(key, found);
  return found;
}

function judge(look: Look, job: Job, demand: HideDemand): readonly Finding[] {
  const { scene, area, sight } = look;
  const { viewer, place, share } = demand;
  // A hundredth of a percent is no one's eye.
  if (sight.seen <= 1 - share.value + 1e-4) return [];
  const narrower = gapThatHides(look, demand);
  const changes = narrower ? changesFor(narrower) : [];
  const over = sight.ways.over > 0.001 ? neededTop(scene, area, sight.eye) : undefined;
  const measure = job.measure.value;
  return [
    {
      code: 'place-seen',
      at: demand.origin,
      args: {
        place: place.name,
        viewer: viewer.name,
        hidden: percent(1 - sight.seen),
        asked: percent(share.value),
        where: viewer.to ? `, at worst ${whereAlong(sight, demand, job)}` : '',
        ways: waysOf(sight),
        top: over ? `${levelText(over.top, job)} from the datum on ${over.run}` : '',
        gap: narrower ? formatLength(narrower.gap, measure) : '',
        fit: changes[1]?.text ?? '',
      },
      related: [
        { at: viewer.origin, note: viewer.name },
        { at: place.origin, note: place.name },
      ],
      fixes: narrower ? [{ title: titleOf(changes), changes, preferred: true }] : [],
    },
  ];
}

const percent = (share: number): number => Math.round(share * 1000) / 10;

function waysOf({ ways }: WorstSight): string {
  const told = (Object.entries(ways) as [Way, number][])
    .filter(([, share]) => share >= 0.0005)
    .sort((a, b) => b[1] - a[1])
    .map(([way, share]) => `${percent(share)} % ${WAYS[way]}`);
  return told.length > 1 ? `${told.slice(0, -1).join(', ')} and ${told.at(-1)}` : (told[0] ?? '');
}

/** Where along a stretch, as a station of the run it lies along. */
function whereAlong({ along }: WorstSight, { viewer }: HideDemand, job: Job): string {
  const { at, to } = viewer;
  const end = to?.run === at.run ? to.along : at.along;
  const station = Math.round(at.along + along * (end - at.along));
  return to?.run === at.run
    ? `at ${formatLength(Math.abs(station), job.measure.value)} ${station < 0 ? 'before' : 'along'} ${at.run}`
    : `${percent(along)} % of the way`;
}

function levelText(level: number, job: Job): string {
  const text = formatLength(Math.ceil(Math.abs(level)), job.measure.value);
  return level < 0 ? `down ${text}` : `up ${text}`;
}

/** Where most is seen through gaps, the gap that would hide enough, tried by laying out the run of the place or the viewer. */
function gapThatHides(
  { scene, area, sight: { ways, eye } }: Look,
  { viewer, place, share }: HideDemand,
): HidingGap | undefined {
  // What is seen otherwise no gap can hide.
  if (ways.through < 0.001 || ways.over + ways.past + ways.under > 1 - share.value) return undefined;
  const names = [place.at.run, viewer.at.run];
  const run = scene.runs.find((placed) => names.includes(placed.run.spec.name))?.run;
  if (run?.spec.infill.pattern.gap.origin.why !== 'stated') return undefined;
  return hidingGap(scene, run, (tried) => {
    const sight = worstSight(tried, area, [eye]);
    return sight !== undefined && sight.seen <= 1 - share.value + 1e-4;
  });
}

/** The gap in its place, and the least of the fit's gaps where it has to be lower. */
function changesFor({ run: { spec }, gap, widened }: HidingGap): readonly TextChange[] {
  const { pattern, fit } = spec.infill;
  const spelled = (length: Ticks) => spellLength(length, spec.measure);
  const remedy = widened === undefined ? undefined : fit.remedies[widened];
  return [
    replaceAt(pattern.gap.origin, spelled(gap)),
    ...(remedy?.value.kind === 'gaps'
      ? [replaceAt(remedy.origin, `gaps ${spelled(remedy.value.low)} to ${spelled(remedy.value.high)}`)]
      : []),
  ];
}

const titleOf = ([gap, fit]: readonly TextChange[]): string =>
  `Take a gap of ${gap?.text}${fit ? `, with \`fit ${fit.text}\`` : ''}`;
