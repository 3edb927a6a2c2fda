import type { RunSpec, Sourced } from '../model/index.ts';
import { ceilToStep, type Ticks } from '../units/index.ts';
import { axesOf } from './corner.ts';
import { centered } from './holds.ts';
import type { Range } from './infill.ts';
import type { StartJoint } from './joints.ts';
import { postLabel } from './labels.ts';
import { makeBoard } from './make-board.ts';
import { makePiece } from './make-piece.ts';
import type { Piece, Vec3 } from './piece.ts';
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
export function postDepth(
  { infill, post }: RunSpec,
  { stock, corner }: Pick<PlacedPost, 'stock' | 'corner'>,
): Range {
  if (corner?.borrowed) return corner.borrowed.depth;
  const through = stock.through.value;
  const { value: mounting } = infill.mounting;
  if (mounting.kind !== 'face' || infill.flip.upright) return centered(through);
  const own = centered(post.value.through.value);
  return mounting.face === 'front' ? [own[0], own[0] + through] : [own[1] - through, own[1]];
}

export function postPieces(spec: RunSpec, posts: readonly PlacedPost[], foot: Ticks, top: Ticks): Piece[] {
  const own = posts.filter(({ corner }) => !corner?.borrowed);
  return own.map((post) =>
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

/** The post at station 0 that another run makes, as it stands in this one's frame. */
export function borrowedPost(spec: RunSpec, { post, corner, turn }: StartJoint): Piece {
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
