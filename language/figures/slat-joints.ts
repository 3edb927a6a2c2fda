import type { Piece, RunLayout } from '../layout/index.ts';
import type { Ticks } from '../units/index.ts';

/** A level slat that ends on a post others go on from. */
export interface SlatJoint {
  readonly post: number;
  readonly slat: Piece;
  readonly bears: Ticks;
}

/** Level slats that end within the width of a post they lie on, and how far each reaches over it. */
export function slatJointsOf({ posts, pieces }: RunLayout): readonly SlatJoint[] {
  const byKey = new Map(posts.map((post) => [post.key, post]));
  return pieces.flatMap((slat): SlatJoint[] => {
    if (slat.role !== 'slat' || slat.gate !== undefined || slat.side === 'middle') return [];
    const along = slat.solid.vertices.map(([x]) => x);
    const [low, high] = [Math.min(...along), Math.max(...along)];
    return slat.supports.flatMap((key): SlatJoint[] => {
      const post = byKey.get(key);
      if (!post) return [];
      if (low > post.from && low < post.to) return [{ post: post.number, slat, bears: post.to - low }];
      if (high > post.from && high < post.to) return [{ post: post.number, slat, bears: high - post.from }];
      return [];
    });
  });
}
