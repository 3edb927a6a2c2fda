import type { Piece, RunLayout } from '../../language/layout/index.ts';
import type { Ticks } from '../../language/units/index.ts';

/** Figures of a run in a unit of the tape, and not in ticks. */
export interface InUnit {
  /** From face to face along the run. */
  readonly posts: readonly (readonly number[])[];
  readonly clears: readonly number[];
  piece(key: string): Piece;
  /** How far pieces of a role reach along an axis, in the order of the pieces. */
  reach(role: Piece['role'], axis: 0 | 1 | 2): readonly (readonly [low: number, high: number])[];
  /** Long point, short point and the angles both ends are sawn at, off square. */
  cut(key: string): { readonly long: number; readonly short: number; readonly saw: readonly number[] };
  /** How many pieces there are of each role. */
  readonly counts: Readonly<Record<string, number>>;
}

/** @param unit ticks of an inch, or of a millimeter */
export function inUnit(run: RunLayout, unit: Ticks): InUnit {
  const piece = (key: string): Piece => {
    const found = run.pieces.find((one) => one.key === key);
    if (!found) throw new Error(`no piece ${key}`);
    return found;
  };
  const counts: Record<string, number> = {};
  for (const { role } of run.pieces) counts[role] = (counts[role] ?? 0) + 1;
  return {
    posts: run.posts.map(({ from, to }) => [from / unit, to / unit]),
    clears: run.bays.map(({ clear }) => clear / unit),
    piece,
    reach: (role, axis) =>
      run.pieces
        .filter((one) => one.role === role)
        .map(({ solid }) => {
          const all = solid.vertices.map((vertex) => vertex[axis] / unit);
          return [Math.min(...all), Math.max(...all)];
        }),
    cut: (key) => {
      const { cut } = piece(key);
      const saw = cut.ends.map(({ miter, bevel }) => Math.abs(miter) + Math.abs(bevel));
      return { long: cut.longPoint / unit, short: cut.shortPoint / unit, saw };
    },
    counts,
  };
}

/** Spaces between neighbors of some ranges, from the first on. */
export function gapsOf(ranges: readonly (readonly [low: number, high: number])[]): readonly number[] {
  const sorted = ranges.toSorted((a, b) => a[0] - b[0]);
  return sorted.slice(1).map(([low], index) => low - (sorted[index]?.[1] ?? 0));
}
