import type { GateSpec, Origin, PostStock, Problem, RunSpec } from '../model/index.ts';
import { formatLength, type Ticks } from '../units/index.ts';
import type { SlatEnd } from './corner.ts';
import type { Range } from './infill.ts';
import { type EndJoint, type Joints, lastSlatEnd, type StartJoint } from './joints.ts';
import { postDepth } from './post-pieces.ts';
import { geometryProblem } from './problems.ts';

/** A post whose place is stated. */
export interface FixedPost {
  readonly from: Ticks;
  readonly to: Ticks;
  readonly stock: PostStock;
  readonly opensRight?: GateSpec;
  readonly opensLeft?: GateSpec;
  readonly origins: readonly Origin[];
  /** Set where another run meets this one. */
  readonly corner?: PostAtCorner;
}

/** What is particular about a post that two runs share. */
export interface PostAtCorner {
  /** It belongs to the run this one comes after, and is counted but not made here; where it is through this run. */
  readonly borrowed?: { readonly key: string; readonly depth: Range };
  /** The runs go straight on, so that slats on its face meet there. */
  readonly straight: boolean;
  /** How slats on its face end, where they do not end with it. */
  readonly end?: SlatEnd;
}

/**
 * End posts, gate posts and posts at stated stations, from station 0. A gate post that takes the place of
 * an end post is that end post; two gates may share the post between them.
 */
export function fixedPosts(
  spec: RunSpec,
  { start, end }: Joints,
): { posts: readonly FixedPost[] } | { problems: readonly Problem[] } {
  const gates = [...spec.gates].sort((a, b) => a.station.value - b.station.value);
  const problems = [...gateProblems(spec, gates), ...stationProblems(spec, gates)];
  if (problems.length > 0) return { problems };

  const posts: FixedPost[] = [];
  const put = (post: FixedPost) => {
    const same = posts.findIndex(({ from, to }) => from === post.from && to === post.to);
    const old = posts[same];
    if (!old) posts.push(post);
    else
      posts[same] = {
        ...post,
        opensLeft: post.opensLeft ?? old.opensLeft,
        opensRight: post.opensRight ?? old.opensRight,
      };
  };
  const { value: length } = spec.length;
  const own = spec.post.value;
  const along = own.along.value;
  const gatePosts = gates.flatMap(postsOf);
  const beginsAt = (station: Ticks) => gatePosts.some(({ from }) => from === station);
  const endsAt = (station: Ticks) => gatePosts.some(({ to }) => to === station);
  const line = (from: Ticks, origin: Origin): FixedPost => ({
    from,
    to: from + along,
    stock: own,
    origins: [origin, spec.post.origin, own.origin],
  });

  if (start) put(cornerPost(spec, start));
  else if (!beginsAt(0)) put(line(0, spec.length.origin));
  if (!endsAt(length)) put(line(length - along, spec.length.origin));
  for (const post of gatePosts) put(post);
  if (spec.spacing.value.kind === 'stations') {
    for (const { value, origin } of spec.spacing.value.stations) {
      if (!posts.some(({ from }) => from === value)) put(line(value, origin));
    }
  }
  posts.sort((a, b) => a.from - b.from || a.to - b.to);
  const last = posts.at(-1);
  if (end && last)
    posts[posts.length - 1] = { ...last, corner: { ...last.corner, ...atEnd(spec, end, last) } };
  const crossed = overlaps(spec, posts);
  return crossed.length > 0 ? { problems: crossed } : { posts };
}

/** The post it shares with the run it comes after: its 0 is that post's outer face. */
function cornerPost(spec: RunSpec, { post, corner, turn }: StartJoint): FixedPost {
  return {
    from: 0,
    to: corner.along,
    stock: post.stock,
    origins: [spec.placement?.origin ?? spec.origin, ...post.from],
    corner: {
      borrowed: { key: post.key, depth: corner.depth },
      straight: turn === 0,
      ...(corner.ends.second ? { end: corner.ends.second } : {}),
    },
  };
}

function atEnd(spec: RunSpec, joint: EndJoint, post: FixedPost): PostAtCorner {
  const slats = lastSlatEnd(spec, joint, { x: [post.from, post.to], y: postDepth(spec, post) });
  return { straight: joint.turn === 0, ...(slats ? { end: slats } : {}) };
}

function postsOf(gate: GateSpec): readonly FixedPost[] {
  const { station, opening, post, latchPost = post, hinges } = gate;
  const [left, right] = hinges.value === 'left' ? [post, latchPost] : [latchPost, post];
  const begin = station.value;
  const end = begin + opening.value;
  const made = ({ value, origin }: typeof post) => ({
    stock: value,
    origins: [gate.origin, origin, value.origin],
  });
  return [
    { ...made(left), from: begin - left.value.along.value, to: begin, opensRight: gate },
    { ...made(right), from: end, to: end + right.value.along.value, opensLeft: gate },
  ];
}

function gateProblems(spec: RunSpec, gates: readonly GateSpec[]): Problem[] {
  const shown = (ticks: Ticks) => formatLength(ticks, spec.measure);
  const length = spec.length.value;
  const problems: Problem[] = [];
  for (const [index, gate] of gates.entries()) {
    const [left, right] = postsOf(gate);
    if (!left || !right) continue;
    const { name, opening, station } = gate;
    if (right.to - left.from > length) {
      const room = Math.max(0, length - (right.to - left.from - opening.value));
      const args = { gate: name, opening: shown(opening.value), room: shown(room) };
      problems.push(geometryProblem('gate-too-wide', opening.origin, args));
    } else if (left.from < 0 || right.to > length) {
      const args = { gate: name, from: shown(left.from), to: shown(right.to), length: shown(length) };
      problems.push(geometryProblem('gate-outside', station.origin, args));
    }
    const before = gates[index - 1];
    const until = before ? before.station.value + before.opening.value : 0;
    if (before && until > station.value) {
      const args = { first: before.name, second: name, until: shown(until) };
      const related = [{ origin: before.origin, note: before.name }];
      problems.push(geometryProblem('gates-overlap', station.origin, args, related));
    }
  }
  return problems;
}

function stationProblems(spec: RunSpec, gates: readonly GateSpec[]): Problem[] {
  if (spec.spacing.value.kind !== 'stations') return [];
  const shown = (ticks: Ticks) => formatLength(ticks, spec.measure);
  const length = spec.length.value;
  const along = spec.post.value.along.value;
  const problems: Problem[] = [];
  let before = -1;
  for (const { value, origin } of spec.spacing.value.stations) {
    const station = shown(value);
    const gate = gates.find((each) => {
      const opens = each.station.value;
      return value + along > opens && value < opens + each.opening.value;
    });
    if (!(value >= 0 && value + along <= length)) {
      problems.push(geometryProblem('station-outside', origin, { station, length: shown(length) }));
    } else if (value <= before) {
      problems.push(geometryProblem('stations-order', origin, { station, before: shown(before) }));
    } else if (gate) {
      problems.push(geometryProblem('post-in-opening', origin, { station, gate: gate.name }));
    }
    before = Math.max(before, value);
  }
  return problems;
}

function overlaps(spec: RunSpec, posts: readonly FixedPost[]): Problem[] {
  const shown = (ticks: Ticks) => formatLength(ticks, spec.measure);
  return posts.flatMap((post, index) => {
    const before = posts[index - 1];
    if (!before || before.to <= post.from) return [];
    // Told at the later of the two, or at the one before an end of the run, which is not stated itself.
    const stated = [post, before].find(({ origins }) => origins[0] !== spec.length.origin);
    const origin = stated?.origins[0];
    const args = { station: shown(post.from), until: shown(before.to) };
    return [geometryProblem('posts-overlap', origin ?? spec.post.origin, args)];
  });
}
