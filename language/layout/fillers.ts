import type { RunSpec } from '../model/index.ts';
import { ceilToStep } from '../units/index.ts';
import { reachAt } from './bay-edges.ts';
import { centered } from './holds.ts';
import { fillerLabel, postLabel } from './labels.ts';
import type { RunLayout, WallFace } from './layout.ts';
import { makePiece } from './make-piece.ts';
import type { Piece } from './piece.ts';
import { postDepth } from './post-pieces.ts';
import type { PlacedBay, PlacedPost } from './posts.ts';
import { type WallPlace, wallBetween } from './walls.ts';

/**
 * The board between each end post and its wall, from the bottom to the top of what fills the bay beside it: one edge
 * on the post, the other cut to the wall. In the middle of the post's depth. None where the wall is at the post or
 * in it somewhere, of which checks tell.
 */
export function fillersOf(
  spec: RunSpec,
  walls: readonly WallFace[],
  posts: readonly PlacedPost[],
  bays: readonly PlacedBay[],
  content: Pick<RunLayout, 'edges' | 'reach'>,
): readonly Piece[] {
  return walls.flatMap((face) => {
    const start = face.side === 'start';
    const [post, beside] = [posts.at(start ? 0 : -1), bays.at(start ? 0 : -1)];
    const bay = beside?.bay;
    const z = bay && reachAt(content, bay.number, start ? bay.from : bay.to);
    return post && z && z[0] < z[1] ? (fillerOf(spec, face, post, z) ?? []) : [];
  });
}

function fillerOf(
  spec: RunSpec,
  face: WallFace,
  post: PlacedPost,
  z: readonly [number, number],
): Piece | undefined {
  const { filler } = spec;
  if (!filler) return undefined;
  const { mark } = post;
  const edge = outerEdge(post, face.side, z);
  const scribe = scribeOf(face, edge, z);
  if (scribe.some(({ width }) => width < 1)) return undefined;
  const { name, thickness } = filler.stock.value;
  const depth = postDepth(spec, post);
  const [front, back] = centered(thickness.value).map((y) => y + Math.floor((depth[0] + depth[1]) / 2)) as [
    number,
    number,
  ];
  return makePiece(
    {
      key: `${mark.key}/filler-${face.side}`,
      label: fillerLabel(postLabel(mark.number), face.side),
      role: 'filler',
      run: spec.name,
      side: 'middle',
      supports: [mark.key],
      from: [filler.origin, face.spec.origin, filler.stock.value.origin, spec.origin],
    },
    {
      stock: name,
      ripped: true,
      origin: [edge.foot[0], front, edge.foot[1]],
      grain: [edge.up[0], 0, edge.up[1]],
      across: [edge.out[0], 0, edge.out[1]],
      through: [0, 1, 0],
      // Of the blank, which is scribed after it is ripped.
      width: ceilToStep(Math.ceil(Math.max(...scribe.map(({ width }) => width)) - 1e-6), spec.measure.step),
      thickness: back - front,
      ends: [{ at: 0 }, { at: edge.length }],
      scribe,
    },
  );
}

/** The edge of an end post that looks at the wall, over the height of what fills the bay beside it. */
interface OuterEdge {
  readonly foot: WallPlace;
  readonly length: number;
  /** Unit vectors seen from the front: up along the post, and out to the wall. */
  readonly up: WallPlace;
  readonly out: WallPlace;
}

function outerEdge(
  { mark, lean }: PlacedPost,
  side: WallFace['side'],
  [low, high]: readonly [number, number],
): OuterEdge {
  const out = side === 'start' ? -1 : 1;
  const plumb = side === 'start' ? mark.from : mark.to;
  if (!lean?.slope) return { foot: [plumb, low], length: high - low, up: [0, 1], out: [out, 0] };
  const long = Math.hypot(1, lean.slope);
  const [cos, sin] = [1 / long, lean.slope / long];
  const half = (mark.to - mark.from) / 2;
  // A point of that face beside the post's pivot; the face goes up from it along the post.
  const at: WallPlace = [lean.pivot[0] + out * cos * half, lean.pivot[1] - out * sin * half];
  return {
    foot: [at[0] + lean.slope * (low - at[1]), low],
    length: (high - low) * long,
    up: [sin, cos],
    out: [out * cos, 0 - out * sin],
  };
}

/** Widths from the post's edge to the wall, square to that edge: at both ends, and at every bend of the wall. */
function scribeOf(
  face: WallFace,
  { foot, length, up, out }: OuterEdge,
  [low, high]: readonly [number, number],
): readonly { readonly at: number; readonly width: number }[] {
  // What is square to a post out of plumb meets the wall a little higher or lower.
  const beyond = up[0] === 0 ? 0 : high - low;
  const points = wallBetween(face, low - beyond, high + beyond).map(([x, z]) => {
    const [dx, dz] = [x - foot[0], z - foot[1]];
    return { at: dx * up[0] + dz * up[1], width: dx * out[0] + dz * out[1] };
  });
  const widthAt = (at: number): number => {
    const after = Math.max(
      1,
      points.findIndex((point) => point.at >= at),
    );
    const [a, b] = [points[after - 1], points[after]];
    if (!a || !b) return 0;
    return a.width + ((b.width - a.width) * (at - a.at)) / (b.at - a.at);
  };
  const between = points.filter(({ at }) => at > 1e-3 && at < length - 1e-3);
  return [{ at: 0, width: widthAt(0) }, ...between, { at: length, width: widthAt(length) }];
}
