import { POSTS_IN_PLAN, postLine } from '../figures/index.ts';
import { fineLength } from '../units/index.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';

/** Posts, as measured, so far off the best straight line through them that shims no longer hide it. */
export const postOffLine: LimitedRunCheck = {
  kind: {
    code: 'post-off-line',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('posts stand within 1/4" (6 mm) of their line once the concrete has set'),
    threshold: {
      is: 'length',
      ...POSTS_IN_PLAN,
      says: 'how far a post may be off the best straight line through all',
    },
    message: (a) =>
      `Post ${a.post} stands ${a.rest} toward the ${a.side} of the best straight line through the posts. ${a.ways} ` +
      `Set it again, or take it up: up to ${a.limit} is hardly seen.`,
  },
  check: (run, job) => {
    const line = postLine(run);
    const limit = thresholdOf(job, postOffLine.kind);
    // A tick more or less is what halving leaves.
    if (!line || line.most <= limit + 1) return [];
    const show = (size: number) => fineLength(size, job.measure.value);
    const own = line.posts.filter(({ key }) => run.offs.has(key));
    const [worst] = own.sort((a, b) => Math.abs(b.rest) - Math.abs(a.rest));
    if (!worst) return [];
    const shims = line.faces.map((face) => {
      const each = line.posts.map(({ number, shims }) => `${number}: ${show(shims[face] ?? 0)}`).join(', ');
      return `Shims on the ${face}, by post ${each}.`;
    });
    const args = {
      post: worst.number,
      rest: show(Math.abs(worst.rest)),
      side: worst.rest < 0 ? 'front' : 'back',
      limit: show(limit),
      ways: shims.length > 0 ? shims.join(' ') : 'Set cleats and rails to that line, not to the posts.',
    };
    const at = run.offs.get(worst.key)?.origin ?? line.origin;
    return [{ code: 'post-off-line', at, args, pieces: [worst.key] }];
  },
};
