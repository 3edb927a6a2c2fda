import { type BracingSpec, isMetric, levelAt, type RunSpec } from '../model/index.ts';
import { inches, mm, type Ticks } from '../units/index.ts';
import { liesOnPosts } from './bay-panel.ts';
import { type FootGround, inTheWay } from './brace-feet.ts';
import { postLabel } from './labels.ts';
import type { BlockedFoot, BracedPost } from './layout.ts';
import { overlap } from './overlap.ts';
import type { Piece } from './piece.ts';
import { type BracePlace, footOf, postBrace, slopeOf } from './post-brace.ts';
import { postDepth, type StandingPost } from './post-pieces.ts';
import { faceOf, type Tight } from './setting-strips.ts';

/** A brace meets its post so far up (common practice: two thirds of what stands above the ground). */
const UP = 2 / 3;
/** Where nothing is stated, heights are whole ones of these. */
const ROUND = { imperial: inches(1), metric: mm(10) };
/** Only so many pieces made before can be in the way of a post's braces: those of the posts beside it, and their strips. */
const NEAR = 16;

/** One choice for both braces of a post: which ways they go, and on which side of the post the one across it lies. */
interface Ways {
  readonly along: 1 | -1;
  readonly across: 1 | -1;
  readonly side: 1 | -1;
}

interface Made {
  readonly pieces: readonly Piece[];
  readonly blocked: readonly BlockedFoot[];
}

/** Two braces at right angles to each other and their stakes for every post of the run's own. */
export function bracesOf(
  around: FootGround,
  posts: readonly StandingPost[],
  strips: readonly Piece[],
): Made & { readonly braced: readonly BracedPost[]; readonly tight?: Tight | undefined } {
  const { spec, bracing } = around;
  const pieces: Piece[] = [];
  const braced: BracedPost[] = [];
  const blocked: BlockedFoot[] = [];
  let tight: Tight | undefined;
  const ofPost = new Map<string, Piece[]>();
  for (const strip of strips)
    for (const key of strip.supports) {
      const held = ofPost.get(key);
      if (held) held.push(strip);
      else ofPost.set(key, [strip]);
    }
  for (const standing of posts) {
    if (standing.post.corner?.borrowed) continue;
    const { mark } = standing.post;
    const near = [...(ofPost.get(mark.key) ?? []), ...pieces.slice(-NEAR)].map((piece) => ({
      piece,
      box: boxOf(piece),
    }));
    const reach = reachOf(spec, bracing, standing, around.line);
    if (reach.needs > reach.room) {
      tight ??= { what: 'brace', at: postLabel(mark.number), room: reach.room, needs: reach.needs };
      continue;
    }
    let best: Made | undefined;
    for (const ways of waysOf(around, standing)) {
      const made = makeBoth(around, standing, reach, ways, posts, near);
      if (!best || made.blocked.length < best.blocked.length) best = made;
      if (made.blocked.length === 0) break;
    }
    pieces.push(...(best?.pieces ?? []));
    braced.push({ post: mark.number, up: reach.up, out: reach.out });
    blocked.push(...(best?.blocked ?? []));
  }
  return { pieces, braced, blocked, tight };
}

interface Reach {
  readonly up: Ticks;
  readonly out: Ticks;
  /** Of the post above the ground, and what the brace takes of it. */
  readonly room: number;
  readonly needs: number;
}

/** How far up and out the braces of a post go, and whether its upper end is on the post. */
function reachOf(
  spec: RunSpec,
  bracing: BracingSpec,
  { post: { mark }, z }: StandingPost,
  line: FootGround['line'],
): Reach {
  const room = z[1] - levelAt(line, (mark.from + mark.to) / 2);
  const round = ROUND[isMetric(spec.measure) ? 'metric' : 'imperial'];
  const up = bracing.up?.value ?? Math.max(round, Math.floor((UP * room) / round) * round);
  const out = bracing.out?.value ?? up;
  const foot = footOf(bracing);
  return { up, out, room, needs: up <= foot ? 2 * foot + 1 + room : up };
}

/**
 * Choices for a post, best first: all braces along the run toward station 0, so that they are parallel; those across it
 * toward the back, or the front where another run turns off to the back. Two that lie in one corner of the post would
 * cross, which leaves one side for those.
 */
function waysOf({ spec, joints }: FootGround, { post: { mark } }: StandingPost): readonly Ways[] {
  const last = mark.to >= spec.length.value;
  const toBack: 1 | -1 = last && (joints.end?.turn ?? 0) > 0 ? -1 : 1;
  const face = faceBehind(spec);
  return ([-1, 1] as const).flatMap((along) =>
    ([toBack, toBack === 1 ? -1 : 1] as const).flatMap((across) =>
      ([along === -1 ? 1 : -1, along] as const).flatMap((side) =>
        across === face && side === along ? [] : [{ along, across, side }],
      ),
    ),
  );
}

/** The face braces along the run lie on: the one without strips. */
function faceBehind(spec: RunSpec): 1 | -1 {
  return liesOnPosts(spec) && faceOf(spec) === 'back' ? -1 : 1;
}

function makeBoth(
  around: FootGround,
  standing: StandingPost,
  { up, out }: Reach,
  { along, across, side }: Ways,
  posts: readonly StandingPost[],
  near: readonly Near[],
): Made {
  const { spec, bracing, line } = around;
  const { mark } = standing.post;
  const y = postDepth(spec, standing.post);
  const [x, half] = [(mark.from + mark.to) / 2, (mark.to - mark.from) / 2];
  const high = levelAt(line, x) + up;
  const behind = faceBehind(spec);
  const places: readonly BracePlace[] = [
    {
      axis: 'along',
      way: along,
      face: y[behind === 1 ? 1 : 0],
      outward: behind,
      middle: x,
      half,
      high,
      ground: levelAt(line, x + along * out),
      out,
    },
    {
      axis: 'across',
      way: across,
      face: side === 1 ? mark.to : mark.from,
      outward: side,
      middle: (y[0] + y[1]) / 2,
      half: (y[1] - y[0]) / 2,
      high,
      ground: levelAt(line, x) + (spec.across?.value ?? 0) * across * out,
      out,
    },
  ];
  const pieces: Piece[] = [];
  const blocked: BlockedFoot[] = [];
  for (const place of places) {
    const made = slopeOf(bracing, place) > 0 ? postBrace(spec, bracing, standing.post, place) : undefined;
    const hit = made?.map((piece) => hitBy(piece, near)).find((one) => one !== undefined);
    const why = made
      ? (inTheWay(around, place, mark, posts) ?? (hit && { why: 'piece' as const, what: hit.label }))
      : { why: 'ground' as const, what: '' };
    pieces.push(...(made ?? []));
    if (why) blocked.push({ post: mark.number, axis: place.axis, up, out, ...why });
  }
  return { pieces, blocked };
}

/** A piece made before, and the least and greatest of it on each axis. */
interface Near {
  readonly piece: Piece;
  readonly box: Box;
}

type Box = readonly (readonly [low: number, high: number])[];

function boxOf({ solid }: Piece): Box {
  return ([0, 1, 2] as const).map((axis) => {
    const all = solid.vertices.map((vertex) => vertex[axis]);
    return [Math.min(...all), Math.max(...all)] as const;
  });
}

/** The first of the pieces made before that a new one would share room with. */
function hitBy(piece: Piece, near: readonly Near[]): Piece | undefined {
  const box = boxOf(piece);
  const meets = (other: Box) =>
    box.every(([low, high], axis) => {
      const [from, to] = other[axis] ?? [low, high];
      return low < to && high > from;
    });
  return near.find((one) => meets(one.box) && overlap(piece.solid, one.piece.solid))?.piece;
}
