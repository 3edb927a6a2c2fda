import type { Course, RunLayout } from '../layout/index.ts';
import type { Band, Sourced } from '../model/index.ts';
import { formatLength, inches, mm, spellLength, type Ticks } from '../units/index.ts';
import { commonPractice, type LimitedLayoutCheck, thresholdOf } from './define.ts';
import type { Finding, Fix } from './finding.ts';
import { bayBeside, bridgedBySlats, meetingsOf } from './joints.ts';
import { appendTo, replaceAt } from './written-change.ts';

/** Level slats of two runs that meet and whose lines do not go on from one to the other. */
export const cornerLinesMiss: LimitedLayoutCheck = {
  kind: {
    code: 'corner-lines-miss',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('slat lines go on round a corner, or over a closed offset, within 1/16" (2 mm)'),
    threshold: {
      is: 'length',
      imperial: inches(1 / 16),
      metric: mm(2),
      says: 'how far lines may miss one another round a corner or over an offset',
    },
    message: (a) =>
      `Slat lines of ${a.second} miss those of ${a.first} by up to ${a.miss}, first at slat ${a.course} from the top. ` +
      'Give both runs the same top and bottom from the datum, and the same pattern.',
  },
  check: (layout, job) =>
    [...meetingsOf(layout), ...bridgedBySlats(layout)].flatMap(({ first, second }): Finding[] => {
      const [one, other] = [linesBeside(first, 'last'), linesBeside(second, 'first')];
      if (!one || !other) return [];
      const seen = thresholdOf(job, cornerLinesMiss.kind);
      const misses = missesOf(one, other);
      const worst = Math.max(0, ...misses.map(({ by }) => by));
      const at = misses.find(({ by }) => by > seen);
      if (!at) return [];
      return [
        {
          code: 'corner-lines-miss',
          at: second.spec.height.origin,
          args: {
            first: first.spec.name,
            second: second.spec.name,
            miss: formatLength(worst, job.measure.value),
            course: at.course,
          },
          related: [{ at: first.spec.height.origin, note: first.spec.name }],
          fixes: sameEnds(first, second),
        },
      ];
    }),
};

function linesBeside(run: RunLayout, end: 'first' | 'last'): readonly Course[] | undefined {
  const bay = bayBeside(run, end);
  if (bay === undefined || run.spec.infill.flip.upright) return undefined;
  const courses = run.courses.get(bay);
  return courses && courses.length > 0 ? courses : undefined;
}

/** How far each slat's edges are from edges of the other run, where both runs have slats. */
function missesOf(one: readonly Course[], other: readonly Course[]): { course: number; by: Ticks }[] {
  const top = Math.min(one[0]?.start ?? 0, other[0]?.start ?? 0);
  const foot = Math.max(one.at(-1)?.end ?? 0, other.at(-1)?.end ?? 0);
  const nearest = (at: Ticks, edges: readonly Ticks[]) =>
    Math.min(...edges.map((edge) => Math.abs(edge - at)));
  const [starts, ends] = [one.map(({ start }) => start), one.map(({ end }) => end)];
  return other.flatMap(({ number, start, end }) => [
    ...(start <= top && start >= foot ? [{ course: number, by: nearest(start, starts) }] : []),
    ...(end <= top && end >= foot ? [{ course: number, by: nearest(end, ends) }] : []),
  ]);
}

/** Where both are filled alike, the same ends above the datum make the same lines. */
function sameEnds(first: RunLayout, second: RunLayout): readonly Fix[] {
  const { spec } = second;
  if (!fillsAlike(first, second) || spec.height.origin.why !== 'stated') return [];
  const by = first.ground - second.ground;
  const moved = (band: Band): Band => ({ low: band.low + by, high: band.high + by });
  const height = moved(first.spec.height.value);
  const bottom = moved(first.spec.bottom.value);
  if (bottom.low < 0 || height.low <= 0) return [];
  const text = (word: string, { low, high }: Band) =>
    `${word} ${spellLength(low, spec.measure)}${low === high ? '' : ` to ${spellLength(high, spec.measure)}`}`;
  const put = (value: Sourced<Band>, word: string, band: Band) =>
    value.origin.why === 'stated'
      ? replaceAt(value.origin, text(word, band))
      : appendTo(spec.origin, text(word, band));
  return [
    {
      title: `Give ${spec.name} the top and bottom of ${first.spec.name}`,
      changes: [put(spec.height, 'height', height), put(spec.bottom, 'bottom', bottom)],
      preferred: true,
    },
  ];
}

function fillsAlike({ spec: a }: RunLayout, { spec: b }: RunLayout): boolean {
  const shape = ({ infill: { pattern, flip, fit } }: typeof a) =>
    JSON.stringify([
      pattern.repeat.map(({ value }) => [value.name, value.width.value]),
      pattern.gap.value,
      pattern.edgeGap.value,
      pattern.end.value,
      flip.over,
      fit.remedies.map(({ value }) => (value.kind === 'trim' ? [value.edge, value.board?.name] : value)),
    ]);
  return shape(a) === shape(b);
}
