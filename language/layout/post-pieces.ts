import type { RunSpec, Sourced } from '../model/index.ts';
import { ceilToStep, type Ticks } from '../units/index.ts';
import { centered } from './holds.ts';
import type { Range } from './infill.ts';
import { postLabel } from './labels.ts';
import { makeBoard } from './make-board.ts';
import type { Piece } from './piece.ts';
import type { PlacedPost } from './posts.ts';

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
export function postDepth({ infill, post }: RunSpec, { stock }: Pick<PlacedPost, 'stock'>): Range {
  const through = stock.through.value;
  const { value: mounting } = infill.mounting;
  if (mounting.kind === 'between' || infill.flip.upright) return centered(through);
  const own = centered(post.value.through.value);
  return mounting.face === 'front' ? [own[0], own[0] + through] : [own[1] - through, own[1]];
}

export function postPieces(spec: RunSpec, posts: readonly PlacedPost[], foot: Ticks, top: Ticks): Piece[] {
  return posts.map((post) =>
    makeBoard(
      {
        key: post.mark.key,
        label: postLabel(post.mark.number),
        role: 'post',
        run: spec.name,
        gate: post.mark.gate,
        side: 'middle',
        supports: [],
        from: [...post.from, spec.origin],
      },
      { name: post.stock.name },
      true,
      { x: [post.mark.from, post.mark.to], y: postDepth(spec, post), z: [foot, top] },
    ),
  );
}
