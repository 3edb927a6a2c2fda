import type { RunLayout } from '../layout/index.ts';
import type { Origin } from '../model/index.ts';
import { formatLength, inches, mm } from '../units/index.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';

/** Posts so far out of plumb, as measured, that shims and tapered ends no longer hide it. */
export const postLeans: LimitedRunCheck = {
  kind: {
    code: 'post-leans',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('a post is set again where it is over 3/8" (10 mm) out of plumb over its height'),
    threshold: {
      is: 'length',
      imperial: inches(3 / 8),
      metric: mm(10),
      says: 'how far a post may be out of plumb over its height',
    },
    message: (a) =>
      `Post ${a.post} leans ${a.side} by ${a.by} over its ${a.height}. Set it again; up to ${a.limit} shims or a taper on the cleats take it up.`,
  },
  check: (run, job) => {
    const limit = thresholdOf(job, postLeans.kind);
    const shown = (ticks: number) => formatLength(Math.round(ticks), job.measure.value);
    return run.posts.flatMap(({ number, key }) => {
      const slope = run.leans.get(key)?.slope ?? 0;
      const height = run.postTop - run.ground;
      const by = Math.abs(slope) * height;
      if (by <= limit) return [];
      const args = {
        post: number,
        side: slope < 0 ? 'left' : 'right',
        by: shown(by),
        height: shown(height),
        limit: shown(limit),
      };
      return [{ code: 'post-leans', at: measuredAt(run, number), args, pieces: [key] }];
    });
  },
};

/** Where the post was measured, or a bay beside it. */
function measuredAt({ spec, posts, bays }: RunLayout, number: number): Origin {
  const { measured } = spec;
  const mark = posts.find((post) => post.number === number);
  const beside = bays.filter(({ from, to }) => from === mark?.to || to === mark?.from);
  const own =
    measured?.posts.find((post) => post.number === number) ??
    measured?.bays.find((bay) => beside.some((one) => one.number === bay.number));
  return (own ?? measured ?? spec).origin;
}
