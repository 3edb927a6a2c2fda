import { holesOf } from '../figures/index.ts';
import { COVER, HOLE_WIDTHS } from '../standards/index.ts';
import { formatLength, inches } from '../units/index.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';
import { atLeastText, fineText } from './loads-text.ts';

/** Holes that leave little around their posts. */
export const holeNarrow: LimitedRunCheck = {
  kind: {
    code: 'hole-narrow',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice(
      `holes ${HOLE_WIDTHS.value} times the post, with ${COVER.value}" of concrete around its corners`,
    ),
    threshold: {
      is: 'times',
      imperial: HOLE_WIDTHS.value,
      metric: HOLE_WIDTHS.value,
      says: 'least diameter of holes over the width of the post',
    },
    message: (a) =>
      `Holes of ${a.diameter} leave ${a.cover} around the corners of a post ${a.post} wide${a.off === '' ? '' : `, which may stand ${a.off} off the middle and keep ${a.kept} there`}. At least ${a.needed} across bears it well.`,
  },
  check: (run, job) => {
    const { hole } = run.spec;
    const found = holesOf(run, job);
    if (!hole || !found) return [];
    const times = thresholdOf(job, holeNarrow.kind);
    if (found.times >= times && found.cover >= COVER.value) return [];
    const forCover = hole.diameter.value + inches(2 * Math.max(0, COVER.value - found.cover));
    return [
      {
        code: 'hole-narrow',
        at: hole.diameter.origin,
        args: {
          diameter: formatLength(hole.diameter.value, job.measure.value),
          cover: fineText(Math.max(0, found.cover), job),
          off: found.off > 0 ? fineText(found.off, job) : '',
          kept: fineText(COVER.value, job),
          post: formatLength(found.widest, job.measure.value),
          needed: atLeastText(Math.ceil(Math.max(times * found.widest, forCover)), job),
        },
      },
    ];
  },
};
