import { wallGaps } from '../figures/index.ts';
import { ceilToStep, formatLength } from '../units/index.ts';
import { GEOMETRY, type RunCheck, thresholdOf } from './define.ts';
import type { Finding } from './finding.ts';
import { movePost } from './move-post.ts';
import { wallGapSmall } from './wall-gap.ts';
import { endPost, upTheWall } from './wall-words.ts';

/** Ticks that floats may lose: what touches the wall is not in it. */
const TOUCHES = 1;

/** A post, or what is on it, that would stand in the wall. */
export const wallInPost: RunCheck = {
  kind: {
    code: 'wall-in-post',
    severity: 'error',
    stage: 'layout',
    basis: GEOMETRY,
    message: (a) =>
      `The wall reaches ${a.depth} into ${a.piece}, ${a.height} up. Set the ${a.post} post at least ${a.off} off the wall.`,
  },
  check: (run, job) => {
    const measure = job.measure.value;
    const { filler } = run.spec;
    // With that much beside the post a filler is nowhere too narrow, and an open gap nowhere too small.
    const beside = filler ? filler.least.value : thresholdOf(job, wallGapSmall.kind);
    return wallGaps(run).flatMap((gap): Finding[] => {
      const { nearest, least, face } = gap;
      if (nearest.gap >= -TOUCHES) return [];
      const more = Math.max(beside - least.gap, 0 - nearest.gap);
      const off = ceilToStep(face.spec.off.value + more, measure.step);
      return [
        {
          code: 'wall-in-post',
          at: face.spec.origin,
          args: {
            post: endPost(face.side),
            piece: nearest.piece.label,
            depth: formatLength(ceilToStep(0 - nearest.gap, measure.step), measure),
            height: upTheWall(face, nearest.z, measure),
            off: formatLength(off, measure),
          },
          pieces: [nearest.piece.key],
          fixes: movePost(gap, off, measure),
        },
      ];
    });
  },
};
