import { wallGaps } from '../figures/index.ts';
import { ceilToStep, floorToStep, formatLength } from '../units/index.ts';
import { commonPractice, GEOMETRY, type RunCheck } from './define.ts';
import type { Finding } from './finding.ts';
import { movePost } from './move-post.ts';
import { endPost, upTheWall } from './wall-words.ts';

/** A scribed filler that is narrower somewhere than it may be: it splits at its screws, or cannot be held to be cut. */
export const fillerNarrow: RunCheck = {
  kind: {
    code: 'filler-narrow',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('no scribed strip narrower than 1/2" (12 mm), or than the job states'),
    message: (a) =>
      `The filler at the ${a.post} post is ${a.width} wide, ${a.height} up; it may be no narrower than ${a.least}. Set the post at least ${a.off} off the wall.`,
  },
  check: (run, job) => {
    const { filler } = run.spec;
    const measure = job.measure.value;
    if (!filler) return [];
    return wallGaps(run).flatMap((gap): Finding[] => {
      const { least, greatest, nearest, face, post } = gap;
      // What reaches into the wall is told as that.
      if (nearest.gap < -1 || least.gap >= filler.least.value - 1) return [];
      const more = filler.least.value - least.gap;
      const off = ceilToStep(face.spec.off.value + more, measure.step);
      const fits = greatest.gap + (off - face.spec.off.value) <= filler.stock.value.width.value;
      return [
        {
          code: 'filler-narrow',
          at: filler.least.origin,
          args: {
            post: endPost(face.side),
            width: formatLength(floorToStep(least.gap, measure.step), measure),
            height: upTheWall(face, least.z, measure),
            least: formatLength(filler.least.value, measure),
            off: formatLength(off, measure),
          },
          pieces: [(gap.filler ?? post).key],
          related: [{ at: face.spec.origin, note: 'wall' }],
          fixes: fits ? movePost(gap, off, measure) : [],
        },
      ];
    });
  },
};

/** A scribed filler that its board is not wide enough for. */
export const fillerWide: RunCheck = {
  kind: {
    code: 'filler-wide',
    severity: 'error',
    stage: 'layout',
    basis: GEOMETRY,
    message: (a) =>
      `The filler at the ${a.post} post is up to ${a.width} wide, ${a.height} up, and ${a.board} is ${a.stock} wide. Take a wider board, or set the post nearer to the wall.`,
  },
  check: (run, job) => {
    const { filler } = run.spec;
    const measure = job.measure.value;
    if (!filler) return [];
    const { name, width } = filler.stock.value;
    return wallGaps(run).flatMap((gap): Finding[] => {
      const { least, greatest, face } = gap;
      if (!gap.filler || greatest.gap <= width.value + 1) return [];
      const off = floorToStep(face.spec.off.value - (greatest.gap - width.value), measure.step);
      const fits = least.gap - (face.spec.off.value - off) >= filler.least.value;
      return [
        {
          code: 'filler-wide',
          at: filler.stock.origin,
          args: {
            post: endPost(face.side),
            width: formatLength(ceilToStep(greatest.gap, measure.step), measure),
            height: upTheWall(face, greatest.z, measure),
            board: name,
            stock: formatLength(width.value, measure),
          },
          pieces: [gap.filler.key],
          related: [{ at: face.spec.origin, note: 'wall' }],
          fixes: fits ? movePost(gap, off, measure) : [],
        },
      ];
    });
  },
};
