import { type Layout, placesOf, type RunLayout, toPlan } from '../layout/index.ts';
import type { Job, PropertyLine } from '../model/index.ts';
import { formatLength, inches, mm } from '../units/index.ts';
import { commonPractice, JOB, type LayoutCheck, type LimitedLayoutCheck, thresholdOf } from './define.ts';
import { isDug } from './dug.ts';
import type { Args, Finding } from './finding.ts';

const ASK = 'Have the line surveyed, and ask the local authority what may stand near it.';

/** Something of the job past a stated property line. */
export const propertyLineCrossed: LayoutCheck = {
  kind: {
    code: 'property-line-crossed',
    severity: 'warning',
    stage: 'layout',
    basis: JOB,
    message: (a) =>
      `${a.piece} of ${a.run} is ${a.by} past the property line ${a.where} ${a.along}. Move the run, or mend the line. ${ASK}`,
  },
  check: (layout, job) =>
    nearest(layout, job).flatMap(({ off, finding }) =>
      off < 0 ? [finding('property-line-crossed', -off)] : [],
    ),
};

/** Something of the job close to a stated property line. */
export const propertyLineNear: LimitedLayoutCheck = {
  kind: {
    code: 'property-line-near',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('posts and holes wander an inch or two, and so do lines that are not surveyed'),
    threshold: {
      is: 'length',
      imperial: inches(2),
      metric: mm(50),
      says: 'least space between what is built and the property line',
    },
    message: (a) =>
      `${a.piece} of ${a.run} is ${a.by} inside the property line ${a.where} ${a.along}: less than the ${a.least} that setting posts may be off. ${ASK}`,
  },
  check: (layout, job) => {
    const least = thresholdOf(job, propertyLineNear.kind);
    return nearest(layout, job).flatMap(({ off, finding }) =>
      off >= 0 && off < least
        ? [finding('property-line-near', off, { least: formatLength(least, job.measure.value) })]
        : [],
    );
  },
};

interface Nearest {
  /** Inside the line; less than nothing past it. In ticks. */
  readonly off: number;
  finding(code: string, by: number, more?: Args): Finding;
}

/** What is nearest to each property line, or farthest past it: one of each run. */
function nearest(layout: Layout, job: Job): readonly Nearest[] {
  const places = placesOf(layout.runs);
  return layout.runs.flatMap((along) =>
    (along.spec.propertyLines ?? []).flatMap((line) =>
      layout.runs.flatMap((run): Nearest[] => {
        const offOf = offsFrom(line, along, run, places);
        const found = offOf && worstOf(run, offOf);
        if (!found) return [];
        const { name, key, off } = found;
        return [
          {
            off,
            finding: (code, by, more = {}) => ({
              code,
              at: line.origin,
              args: {
                piece: name,
                run: run.spec.name,
                by: formatLength(Math.round(by), job.measure.value),
                where: line.y < 0 ? 'in front of' : 'behind',
                along: along.spec.name,
                ...more,
              },
              pieces: [key],
            }),
          },
        ];
      }),
    ),
  );
}

type OffOf = (x: number, y: number) => number;

/** How far inside the line a point of a run is; undefined where nobody says how the two runs lie to one another. */
function offsFrom(
  line: PropertyLine,
  along: RunLayout,
  run: RunLayout,
  places: Layout['places'],
): OffOf | undefined {
  const out = line.y < 0 ? -1 : 1;
  if (run === along) return (_, y) => out * (line.y - y);
  const [own, other] = [places.get(along.key), places.get(run.key)];
  if (!own || !other) return undefined;
  const start = toPlan(own, 0, 0);
  const one = toPlan(own, 0, 1);
  const back = [one[0] - start[0], one[1] - start[1]] as const;
  return (x, y) => {
    const [east, north] = toPlan(other, x, y);
    return out * (line.y - ((east - start[0]) * back[0] + (north - start[1]) * back[1]));
  };
}

function worstOf(
  { pieces, spec }: RunLayout,
  offOf: OffOf,
): { readonly name: string; readonly key: string; readonly off: number } | undefined {
  const dug = spec.hole && isDug(spec) ? spec.hole.diameter.value / 2 : 0;
  const all = pieces.flatMap(({ key, label, role, solid: { vertices } }) => {
    const off = Math.min(...vertices.map(([x, y]) => offOf(x, y)));
    const piece = { name: `${capital(role)} ${label}`, key, off };
    if (role !== 'post' || dug === 0) return [piece];
    const [x, y] = ([0, 1] as const).map(
      (axis) => vertices.reduce((sum, vertex) => sum + vertex[axis], 0) / vertices.length,
    );
    return [piece, { name: `The hole of post ${label}`, key, off: offOf(x ?? 0, y ?? 0) - dug }];
  });
  return all.reduce<(typeof all)[number] | undefined>(
    (least, one) => (least && least.off <= one.off ? least : one),
    undefined,
  );
}

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);
