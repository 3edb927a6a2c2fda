import { layOutRun, type RunLayout, spellName } from '../layout/index.ts';
import { DEFAULT_LENGTHS, type FlatStock, isMetric, type Job, type RunSpec } from '../model/index.ts';
import type { Ticks } from '../units/index.ts';
import type { Fix } from './finding.ts';
import { appendTo } from './written-change.ts';

/**
 * Statements that close the space under the slats of a run: a last course that follows the ground, and a kick board of
 * the widest board there is. Only those after which `closed` holds, of the run laid out anew with each.
 */
export function closingFixes(
  run: RunLayout,
  job: Job,
  closed: (other: RunLayout) => boolean,
): readonly Fix[] {
  const { spec } = run;
  // Measured work is laid out from its plan, which is not at hand here.
  if (spec.measured || spec.origin.why !== 'stated') return [];
  return [...lastCourse(spec), ...kickBoard(spec, job)].flatMap(([text, stated]) => {
    const other = layOutRun({ ...spec, ...stated }, '', run.joints);
    if (!other.sound || other.problems.length > run.problems.length || !closed(other)) return [];
    return [{ title: `Write ${text}`, changes: [appendTo(spec.origin, text)] }];
  });
}

/** Where a last course may follow the ground. */
const TAPERS: ReadonlySet<string> = new Set(['between', 'face', 'both']);

type Stated = readonly [text: string, spec: Partial<RunSpec>];

function lastCourse({ infill, levels, lastFollows, deck, origin, measure }: RunSpec): readonly Stated[] {
  if (lastFollows || !levels || deck || infill.flip.upright || !TAPERS.has(infill.mounting.value.kind))
    return [];
  return [['last course follows ground', { lastFollows: { value: usual(measure, 'taper'), origin } }]];
}

function kickBoard({ kick, infill, levels, origin, measure }: RunSpec, { stock }: Job): readonly Stated[] {
  if (kick || infill.mounting.value.kind === 'split') return [];
  const own = infill.pattern.repeat.map(({ value }) => value);
  const boards = [...stock, ...own].filter(
    (each): each is FlatStock => each.kind === 'board' || each.kind === 'rail',
  );
  const [widest] = boards.sort((a, b) => b.width.value - a.width.value);
  if (!widest) return [];
  const follows = levels !== undefined;
  const clearance = { value: usual(measure, 'kick'), origin };
  return [
    [
      `kick board ${spellName(widest.name)}${follows ? ', follows ground' : ''}`,
      { kick: { stock: { value: widest, origin }, clearance, follows, origin } },
    ],
  ];
}

function usual(measure: RunSpec['measure'], name: 'taper' | 'kick'): Ticks {
  const { imperial, metric } = DEFAULT_LENGTHS[name];
  return isMetric(measure) ? metric : imperial;
}
