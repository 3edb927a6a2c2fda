import type { Piece, Vec3 } from '../layout/index.ts';

/** How far a piece reaches in its run's frame. */
export interface Box {
  readonly low: Vec3;
  readonly high: Vec3;
}

/** The box around a piece. */
export function boxOf({ solid }: Pick<Piece, 'solid'>): Box {
  const axis = (pick: (...all: number[]) => number): Vec3 => {
    const at = (index: 0 | 1 | 2) => pick(...solid.vertices.map((vertex) => vertex[index]));
    return [at(0), at(1), at(2)];
  };
  return { low: axis(Math.min), high: axis(Math.max) };
}
