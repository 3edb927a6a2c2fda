import { facesOf, groundLine, highestGround, type Problem, type RunSpec } from '../model/index.ts';
import { formatLength } from '../units/index.ts';
import type { Range } from './infill.ts';
import { battenLabel, postLabel } from './labels.ts';
import { makeBoard } from './make-board.ts';
import { leaned } from './make-piece.ts';
import type { Piece } from './piece.ts';
import type { PlacedPost } from './posts.ts';
import { geometryProblem } from './problems.ts';
import { reachOf, shares, undersideOf } from './reach.ts';

/**
 * A batten over the slats at the middle of each post, on every face of the posts that has slats, from the lowest
 * of them to the highest. None at a corner, where slats of two runs meet, and none where no slat lies.
 */
export function coverPosts(
  spec: RunSpec,
  posts: readonly PlacedPost[],
  pieces: readonly Piece[],
): { readonly pieces: readonly Piece[]; readonly problems: readonly Problem[] } {
  const { battens } = spec;
  if (!battens) return { pieces: [], problems: [] };
  const { name, width, thickness, origin } = battens.value;
  const made: Piece[] = [];
  const onPost = slatsByHolder(pieces);
  for (const { mark, corner, lean } of posts) {
    if (corner) continue;
    const along = mark.to - mark.from;
    if (mark.gate !== undefined && width.value > along) {
      const shown = (ticks: number) => formatLength(ticks, spec.measure);
      const args = { batten: name, width: shown(width.value), post: mark.number, along: shown(along) };
      return { pieces: [], problems: [geometryProblem('batten-too-wide', battens.origin, args)] };
    }
    const from = mark.from + Math.floor((along - width.value) / 2);
    const x: Range = [from, from + width.value];
    for (const face of facesOf(spec.infill.mounting.value)) {
      const slats = (onPost.get(mark.key) ?? []).filter(
        (slat) => slat.side === face && shares(reachOf([slat], 0), x),
      );
      if (slats.length === 0) continue;
      const out = face === 'front' ? 0 : 1;
      const plane =
        face === 'front'
          ? Math.min(...slats.map((slat) => reachOf([slat], 1)[0]))
          : Math.max(...slats.map((slat) => reachOf([slat], 1)[1]));
      const plumb = makeBoard(
        {
          key: `${mark.key}/batten-${face}`,
          label: battenLabel(postLabel(mark.number), face),
          role: 'batten',
          run: spec.name,
          gate: mark.gate,
          side: face,
          supports: slats.filter((slat) => reachOf([slat], 1)[out] === plane).map(({ key }) => key),
          from: [battens.origin, origin, spec.origin],
        },
        { name },
        true,
        {
          x,
          y: face === 'front' ? [plane - thickness.value, plane] : [plane, plane + thickness.value],
          z: [footOf(spec, slats, x), reachOf(slats, 2)[1]],
        },
      );
      made.push(lean ? leaned(plumb, lean) : plumb);
    }
  }
  return { pieces: made, problems: [] };
}

/** Where a batten ends below: with its slats, and over a course that follows the ground as clear of that as the course. */
function footOf(spec: RunSpec, slats: readonly Piece[], x: Range): number {
  const low = Math.ceil(undersideOf(slats, x));
  if (slats.every(({ cut }) => !cut.taper)) return low;
  return Math.max(low, highestGround(groundLine(spec), ...x) + spec.bottom.value.low);
}

function slatsByHolder(pieces: readonly Piece[]): ReadonlyMap<string, readonly Piece[]> {
  const held = new Map<string, Piece[]>();
  for (const piece of pieces) {
    if ((piece.role !== 'slat' && piece.role !== 'trim') || piece.gate !== undefined) continue;
    for (const holder of piece.supports) {
      const own = held.get(holder);
      if (own) own.push(piece);
      else held.set(holder, [piece]);
    }
  }
  return held;
}
