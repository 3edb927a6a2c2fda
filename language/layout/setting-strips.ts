import { type BracingSpec, facesOf, type GroundPoint, highestGround, type RunSpec } from '../model/index.ts';
import type { Ticks } from '../units/index.ts';
import { facePlane, liesOnPosts } from './bay-panel.ts';
import { faceEnds } from './face-ends.ts';
import { centered } from './holds.ts';
import type { Range } from './infill.ts';
import { bayLabel, stripLabel } from './labels.ts';
import { makePiece } from './make-piece.ts';
import type { Piece } from './piece.ts';
import { postDepth, type StandingPost } from './post-pieces.ts';
import type { PlacedBay, PlacedPost } from './posts.ts';

/** Where something of the bracing does not go between ground and post tops. */
export interface Tight {
  readonly what: 'strips' | 'brace';
  /** The bay or the post, as it is labeled. */
  readonly at: string;
  readonly room: number;
  readonly needs: number;
}

/**
 * Two strips for each bay, level, so that they are as long as it is clear. Between the posts they are cut to that;
 * where slats lie on a face of the posts they lie there too, as long as a slat of that bay alone, and the faces of
 * both posts are marked on them.
 */
export function stripsOf(
  spec: RunSpec,
  bracing: BracingSpec,
  posts: readonly StandingPost[],
  bays: readonly PlacedBay[],
  line: readonly GroundPoint[],
): { readonly pieces: readonly Piece[]; readonly tight?: Tight } {
  const width = bracing.board.value.width.value;
  const tops = new Map(posts.map(({ post, z }) => [post.mark.key, z[1]]));
  const topOf = ({ mark }: PlacedPost) => tops.get(mark.key) ?? 0;
  const pieces: Piece[] = [];
  let tight: Tight | undefined;
  for (const placed of bays) {
    const { bay, left, right } = placed;
    const ground = highestGround(line, bay.from, bay.to);
    const room = Math.min(topOf(left), topOf(right)) - ground;
    const low = bracing.low.value;
    const high = bracing.high?.value ?? room - width;
    const needs = Math.max(low + 2 * width, high + width);
    if (needs > room || high < low + width) {
      tight ??= { what: 'strips', at: bayLabel(bay.number), room, needs: Math.max(needs, low + 2 * width) };
      continue;
    }
    for (const [end, up] of [
      ['top', high],
      ['bottom', low],
    ] as const)
      pieces.push(stripOf(spec, bracing, placed, end, ground + up));
  }
  return { pieces, ...(tight ? { tight } : {}) };
}

function stripOf(
  spec: RunSpec,
  { board, origin }: BracingSpec,
  placed: PlacedBay,
  end: 'top' | 'bottom',
  foot: Ticks,
): Piece {
  const { bay, left, right } = placed;
  const { name, width, thickness } = board.value;
  const { x, front, marks } = placeOf(spec, placed, thickness.value);
  return makePiece(
    {
      key: `${bay.key}/strip-${end}`,
      label: stripLabel(bayLabel(bay.number), end),
      role: 'strip',
      run: spec.name,
      bay: bay.number,
      ...(bay.gate === undefined ? {} : { gate: bay.gate }),
      side: marks ? (spec.infill.mounting.value.kind === 'face' ? faceOf(spec) : 'front') : 'middle',
      supports: [left.mark.key, right.mark.key],
      from: [origin, board.value.origin, spec.origin],
    },
    {
      stock: name,
      ripped: false,
      origin: [x[0], front, foot + width.value],
      grain: [1, 0, 0],
      across: [0, 0, -1],
      through: [0, 1, 0],
      width: width.value,
      thickness: thickness.value,
      ends: [{ at: 0 }, { at: x[1] - x[0] }],
      ...(marks ? { marks: marks.map((at) => at - x[0]) } : {}),
    },
  );
}

/** Where a strip is along the run and through it, and the stations that are marked on it. */
function placeOf(
  spec: RunSpec,
  placed: PlacedBay,
  thickness: Ticks,
): { readonly x: Range; readonly front: Ticks; readonly marks?: readonly Ticks[] } {
  const { bay, left, right, gate } = placed;
  if (gate || !liesOnPosts(spec)) {
    const split = spec.infill.mounting.value.kind === 'split';
    const front = split ? postDepth(spec, left)[0] : centered(thickness)[0];
    return { x: [bay.from, bay.to], front };
  }
  const { low, high } = faceEnds(spec, placed);
  const face = faceOf(spec);
  const plane = facePlane(spec, face);
  return {
    // No farther than the posts go, though slats at a corner may.
    x: [Math.max(low.at, left.mark.from), Math.min(high.at, right.mark.to)],
    front: face === 'front' ? plane - thickness : plane,
    marks: [bay.from, bay.to],
  };
}

/** The face whose slats the strips stand in for. */
export function faceOf({ infill }: Pick<RunSpec, 'infill'>): 'front' | 'back' {
  return facesOf(infill.mounting.value)[0] ?? 'front';
}
