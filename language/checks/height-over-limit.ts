import { aboveGround, type Bay, type RunLayout, topEdge } from '../layout/index.ts';
import { lowestGround } from '../model/index.ts';
import { formatLength, spellLength, type Ticks } from '../units/index.ts';
import { JOB, type RunCheck } from './define.ts';

/**
 * Higher than the job allows, from the lowest ground within each bay to the top of its posts and their caps; along a
 * top that slopes, from the ground right below.
 */
export const heightOverLimit: RunCheck = {
  kind: {
    code: 'height-over-limit',
    severity: 'error',
    stage: 'layout',
    basis: JOB,
    message: (a) =>
      `Bay ${a.bay} is ${a.height} above the lowest ground within it; this job allows ${a.limit}. Lower the height, or step down with the ground. Local rules decide.`,
  },
  check: (run, job) => {
    const limit = job.heightLimit;
    if (!limit) return [];
    const measure = job.measure.value;
    let worst: { bay: number; height: Ticks } | undefined;
    for (const bay of run.bays) {
      const edge = topEdge(run, bay.number);
      if (!edge) continue;
      const cap = run.spec.caps?.value.thickness.value ?? 0;
      const slats = aboveGround(run, bay, edge).most + run.spec.tops.value + cap;
      const height = run.edges.get(bay.number)?.top ? Math.max(slats, postsBeside(run, bay) + cap) : slats;
      if (height > limit.value && (!worst || height > worst.height)) worst = { bay: bay.number, height };
    }
    if (!worst) return [];
    const { origin, value } = run.spec.height;
    const lower = value.high - (worst.height - limit.value);
    const fix = {
      title: `Lower the height to ${formatLength(lower, measure)}`,
      changes: [
        {
          uri: origin.uri,
          path: origin.path,
          place: 'replace' as const,
          text: `height ${spellLength(lower, measure)}`,
        },
      ],
    };
    const fixes = lower > run.spec.bottom.value.high ? [fix] : [];
    const args = {
      bay: worst.bay,
      height: formatLength(worst.height, measure),
      limit: formatLength(limit.value, measure),
    };
    const related = [{ at: limit.origin, note: 'the limit stands here' }];
    return [{ code: 'height-over-limit', at: origin, args, related, fixes }];
  },
};

/** The higher of the posts beside a bay that slopes, above the lowest ground under it. */
function postsBeside(run: RunLayout, { from, to }: Bay): Ticks {
  const beside = run.posts.filter((post) => post.to === from || post.from === to);
  const heights = beside.flatMap((post) => {
    const tops = run.pieces.find(({ key }) => key === post.key)?.solid.vertices.map(([, , z]) => z) ?? [];
    return tops.length > 0 ? [Math.max(...tops) - lowestGround(run.groundLine, post.from, post.to)] : [];
  });
  return Math.max(0, ...heights);
}
