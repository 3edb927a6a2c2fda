import type { Bridge, Problem, RunSpec } from '../model/index.ts';
import { formatLength } from '../units/index.ts';
import { reachAt } from './bay-edges.ts';
import { fillerBoard, fillerBoards } from './bridge-filler.ts';
import { type BridgeJoint, type BridgeTrouble, offsetOf } from './bridge-joint.ts';
import { panelLine, panelOf } from './bridge-panel.ts';
import { returnBeside, returnBetween } from './bridge-return.ts';
import type { Stand } from './follow-ground.ts';
import type { Range } from './infill.ts';
import type { Joints } from './joints.ts';
import type { RunLayout } from './layout.ts';
import type { Line } from './lines.ts';
import type { Piece } from './piece.ts';
import { borrowedPost, postDepth } from './post-pieces.ts';
import type { PlacedPost, PlacedPosts } from './posts.ts';
import { geometryProblem } from './problems.ts';
import { shares } from './reach.ts';
import { spellAfter } from './spell-after.ts';

/** What closes an offset, and the post of the run before that holds it. */
export interface Bridged {
  readonly pieces: readonly Piece[];
  readonly borrowed: readonly Piece[];
  readonly problems: readonly Problem[];
}

const NOT_BRIDGED: Bridged = { pieces: [], borrowed: [], problems: [] };

/**
 * Closes the offset from the run before as this run asks, beside its first post, or tells why that cannot be: slats
 * on the lines of its first bay that has any, boards over the height that both runs have slats.
 */
export function closeOffset(
  spec: RunSpec,
  { bridge: joint }: Joints,
  { posts, bays }: PlacedPosts,
  stands: ReadonlyMap<number, Stand>,
  edges: Pick<RunLayout, 'reach' | 'edges'>,
): Bridged {
  const { placement } = spec;
  const [post] = posts;
  if (!joint || !post || placement?.kind !== 'on' || !placement.bridge || !placement.step) return NOT_BRIDGED;
  const { bridge } = placement;
  const filled = bays.flatMap(({ bay }) => stands.get(bay.number)?.filled ?? [])[0];
  const beside = {
    post,
    reach: reachAt(edges, bays[0]?.bay.number ?? 0, post.mark.to) ?? [0, 0],
    // A course that follows the ground is ripped for its bay alone.
    lines: filled?.lines.filter(({ taper }) => !taper) ?? [],
  } as const;
  const pieces = joint.trouble ? [] : piecesOf(spec, bridge, joint, beside);
  const trouble: BridgeTrouble | undefined =
    joint.trouble ?? (pieces.length === 0 ? { why: 'heights' } : undefined);
  if (trouble) return { ...NOT_BRIDGED, problems: [problemOf(spec, bridge, joint, trouble)] };
  const { post: other, at } = joint;
  return { pieces, borrowed: [borrowedPost(spec, { post: other, corner: { at }, turn: 0 })], problems: [] };
}

/** What stands next to the offset in the run that follows. */
interface BesideOffset {
  readonly post: PlacedPost;
  /** Bottom and top of what fills its first bay, from the datum. */
  readonly reach: Range;
  readonly lines: readonly Line[];
}

function piecesOf(
  spec: RunSpec,
  bridge: Bridge,
  { post: other, at, inLine, reach, ground }: BridgeJoint,
  { post, reach: own, lines: all }: BesideOffset,
): Piece[] {
  const before: Range = [other.y[0] - at[1], other.y[1] - at[1]];
  const x: Range = [other.x[0] - at[0], other.x[1] - at[0]];
  const depth = postDepth(spec, post);
  const offset = offsetOf(before, depth, at[1]);
  const { way } = offset;
  const outer: Range = [Math.min(before[0], depth[0]), Math.max(before[1], depth[1])];
  const posts = [other.key, post.mark.key] as const;
  const from = [bridge.origin, spec.origin];
  if (bridge.kind === 'filler') {
    const z: Range = [Math.max(own[0], reach[0]), Math.min(own[1], reach[1])];
    if (z[1] - z[0] < spec.measure.step) return [];
    const boards = fillerBoards(offset, bridge.board.value.width.value, spec.measure.step) ?? [];
    return boards.map((y, index) =>
      fillerBoard(
        { spec, bridge, number: index + 1 },
        { x: x[1], y, z },
        posts.filter((_, side) => shares(y, side === 0 ? before : depth)),
      ),
    );
  }
  // Courses that both posts reach.
  const lines = all.filter(
    ({ low, high }) => low >= ground && high <= other.z[1] && low < reach[1] && high > reach[0],
  );
  if (lines.length === 0) return [];
  const { cleat } = spec.infill;
  if (bridge.kind === 'panel')
    return cleat ? panelOf(panelLine(offset, 0 - x[1]), { spec, cleat, lines, posts, from }) : [];
  if (inLine && cleat) {
    const common: Range = [Math.max(x[0], post.mark.from), Math.min(x[1], post.mark.to)];
    const middle = Math.floor((common[0] + common[1]) / 2);
    const start = way === 1 ? before[1] : before[0];
    return returnBetween({ spec, lines, at: [middle, start], way, length: offset.clear, posts, from }, cleat);
  }
  const length = outer[1] - outer[0];
  const start = way === 1 ? outer[0] : outer[1];
  const along = ([low, high]: Range): Range =>
    way === 1 ? [low - start, high - start] : [start - high, start - low];
  // Its back is at the left of one who walks it: on the side of the run before when that goes back.
  return returnBeside({ spec, lines, at: [way === 1 ? 0 : x[1], start], way, length, posts, from }, [
    along(before),
    along(depth),
  ]);
}

function problemOf(spec: RunSpec, bridge: Bridge, joint: BridgeJoint, trouble: BridgeTrouble): Problem {
  const shown = (ticks: number | undefined) => (ticks === undefined ? '' : formatLength(ticks, spec.measure));
  const { why, needs, room, on } = trouble;
  const stated = spec.placement?.kind === 'on' ? spec.placement : undefined;
  // Another space mends some, no bridge at all what the posts close themselves.
  const mended =
    stated &&
    (why === 'closed'
      ? { ...stated, bridge: undefined }
      : on !== undefined && { ...stated, gap: { value: on, origin: bridge.origin } });
  return geometryProblem('bridge-impossible', bridge.origin, {
    first: joint.after,
    second: spec.name,
    by: bridge.kind,
    board: bridge.kind === 'filler' ? bridge.board.value.name : '',
    why,
    needs: shown(needs),
    room: shown(room),
    write: mended ? spellAfter(mended, spec.measure) : '',
  });
}
