import type { GateSpec, Origin, PostStock, Problem, RunSpec, Sourced } from '../model/index.ts';
import type { Ticks } from '../units/index.ts';
import { divideStretches } from './divide.ts';
import type { Edge } from './edge.ts';
import { type FixedPost, fixedPosts, type PostAtCorner } from './fixed-posts.ts';
import type { Joints } from './joints.ts';
import type { Bay, PostLean, PostMark, PostMove } from './layout.ts';
import { bayKey, postKey } from './names.ts';

/** A post on the tape, with what it is made of and the gates that open beside it. */
export interface PlacedPost {
  readonly mark: PostMark;
  readonly stock: PostStock;
  /** The gate whose opening begins, or ends, at this post. */
  readonly opensRight?: GateSpec;
  readonly opensLeft?: GateSpec;
  /** Whether a bay of slats lies on each side of it, so that slats on its face meet there. */
  readonly sharesSlats: boolean;
  readonly from: readonly Origin[];
  /** Set where another run meets this one. */
  readonly corner?: PostAtCorner;
  /** Set where it was measured to be out of plumb or bent. */
  readonly lean?: PostLean;
  /** Set where it was measured to stand off the line of the run, positive toward its back. */
  readonly off?: Sourced<Ticks>;
}

/** The middle of a post along the run. */
export function middleOf({ mark }: Pick<PlacedPost, 'mark'>): Ticks {
  return mark.from + Math.floor((mark.to - mark.from) / 2);
}

/** A bay and the posts at its ends. */
export interface PlacedBay {
  readonly bay: Bay;
  readonly left: PlacedPost;
  readonly right: PlacedPost;
  readonly gate?: GateSpec;
  /** The faces that look at each other, where they are not plumb. */
  readonly faces?: { readonly left: Edge; readonly right: Edge };
}

export interface PlacedPosts {
  readonly posts: readonly PlacedPost[];
  readonly bays: readonly PlacedBay[];
  readonly moves: readonly PostMove[];
  /** Posts that stand where no hole may be. They are built all the same, so that one sees it. */
  readonly clashes: readonly Problem[];
}

/**
 * Marks posts on the tape. End posts, gate posts and posts at stated stations are where they are stated,
 * to the tick; those between stand at the mark of the measure nearest to where equal bays would put
 * them, counted from station 0, so that no error piles up. Posts and bays sum to the run exactly.
 */
export function placePosts(spec: RunSpec, joints: Joints = {}): PlacedPosts | readonly Problem[] {
  const fixed = fixedPosts(spec, joints);
  if ('problems' in fixed) return fixed.problems;
  const divided = divideStretches(spec, fixed.posts);
  if ('problems' in divided) return divided.problems;

  const posts = divided.posts.map((post, index, all) => placed(spec, post, index + 1, all));
  const bays: PlacedBay[] = [];
  for (const [index, left] of posts.entries()) {
    const right = posts[index + 1];
    if (!right) break;
    const { to: from } = left.mark;
    const { from: to } = right.mark;
    // Two posts side by side have no bay between them.
    if (to === from) continue;
    const number = bays.length + 1;
    const gate = left.opensRight;
    const bay: Bay = { number, key: bayKey(spec.name, number), from, to, clear: to - from, gate: gate?.name };
    bays.push({ bay, left, right, gate });
  }
  return { posts, bays, moves: divided.moves, clashes: divided.clashes };
}

function placed({ name }: RunSpec, post: FixedPost, number: number, all: readonly FixedPost[]): PlacedPost {
  const { from, to, stock, opensLeft, opensRight, corner } = post;
  const gate = opensRight?.name ?? opensLeft?.name;
  const before = all[number - 2];
  const after = all[number];
  const alone = (!before && !after) || before?.to === from || after?.from === to;
  // At an end of the run slats meet only those of a run that goes straight on.
  const shared = (before !== undefined && after !== undefined) || corner?.straight === true;
  return {
    mark: { number, key: corner?.borrowed?.key ?? postKey(name, number), from, to, gate },
    stock,
    opensLeft,
    opensRight,
    sharesSlats: !alone && !gate && shared,
    from: post.origins,
    ...(corner ? { corner } : {}),
  };
}
