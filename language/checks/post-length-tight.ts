import type { Piece, RunLayout } from '../layout/index.ts';
import type { Origin } from '../model/index.ts';
import { formatLength, inches, mm, type Ticks } from '../units/index.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';
import { isDug } from './dug.ts';
import type { Finding } from './finding.ts';

/** Posts so nearly as long as the length they are bought in that a hole an inch deeper, or a bad end, makes them short. */
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
      `${a.posts} ${a.count === 1 ? 'is' : 'are'} ${a.same ? '' : 'up to '}${a.length} long and bought in ${a.sold}: ${a.spare === '' ? 'nothing' : `only ${a.spare}`} is left for ` +
      `${a.dug ? 'a deeper hole or a bad end' : 'a bad end'}. ` +
      (a.next === '' ? 'State a longer length' : `Order ${a.next} instead`) +
      (a.dug ? `, or set them ${a.short} less deep.` : ', or a lower height.'),
  },
  check: (run, job) => {
    const least = thresholdOf(job, postLengthTight.kind);
    const show = (ticks: Ticks) => formatLength(ticks, job.measure.value);
    return postsByLength(run).flatMap(({ at, sold, next, posts }): readonly Finding[] => {
      const tight = posts.filter(({ cut }) => sold - cut.longPoint < least);
      const lengths = tight.map(({ cut }) => cut.longPoint);
      if (lengths.length === 0) return [];
      const spare = sold - Math.max(...lengths);
      const args = {
        posts: tight.map(({ label }) => label).join(', '),
        count: tight.length,
        same: Math.max(...lengths) === Math.min(...lengths) ? 1 : 0,
        length: show(Math.max(...lengths)),
        sold: show(sold),
        spare: spare === 0 ? '' : show(spare),
        short: show(least - spare),
        next: next === undefined ? '' : show(next),
        dug: isDug(run.spec) ? 1 : 0,
      };
      return [{ code: 'post-length-tight', at, args, pieces: tight.map(({ key }) => key) }];
    });
  },
};

interface BoughtPosts {
  /** Where the run or a gate asks for their stock. */
  readonly at: Origin;
  /** They are bought in the shortest length that is long enough, and the next one. */
  readonly sold: Ticks;
  readonly next?: Ticks;
  /** In the order they stand. */
  readonly posts: readonly Piece[];
}

/** Posts of a run by stock and the length they are bought in; those of stock without lengths are left out. */
function postsByLength({ spec, pieces }: RunLayout): readonly BoughtPosts[] {
  const stocks = new Map(
    [spec.post, ...spec.gates.flatMap(({ post, latchPost }) => [post, ...(latchPost ? [latchPost] : [])])]
      .reverse()
      .map((post) => [post.value.name, post] as const),
  );
  return [...stocks.values()].reverse().flatMap(({ value: { name, lengths }, origin }) => {
    const posts = pieces.filter(({ role, cut }) => role === 'post' && cut.stock === name);
    return lengths.flatMap(({ value: sold }, index): readonly BoughtPosts[] => {
      const shorter = lengths[index - 1]?.value ?? 0;
      const next = lengths[index + 1]?.value;
      const bought = posts.filter(({ cut }) => cut.longPoint > shorter && cut.longPoint <= sold);
      return [{ at: origin, sold, ...(next === undefined ? {} : { next }), posts: bought }];
    });
  });
}
