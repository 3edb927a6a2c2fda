import type { BracingSpec, GroundPoint, RunSpec } from '../model/index.ts';
import type { Range } from './infill.ts';
import type { Joints } from './joints.ts';
import type { BlockedFoot, PostMark, WallFace } from './layout.ts';
import type { BracePlace } from './post-brace.ts';
import type { StandingPost } from './post-pieces.ts';
import { wallAt } from './walls.ts';

/** A hole is so many times as wide as its post where nothing is stated (common practice). */
const HOLE = 3;

/** What is known of the ground that feet of braces stand on. */
export interface FootGround {
  readonly spec: RunSpec;
  readonly bracing: BracingSpec;
  readonly joints: Joints;
  readonly walls: readonly WallFace[];
  readonly line: readonly GroundPoint[];
}

/** Why the foot of a brace may not stand where it would; undefined where nothing is known against it. */
export function inTheWay(
  around: FootGround,
  place: BracePlace,
  own: PostMark,
  posts: readonly StandingPost[],
): Pick<BlockedFoot, 'why' | 'what'> | undefined {
  const { spec, walls } = around;
  const x = footAlong(around, place);
  const noHole = spec.noHoles?.find(({ from, to }) => x[0] < to && x[1] > from);
  if (noHole) return { why: 'no-hole', what: noHole.reason ?? '' };
  if (walls.some((wall) => pastWall(wall, x, place.ground))) return { why: 'wall', what: '' };
  const other = posts.find(({ post: { mark } }) => {
    if (mark.key === own.key) return false;
    const wide = mark.to - mark.from;
    const hole = place.axis === 'along' ? (spec.hole?.diameter.value ?? HOLE * wide) : wide;
    const more = Math.max(0, hole - wide) / 2;
    return x[0] < mark.to + more && x[1] > mark.from - more;
  });
  if (other) return { why: 'hole', what: `P${other.post.mark.number}` };
  return place.axis === 'across' ? acrossTheWay(around, place) : undefined;
}

/** Stations that brace and stake of a foot take there. */
function footAlong({ bracing }: FootGround, { axis, middle, way, out, face, outward }: BracePlace): Range {
  const stake = bracing.stake.value;
  if (axis === 'along') {
    const [at, half] = [middle + way * out, stake.width.value / 2];
    return [at - half, at + half];
  }
  const far = face + outward * (bracing.board.value.thickness.value + stake.thickness.value);
  return [Math.min(face, far), Math.max(face, far)];
}

function pastWall(wall: WallFace, [low, high]: Range, ground: number): boolean {
  const at = wallAt(wall, ground);
  return wall.inward === 1 ? low < at : high > at;
}

/** Beyond a property line that is known, over a drop, or in a pool. */
function acrossTheWay(
  { spec: { propertyLines, drop, pool }, bracing }: FootGround,
  { middle, way, out }: BracePlace,
): Pick<BlockedFoot, 'why' | 'what'> | undefined {
  const foot = middle + way * (out + bracing.stake.value.width.value / 2);
  if (propertyLines?.some(({ y }) => (y >= 0 ? foot > y : foot < y))) return { why: 'property', what: '' };
  const side = way === 1 ? 'back' : 'front';
  if (drop?.side === side) return { why: 'drop', what: '' };
  if (pool?.value === side) return { why: 'pool', what: '' };
  return undefined;
}
