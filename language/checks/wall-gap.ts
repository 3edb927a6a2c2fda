import { LEAST_OPEN_GAP, type WallGap, wallGaps } from '../figures/index.ts';
import type { Job } from '../model/index.ts';
import { ceilToStep, floorToStep, formatLength, inches, mm, type Ticks } from '../units/index.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';
import type { Finding } from './finding.ts';
import { movePost } from './move-post.ts';
import { endPost, upTheWall } from './wall-words.ts';

const BASIS = commonPractice(
  'a post of its own and nothing fastened to the wall; 1" to 2" (25 to 50 mm) to the cladding, no more than 3" (75 mm)',
);

/** An open gap to a wall that is too narrow to dry out and to get into. */
export const wallGapSmall: LimitedRunCheck = {
  kind: {
    code: 'wall-gap-small',
    severity: 'warning',
    stage: 'layout',
    basis: BASIS,
    threshold: {
      is: 'length',
      ...LEAST_OPEN_GAP,
      says: 'least open gap between an end post and a wall',
    },
    message: (a) =>
      `The wall comes within ${a.gap} of the ${a.post} post, ${a.height} up; ${a.limit} lets both dry. Set the post ${a.off} off.`,
  },
  check: (run, job) => {
    const limit = thresholdOf(job, wallGapSmall.kind);
    return wallGaps(run).flatMap((gap): Finding[] => {
      const { least, nearest, face } = gap;
      // What reaches into the wall is told as that, and what a filler closes is no open gap.
      if (run.spec.filler || nearest.gap < -1 || least.gap >= limit) return [];
      const off = ceilToStep(face.spec.off.value + limit - least.gap, job.measure.value.step);
      return [
        told('wall-gap-small', gap, job, least, off, floorToStep(least.gap, job.measure.value.step), limit),
      ];
    });
  },
};

/** An open gap to a wall that one sees and reaches through. */
export const wallGapLarge: LimitedRunCheck = {
  kind: {
    code: 'wall-gap-large',
    severity: 'warning',
    stage: 'layout',
    basis: BASIS,
    threshold: {
      is: 'length',
      imperial: inches(3),
      metric: mm(75),
      says: 'greatest open gap between an end post and a wall',
    },
    message: (a) =>
      `Between the ${a.post} post and the wall there is a gap of up to ${a.gap}, ${a.height} up; more than ${a.limit} is seen and reached through. ` +
      'Set the post nearer, or close the gap with a `scribed filler`.',
  },
  check: (run, job) => {
    const limit = thresholdOf(job, wallGapLarge.kind);
    const closest = thresholdOf(job, wallGapSmall.kind);
    const { step } = job.measure.value;
    return wallGaps(run).flatMap((gap): Finding[] => {
      const { greatest, least, nearest, face } = gap;
      if (run.spec.filler || nearest.gap < -1 || greatest.gap <= limit) return [];
      const nearer = floorToStep(face.spec.off.value - (greatest.gap - limit), step);
      // Only where the post does not come too near to the wall elsewhere.
      const fits = least.gap - (face.spec.off.value - nearer) >= closest;
      const shown = ceilToStep(greatest.gap, step);
      return [told('wall-gap-large', gap, job, greatest, fits ? nearer : 0, shown, limit)];
    });
  },
};

function told(
  code: string,
  gap: WallGap,
  job: Job,
  at: WallGap['least'],
  off: Ticks,
  size: Ticks,
  limit: Ticks,
): Finding {
  const measure = job.measure.value;
  const { face, post } = gap;
  return {
    code,
    at: face.spec.origin,
    args: {
      post: endPost(face.side),
      gap: formatLength(size, measure),
      height: upTheWall(face, at.z, measure),
      limit: formatLength(limit, measure),
      off: formatLength(off, measure),
    },
    pieces: [post.key],
    fixes: movePost(gap, off, measure),
  };
}
