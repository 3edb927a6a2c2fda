import { bendsOf, type Piece, type RunLayout, reachAt, type WallFace, wallAt } from '../layout/index.ts';
import { inches, mm, type Ticks } from '../units/index.ts';

/** How far something is from a wall at a height from the datum; less than nothing where it is in the wall. */
export interface GapAt {
  readonly z: number;
  readonly gap: number;
}

/** What there is between an end post and the wall past it. */
export interface WallGap {
  readonly face: WallFace;
  readonly post: Piece;
  /** Heights of what fills the bay beside the post, which a filler is as high as. */
  readonly reach: readonly [bottom: Ticks, top: Ticks];
  /** From the post to the wall over these heights. */
  readonly bottom: GapAt;
  readonly top: GapAt;
  readonly least: GapAt;
  readonly greatest: GapAt;
  /** The piece that comes nearest to the wall, or farthest into it, and where: a post, its cap, a collar or a batten. */
  readonly nearest: GapAt & { readonly piece: Piece };
  /** Where there is one. */
  readonly filler?: Piece;
}

/** An open gap this narrow keeps post and cladding wet (common practice). */
export const LEAST_OPEN_GAP = { imperial: inches(1), metric: mm(25) };

const remembered = new WeakMap<RunLayout, readonly WallGap[]>();

/** The gaps of a run to the walls it begins and ends at; remembered with the run. Plain geometry of its pieces. */
export function wallGaps(run: RunLayout): readonly WallGap[] {
  const held = remembered.get(run);
  if (held) return held;
  const gaps = run.walls.flatMap((face) => gapOf(run, face) ?? []);
  remembered.set(run, gaps);
  return gaps;
}

/** The widest gap of a run to a wall that no filler closes; nothing where there is none. */
export function openBesideWall(run: RunLayout): Ticks {
  return Math.max(0, ...wallGaps(run).flatMap(({ filler, greatest }) => (filler ? [] : [greatest.gap])));
}

function gapOf(run: RunLayout, face: WallFace): WallGap | undefined {
  const at = face.side === 'start' ? 0 : -1;
  const [mark, bay] = [run.posts.at(at), run.bays.at(at)];
  const own = mark ? run.pieces.filter(({ key }) => key === mark.key || key.startsWith(`${mark.key}/`)) : [];
  const post = own.find(({ key }) => key === mark?.key);
  if (!post || !bay) return undefined;
  const beside = face.side === 'start' ? bay.from : bay.to;
  const reach = reachAt(run, bay.number, beside) ?? [run.bottom, run.top];
  const filler = own.find(({ role }) => role === 'filler');
  const gaps = gapsOver(face, post, reach);
  const [bottom, top] = [gaps[0], gaps.at(-1)];
  if (!bottom || !top) return undefined;
  const near = own
    .filter(({ role }) => role !== 'filler')
    .flatMap((piece) => gapsOver(face, piece).map((gap) => ({ ...gap, piece })));
  const least = (all: readonly GapAt[]) => all.reduce((one, other) => (other.gap < one.gap ? other : one));
  return {
    face,
    post,
    reach,
    bottom,
    top,
    least: least(gaps),
    greatest: gaps.reduce((one, other) => (other.gap > one.gap ? other : one)),
    nearest: near.reduce((one, other) => (other.gap < one.gap ? other : one)),
    ...(filler ? { filler } : {}),
  };
}

/**
 * Gaps from a convex piece to a wall at every height where one of the two lines bends, from below; between these they
 * change evenly. Over all of the piece, or from one height to another.
 */
function gapsOver(
  face: WallFace,
  { solid: { vertices } }: Piece,
  range?: readonly [low: number, high: number],
): readonly GapAt[] {
  const corners = vertices.map(([, , z]) => z);
  const [low, high] = range ?? [Math.min(...corners), Math.max(...corners)];
  const bends = [...bendsOf(face), ...corners].filter((z) => z > low && z < high);
  const heights = [...new Set([low, ...bends, high])].sort((a, b) => a - b);
  return heights.flatMap((z): GapAt[] => {
    const reached = nearestAt(vertices, z, face.inward);
    return reached === undefined ? [] : [{ z, gap: face.inward * (reached - wallAt(face, z)) }];
  });
}

/** The station nearest to the wall that a convex piece reaches at a height. */
function nearestAt(
  vertices: Piece['solid']['vertices'],
  z: number,
  inward: WallFace['inward'],
): number | undefined {
  const xs: number[] = [];
  for (const [i, a] of vertices.entries()) {
    if (Math.abs(a[2] - z) < 1e-6) xs.push(a[0]);
    for (const b of vertices.slice(i + 1)) {
      if (a[2] > z === b[2] > z) continue;
      xs.push(a[0] + ((b[0] - a[0]) * (z - a[2])) / (b[2] - a[2]));
    }
  }
  if (xs.length === 0) return undefined;
  return inward === 1 ? Math.min(...xs) : Math.max(...xs);
}
