import type { Problem, RunSpec } from '../model/index.ts';
import { formatLength, roundToStep, type Ticks } from '../units/index.ts';
import type { FixedPost } from './fixed-posts.ts';
import type { PostMove } from './layout.ts';
import { clashesOf, type Division, keepClear, movesOf } from './move-posts.ts';
import type { Clearing } from './obstacles.ts';
import { geometryProblem, MOST_POSTS } from './problems.ts';

/** What lies between two neighboring fixed posts and is divided into equal bays. */
interface Stretch {
  readonly left: FixedPost;
  readonly right: FixedPost;
  readonly room: Ticks;
}

type Divided =
  | { posts: readonly FixedPost[]; moves: readonly PostMove[]; clashes: readonly Problem[] }
  | { problems: readonly Problem[] };

/** Puts posts between the fixed ones as the spacing asks. */
export function divideStretches(spec: RunSpec, fixed: readonly FixedPost[]): Divided {
  const stretches = stretchesOf(fixed);
  const counted = bayCounts(spec, fixed, stretches);
  if ('problems' in counted) return counted;
  const added = counted.bays.reduce((sum, bays) => sum + bays - 1, 0);
  if (fixed.length + added > MOST_POSTS) return tooMany(spec);

  const divisions: Division[] = [];
  for (const [index, stretch] of stretches.entries()) {
    const bays = counted.bays[index] ?? 1;
    const marks = marksWithin(spec, stretch, bays);
    if (!marks) return { problems: [noRoom(spec, stretch, bays - 1)] };
    const clearing = clearingOf(spec, stretch, bays);
    divisions.push(keepClear(clearing, marks));
  }
  const between = divisions.flatMap(({ posts }) => posts.map((from) => postAt(spec, from)));
  const posts = [...fixed, ...between].sort((a, b) => a.from - b.from || a.to - b.to);
  return { posts, moves: movesOf(spec, fixed, divisions), clashes: clashesOf(spec, posts, between) };
}

function stretchesOf(fixed: readonly FixedPost[]): readonly Stretch[] {
  return fixed.flatMap((left, index) => {
    const right = fixed[index + 1];
    if (!right || left.opensRight || right.from <= left.to) return [];
    return [{ left, right, room: right.from - left.to }];
  });
}

function bayCounts(
  spec: RunSpec,
  fixed: readonly FixedPost[],
  stretches: readonly Stretch[],
): { bays: readonly number[] } | { problems: readonly Problem[] } {
  const { value: spacing, origin } = spec.spacing;
  const along = spec.post.value.along.value;
  switch (spacing.kind) {
    case 'stations':
      return { bays: stretches.map(() => 1) };
    case 'at-most': {
      const bays = stretches.map((stretch) => fewestBays(stretch, along, spacing.limit, spacing.measured));
      if (bays.some((count) => count === undefined)) {
        const limit = formatLength(spacing.limit, spec.measure);
        return { problems: [geometryProblem('spacing-too-small', origin, { limit })] };
      }
      return { bays: bays.map((count) => count ?? 1) };
    }
    case 'bays':
    case 'posts': {
      const asked = spacing.count;
      const least = spacing.kind === 'bays' ? stretches.length : fixed.length;
      if (!(asked >= least)) {
        const code = spacing.kind === 'bays' ? 'too-few-bays' : 'too-few-posts';
        return { problems: [geometryProblem(code, origin, { asked, least })] };
      }
      if (asked > MOST_POSTS) return tooMany(spec);
      return { bays: spreadBays(stretches, along, Math.floor(asked) - least) };
    }
  }
}

/** The fewest equal bays none of which is over the limit before marks are rounded. */
function fewestBays(
  { left, right, room }: Stretch,
  along: Ticks,
  limit: Ticks,
  measured: 'clear' | 'on-center',
): number | undefined {
  const half = (post: FixedPost) => (post.to - post.from) / 2;
  // On center, a bay also takes half of the post at each of its ends.
  const ends = measured === 'clear' ? 0 : half(left) + half(right);
  if (room + ends <= limit) return 1;
  const posts = measured === 'clear' ? 0 : along / 2 + Math.max(half(left), half(right), along / 2);
  const each = limit - posts;
  if (!(each > 0)) return undefined;
  return Math.max(2, Math.ceil((room + along) / (each + along)));
}

/** Adds bays one by one where bays are widest, so that they come out as equal as they can. */
function spreadBays(stretches: readonly Stretch[], along: Ticks, extra: number): readonly number[] {
  const bays = stretches.map(() => 1);
  const clear = stretches.map(({ room }) => room);
  for (let added = 0; added < extra && stretches.length > 0; added++) {
    const widest = clear.indexOf(Math.max(...clear));
    const count = (bays[widest] ?? 1) + 1;
    bays[widest] = count;
    clear[widest] = ((stretches[widest]?.room ?? 0) - (count - 1) * along) / count;
  }
  return bays;
}

/** Posts that divide a stretch, at the marks nearest to equal bays; undefined when a bay has no room left. */
function marksWithin(
  spec: RunSpec,
  { left, right, room }: Stretch,
  bays: number,
): readonly Ticks[] | undefined {
  const along = spec.post.value.along.value;
  const total = room - (bays - 1) * along;
  if (total <= 0) return undefined;
  const posts: Ticks[] = [];
  let before = left.to;
  for (let bay = 1; bay < bays; bay++) {
    const ideal = left.to + (total * bay) / bays + along * (bay - 1);
    const from = roundToStep(ideal, spec.measure.step);
    if (from <= before) return undefined;
    before = from + along;
    posts.push(from);
  }
  return before < right.from ? posts : undefined;
}

function postAt({ post, spacing }: RunSpec, from: Ticks): FixedPost {
  const stock = post.value;
  const origins = [spacing.origin, post.origin, stock.origin];
  return { from, to: from + stock.along.value, stock, origins };
}

function clearingOf(spec: RunSpec, stretch: Stretch, bays: number): Clearing {
  const { left, right } = stretch;
  const { value: spacing } = spec.spacing;
  const along = spec.post.value.along.value;
  const half = ({ from, to }: FixedPost) => (to - from) / 2;
  return {
    room: [left.to, right.from],
    along,
    step: spec.measure.step,
    most: (bay, all) => {
      if (spacing.kind !== 'at-most') return Infinity;
      if (spacing.measured === 'clear') return spacing.limit;
      return (
        spacing.limit - (bay === 0 ? half(left) : along / 2) - (bay === all - 1 ? half(right) : along / 2)
      );
    },
    bays,
    counted: spacing.kind !== 'at-most',
    noHoles: (spec.noHoles ?? []).filter(({ from, to }) => to > left.to && from < right.from),
    equally: (count) => marksWithin(spec, stretch, count),
  };
}

function noRoom({ measure, spacing }: RunSpec, { left, right }: Stretch, posts: number): Problem {
  const shown = (ticks: Ticks) => formatLength(ticks, measure);
  const args = { posts, from: shown(left.to), to: shown(right.from) };
  return geometryProblem('no-room', spacing.origin, args);
}

function tooMany({ spacing }: RunSpec): { problems: readonly Problem[] } {
  return { problems: [geometryProblem('too-many-posts', spacing.origin, { most: MOST_POSTS })] };
}
