import type { Piece, RunLayout } from '../layout/index.ts';
import type { Origin } from '../model/index.ts';
import { formatLength, inches, mm, type Ticks } from '../units/index.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';
import type { Finding } from './finding.ts';

/** Posts so nearly as long as the length they are bought in that a hole an inch deeper makes them short. */
export const postLengthTight: LimitedRunCheck = {
  kind: {
    code: 'post-length-tight',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice(
      'posts are ordered 2" (50 mm) longer than they are to be, and cut to the line once they stand',
    ),
    threshold: {
      is: 'length',
      imperial: inches(2),
      metric: mm(50),
      says: 'least that a post is longer as bought than as it is to stand',
    },
    message: (a) =>
      `${a.posts} ${a.count === 1 ? 'is' : 'are'} ${a.length} long and bought in ${a.sold}: only ${a.spare} is left for a deeper hole or a bad end. ` +
      (a.next === ''
        ? `State a longer length, or set them ${a.short} less deep.`
        : `Order ${a.next} instead, or set them ${a.short} less deep.`),
  },
  check: (run, job) => {
    const least = thresholdOf(job, postLengthTight.kind);
    const show = (ticks: Ticks) => formatLength(ticks, job.measure.value);
    return postsByStock(run).flatMap(({ at, lengths, posts }): readonly Finding[] => {
      const tight = posts.flatMap((post) => {
        const sold = lengths.find((length) => length >= post.cut.longPoint);
        return sold !== undefined && sold - post.cut.longPoint < least ? [{ post, sold }] : [];
      });
      const [worst] = tight.sort((a, b) => a.sold - a.post.cut.longPoint - (b.sold - b.post.cut.longPoint));
      if (!worst) return [];
      const spare = worst.sold - worst.post.cut.longPoint;
      const next = lengths.find((length) => length > worst.sold);
      const args = {
        posts: tight.map(({ post }) => post.label).join(', '),
        count: tight.length,
        length: show(worst.post.cut.longPoint),
        sold: show(worst.sold),
        spare: show(spare),
        short: show(least - spare),
        next: next === undefined ? '' : show(next),
      };
      return [{ code: 'post-length-tight', at, args, pieces: tight.map(({ post }) => post.key) }];
    });
  },
};

interface PostsOfStock {
  /** Where the run or a gate asks for it. */
  readonly at: Origin;
  /** It is sold in, shortest first. */
  readonly lengths: readonly Ticks[];
  readonly posts: readonly Piece[];
}

/** Posts of a run, stock by stock; those of stock without lengths are left out. */
function postsByStock({ spec, pieces }: RunLayout): readonly PostsOfStock[] {
  const seen = new Set<string>();
  const stocks = [
    spec.post,
    ...spec.gates.flatMap(({ post, latchPost }) => [post, ...(latchPost ? [latchPost] : [])]),
  ];
  return stocks.flatMap(({ value: { name, lengths }, origin }): readonly PostsOfStock[] => {
    const posts = pieces.filter(({ role, cut }) => role === 'post' && cut.stock === name);
    if (seen.has(name) || lengths.length === 0) return [];
    seen.add(name);
    return [{ at: origin, lengths: lengths.map(({ value }) => value), posts }];
  });
}
