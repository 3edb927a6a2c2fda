import { groundLine, lowestGround, type RunSpec, type Sourced } from '../model/index.ts';
import { ceilToStep, type Ticks } from '../units/index.ts';
import { axesOf } from './corner.ts';
import type { Stand } from './follow-ground.ts';
import { centered } from './holds.ts';
import { reachOfIncline } from './incline.ts';
import type { Range } from './infill.ts';
import type { StartJoint } from './joints.ts';
import { backHalfLabel, postLabel } from './labels.ts';
import type { PostLean } from './layout.ts';
import { thickestOf } from './lines.ts';
import { type Block, makeBoard } from './make-board.ts';
import { type About, makePiece } from './make-piece.ts';
import type { Groove, Piece, Vec3 } from './piece.ts';
import { grooveFor } from './pockets.ts';
import { middleOf, type PlacedPost, type PlacedPosts } from './posts.ts';

/**
 * Depth below ground. Where none is stated, half of what stands above ground, up to the next mark: one third
 * of the whole length is in the ground (common practice; the deeper of the two ways "one third" is said).
 */
export function embedOf({ embed, measure, origin }: RunSpec, above: Ticks): Sourced<Ticks> {
  if (embed) return embed;
  return { value: ceilToStep(above / 2, measure.step), origin: { ...origin, why: 'default' } };
}

/**
 * Where a post is through the screen: its middle in the run's middle. Where slats lie on a face of the posts,
 * all posts are flush on that face, or slats would not lie on the thinner ones.
 */
export function postDepth(
  { infill, post }: RunSpec,
  { stock, corner }: Pick<PlacedPost, 'stock' | 'corner'>,
): Range {
  if (corner?.borrowed) return corner.borrowed.depth;
  const through = stock.through.value;
  const { value: mounting } = infill.mounting;
  if (mounting.kind === 'split') {
    const [front, back] = centered(thickestIn(infill));
    return [front - through, back + through];
  }
  if (mounting.kind !== 'face' || infill.flip.upright) return centered(through);
  const own = centered(post.value.through.value);
  return mounting.face === 'front' ? [own[0], own[0] + through] : [own[1] - through, own[1]];
}

/** The thickest of a pattern's slats, and of boards its fit may trim with. */
function thickestIn({ pattern, fit }: RunSpec['infill']): Ticks {
  const boards = fit.remedies.flatMap(({ value }) =>
    value.kind === 'trim' && value.board ? [value.board] : [],
  );
  const all = [...pattern.repeat.map(({ value }) => value), ...boards];
  return all.reduce((most, { thickness }) => Math.max(most, thickness.value), 0);
}

/** Key of the half of a split post that stands behind the slats; the one before them has the post's own. */
export function backHalfKey(post: string): string {
  return `${post}/back`;
}

/** Whether a piece is that half: another post is none. */
export function isBackHalf({ role, side }: Pick<Piece, 'role' | 'side'>): boolean {
  return role === 'post' && side === 'back';
}

/** A post from its foot to its top. */
export interface StandingPost {
  readonly post: PlacedPost;
  readonly z: Range;
  readonly embed: Sourced<Ticks>;
  /** Of slats that end in it, and from which height up; they run out at its top, where slats go in. */
  readonly grooves: readonly PostGroove[];
}

/** A groove in the left or the right side of a post. */
interface PostGroove {
  readonly side: 'left' | 'right';
  readonly foot: Ticks;
  readonly thickest: Ticks;
}

/**
 * How far each post reaches: up to the higher of the bays beside it, and down from the lowest ground under its
 * width as deep as it is embedded there.
 */
export function standingPosts(
  spec: RunSpec,
  { posts, bays }: PlacedPosts,
  stands: ReadonlyMap<number, Stand>,
): readonly StandingPost[] {
  const line = groundLine(spec);
  const tops = new Map<PlacedPost, Ticks>();
  const grooves = new Map<PlacedPost, PostGroove[]>();
  const grooved = spec.infill.mounting.value.kind === 'grooves' && !spec.infill.flip.upright;
  for (const { bay, left, right } of bays) {
    const stand = stands.get(bay.number);
    for (const [post, face] of [
      [left, bay.from],
      [right, bay.to],
    ] as const) {
      const past = face === bay.from ? 1 : -1;
      const top = stand ? topBeside(spec, stand, middleOf(post), face + past * pastPost(spec, post)) : 0;
      tops.set(post, Math.max(top, tops.get(post) ?? top));
      if (!grooved || !stand?.filled) continue;
      const groove: PostGroove = {
        side: post === left ? 'right' : 'left',
        foot: stand.z[0],
        thickest: thickestOf(stand.filled.lines),
      };
      grooves.set(post, [...(grooves.get(post) ?? []), groove]);
    }
  }
  const highest = Math.max(...[...stands.values()].map(({ z }) => z[1]));
  return posts.map((post) => {
    const top = (tops.get(post) ?? highest) + spec.tops.value;
    const ground = lowestGround(line, post.mark.from, post.mark.to);
    const embed = gateEmbedOf(post) ?? embedOf(spec, top - ground);
    return { post, z: [ground - embed.value, top], embed, grooves: grooves.get(post) ?? [] };
  });
}

/** The depth that a gate beside a post states; the greater where two gates share it. */
export function gateEmbedOf({ opensLeft, opensRight }: PlacedPost): Sourced<Ticks> | undefined {
  const [one, other] = [opensLeft?.embed, opensRight?.embed];
  return one && other ? (other.value > one.value ? other : one) : (one ?? other);
}

/** How far a post's cap reaches past its face, over what slopes up beside it. */
function pastPost({ caps }: RunSpec, { mark }: PlacedPost): Ticks {
  if (!caps) return 0;
  const { along, overhang } = caps.value;
  return along ? Math.max(0, Math.ceil((along.value - (mark.to - mark.from)) / 2)) : overhang.value;
}

/** Top of a bay at a post: where it slopes, of its line from the post's middle to `reach`, up to a mark of the tape. */
function topBeside({ measure }: RunSpec, { z, rack }: Stand, middle: Ticks, reach: Ticks): Ticks {
  if (!rack) return z[1];
  return ceilToStep(reachOfIncline(rack.top, middle, reach)[1] - 1e-6, measure.step);
}

export function postPieces(spec: RunSpec, posts: readonly StandingPost[]): Piece[] {
  const own = posts.filter(({ post }) => !post.corner?.borrowed);
  return own.flatMap((standing): Piece[] => {
    const { post, z } = standing;
    const { mark, stock, lean } = post;
    const about: About = {
      key: mark.key,
      label: postLabel(mark.number),
      role: 'post',
      run: spec.name,
      gate: mark.gate,
      side: 'middle',
      supports: [],
      from: [...post.from, spec.origin],
    };
    const block: Block = { x: [mark.from, mark.to], y: postDepth(spec, post), z };
    const made = (half: About, y: Range): Piece => {
      const grooves = groovesOf(spec, standing, y[0]);
      return lean?.slope
        ? leaningPost(half, { name: stock.name, grooves }, { ...block, y }, lean)
        : makeBoard(half, { name: stock.name, grooves }, true, { ...block, y });
    };
    if (spec.infill.mounting.value.kind !== 'split') return [made(about, block.y)];
    const [front, back] = block.y;
    const through = stock.through.value;
    const behind = { key: backHalfKey(mark.key), label: backHalfLabel(about.label), side: 'back' } as const;
    return [
      made({ ...about, side: 'front' }, [front, front + through]),
      made({ ...about, ...behind }, [back - through, back]),
    ];
  });
}

function groovesOf(
  { infill }: RunSpec,
  { post, z, grooves }: StandingPost,
  front: Ticks,
): readonly Groove[] | undefined {
  // Out of plumb its foot is not level: it goes down till all of it is below the slats.
  const { mark, lean } = post;
  const tilt = Math.ceil(Math.abs(lean?.slope ?? 0) * (mark.to - mark.from));
  const made = grooves.flatMap(({ side, foot, thickest }) => {
    const place = { side: side === 'left' ? 'start' : 'end', from: Math.max(0, foot - z[0] - tilt) } as const;
    return grooveFor(infill.mounting.value, thickest, front, place) ?? [];
  });
  return made.length > 0 ? made : undefined;
}

/** A post out of plumb; its top is cut level where it stands (common practice). */
function leaningPost(
  about: About,
  stock: { readonly name: string; readonly grooves?: readonly Groove[] },
  { x, y, z }: Block,
  { slope, pivot }: PostLean,
): Piece {
  const long = Math.hypot(1, slope);
  const [cos, sin] = [1 / long, slope / long];
  const width = x[1] - x[0];
  const below = (pivot[1] - z[0]) * long;
  return makePiece(about, {
    stock: stock.name,
    ...(stock.grooves ? { grooves: stock.grooves } : {}),
    ripped: false,
    origin: [pivot[0] - sin * below - (cos * width) / 2, y[0], pivot[1] - cos * below + (sin * width) / 2],
    grain: [sin, 0, cos],
    across: [cos, 0, -sin],
    through: [0, 1, 0],
    width,
    thickness: y[1] - y[0],
    ends: [{ at: 0 }, { at: below + (z[1] - pivot[1]) * long - (slope * width) / 2, miter: slope }],
  });
}

/** The post at or before station 0 that another run makes, as it stands in this one's frame. */
export function borrowedPost(
  spec: RunSpec,
  {
    post,
    corner,
    turn,
  }: Pick<StartJoint, 'post' | 'turn'> & { readonly corner: Pick<StartJoint['corner'], 'at'> },
): Piece {
  const { along, back } = axesOf(-turn);
  const dx = post.x[0] - corner.at[0];
  const dy = post.y[0] - corner.at[1];
  const axis = (x: number, y: number): Vec3 => [x * along[0] + y * back[0], x * along[1] + y * back[1], 0];
  const [x, y] = axis(dx, dy);
  return makePiece(
    {
      key: post.key,
      label: post.label,
      role: 'post',
      run: post.run,
      side: 'middle',
      supports: [],
      from: [...post.from, spec.origin],
    },
    {
      stock: post.stock.name,
      ripped: false,
      origin: [x, y, post.z[0]],
      grain: [0, 0, 1],
      across: axis(1, 0),
      through: axis(0, 1),
      width: post.x[1] - post.x[0],
      thickness: post.y[1] - post.y[0],
      ends: [{ at: 0 }, { at: post.z[1] - post.z[0] }],
    },
  );
}
