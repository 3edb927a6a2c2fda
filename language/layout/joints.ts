import {
  type CornerKind,
  facesOf,
  type Origin,
  type PostStock,
  type RunSpec,
  standsBetween,
} from '../model/index.ts';
import type { Ticks } from '../units/index.ts';
import { facePlane } from './bay-panel.ts';
import type { BridgedEnd, BridgeJoint } from './bridge-joint.ts';
import {
  axesOf,
  type Corner,
  type CornerTrouble,
  cornerOf,
  cornerTrouble,
  isTooSharp,
  levelFace,
  type SlatEnd,
} from './corner.ts';
import type { Range } from './infill.ts';
import type { RunLayout } from './layout.ts';
import { thickestSlat } from './lines.ts';
import type { GivenLines } from './lines-as.ts';
import { makePiece } from './make-piece.ts';
import { overlap } from './overlap.ts';

/** All that one run needs to know of its neighbors, and nothing that leaves it as it is. */
export interface Joints {
  /** At station 0: the post it shares with the run it comes after. */
  readonly start?: StartJoint;
  /** At its other end: how its slats meet those of the run that comes after it. */
  readonly end?: EndJoint;
  /** The slat lines of the run it goes on with. */
  readonly lines?: GivenLines;
  /** The run before it, the offset from which it closes. */
  readonly bridge?: BridgeJoint;
  /** How the run after it closes the offset from this one. */
  readonly bridged?: BridgedEnd;
}

export interface StartJoint {
  readonly after: string;
  readonly trouble?: CornerTrouble;
  readonly turn: number;
  readonly post: SharedPost;
  readonly corner: Corner;
}

/** A post of another run: as stated there, and where it is in that run's frame. */
export interface SharedPost {
  readonly run: string;
  readonly key: string;
  readonly label: string;
  readonly stock: PostStock;
  readonly x: Range;
  readonly y: Range;
  readonly z: Range;
  readonly from: readonly Origin[];
}

export interface EndJoint {
  readonly turn: number;
  readonly kind: CornerKind;
  /** Thickest slat of the run that comes after, where it lies on a face of the shared post. */
  readonly thick?: Ticks;
}

/** What `first` needs of the run that comes after it. */
export function endJoint(first: RunSpec, second: RunSpec): EndJoint | undefined {
  if (second.placement?.kind !== 'after' || cornerTrouble(first, second)) return undefined;
  const { turn, corner } = second.placement;
  return {
    turn: turn.value,
    kind: corner.value,
    ...(levelFace(second.infill) ? { thick: thickestSlat(second.infill) } : {}),
  };
}

/** What `second` needs of the run it comes after, which is laid out. */
export function startJoint(first: RunLayout, second: RunSpec): StartJoint | undefined {
  const { placement } = second;
  const post = sharedPost(first);
  if (placement?.kind !== 'after' || !post) return undefined;
  const face = levelFace(second.infill);
  const corner = cornerOf({
    kind: placement.corner.value,
    turn: placement.turn.value,
    post,
    ...(levelFace(first.spec.infill) ? { first: thickestSlat(first.spec.infill) } : {}),
    ...(face ? { second: thickestSlat(second.infill) } : {}),
    ...(face === 'front' || face === 'back' ? { face } : {}),
    plane: face === 'front' || face === 'back' ? facePlane(second, face) : 0,
  });
  const trouble =
    cornerTrouble(first.spec, second) ?? (isSharp(first, second, post, corner) ? 'sharp' : undefined);
  return {
    after: placement.run,
    ...(trouble ? { trouble } : {}),
    turn: placement.turn.value,
    post,
    corner,
  };
}

/** How slats of a run end at its last post, given what comes after. */
export function lastSlatEnd(
  spec: RunSpec,
  { turn, kind, thick }: EndJoint,
  post: { readonly x: Range; readonly y: Range },
): SlatEnd | undefined {
  const face = levelFace(spec.infill);
  if (face !== 'front' && face !== 'back') return undefined;
  const first = thickestSlat(spec.infill);
  return cornerOf({ kind, turn, post, first, second: thick, face, plane: 0 }).ends.first;
}

/** Whether what stands beside the shared post, or the first run's other posts, are in the second run's way. */
function isSharp(first: RunLayout, second: RunSpec, post: SharedPost, corner: Corner): boolean {
  if (second.placement?.kind !== 'after' || Math.abs(second.placement.turn.value) <= 90) return false;
  const turn = second.placement.turn.value;
  const half = halfDepth(second);
  const a = { begins: (post.x[1] - post.x[0]) / 2, half: halfDepth(first.spec) };
  if (isTooSharp(turn, a, { begins: corner.along / 2, half })) return true;
  const { along, back } = axesOf(turn);
  const begins = corner.along;
  const away = makePiece(
    { key: '', label: '', role: 'slat', run: second.name, side: 'middle', supports: [], from: [] },
    {
      stock: '',
      ripped: false,
      origin: [
        corner.at[0] + begins * along[0] - half * back[0],
        corner.at[1] + begins * along[1] - half * back[1],
        -TALL,
      ],
      grain: [...along, 0],
      across: [0, 0, 1],
      through: [...back, 0],
      width: 2 * TALL,
      thickness: 2 * half,
      ends: [{ at: 0 }, { at: Math.max(1, second.length.value - begins) }],
    },
  );
  return first.pieces.some(
    ({ role, key, solid }) => role === 'post' && key !== post.key && overlap(solid, away.solid),
  );
}

/** Higher and deeper than any post. */
const TALL = 1e9;

/** How far from the middle of the run reaches what stands between its posts. */
function halfDepth(spec: RunSpec): Ticks {
  const { infill, rail } = spec;
  const slat = thickestSlat(infill);
  const { value: mounting } = infill.mounting;
  const between = standsBetween(mounting);
  const channel = mounting.kind === 'channels' ? mounting.channel.value.thickness.value / 2 : 0;
  const cleat = mounting.kind === 'between' ? (infill.cleat?.value.thickness.value ?? 0) : 0;
  const held = Math.max(slat / 2 + cleat, channel);
  if (!infill.flip.upright) return facesOf(mounting).length === 0 ? held : 0;
  const rails = (rail?.value.thickness.value ?? 0) / 2;
  return between ? Math.max(rails, held) : rails + slat;
}

/** The last post of a run that is laid out. */
export function sharedPost({ posts, pieces, spec }: RunLayout): SharedPost | undefined {
  const mark = posts.at(-1);
  const piece = mark && pieces.find(({ key }) => key === mark.key);
  if (!piece) return undefined;
  const range = (axis: 0 | 1 | 2): Range => {
    const all = piece.solid.vertices.map((vertex) => vertex[axis]);
    return [Math.min(...all), Math.max(...all)];
  };
  const gates = spec.gates.flatMap(({ post, latchPost = post }) => [post.value, latchPost.value]);
  const stock = [spec.post.value, ...gates].find(({ name }) => name === piece.cut.stock) ?? spec.post.value;
  const { key, label, run, from } = piece;
  return { run, key, label, stock, x: [mark.from, mark.to], y: range(1), z: range(2), from };
}
