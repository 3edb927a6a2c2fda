import type { Piece, RunLayout } from '../layout/index.ts';
import { ceilToStep, type Ticks } from '../units/index.ts';

/**
 * Of a run's temporary pieces those that are cut: all, or where they go on from bay to bay, of each stock and length as many
 * as one bay takes at most, with the braces and stakes of both its posts. A strip serves only bays of its own width.
 */
export function neededAtOnce({ temporary, spec, bays, posts }: RunLayout, step: Ticks): readonly Piece[] {
  if (!spec.bracing?.again) return temporary.pieces;
  const size = ({ cut }: Piece) => `${cut.stock}\n${ceilToStep(cut.longPoint, step)}`;
  const ofPost = new Map<string, Piece[]>();
  const ofBay = new Map<number, Piece[]>();
  for (const piece of temporary.pieces) {
    const { bay } = piece;
    if (bay !== undefined) ofBay.set(bay, [...(ofBay.get(bay) ?? []), piece]);
    else {
      const post = piece.key.slice(0, piece.key.lastIndexOf('/'));
      ofPost.set(post, [...(ofPost.get(post) ?? []), piece]);
    }
  }
  const most = new Map<string, number>();
  for (const { number, from, to } of bays) {
    const beside = posts.filter((mark) => mark.to === from || mark.from === to);
    const own = [...(ofBay.get(number) ?? []), ...beside.flatMap(({ key }) => ofPost.get(key) ?? [])];
    const counts = new Map<string, number>();
    for (const piece of own) counts.set(size(piece), (counts.get(size(piece)) ?? 0) + 1);
    for (const [name, count] of counts) most.set(name, Math.max(count, most.get(name) ?? 0));
  }
  return temporary.pieces.filter((piece) => {
    const left = most.get(size(piece)) ?? 0;
    most.set(size(piece), left - 1);
    return left > 0;
  });
}

/** The run without what comes off again, for figures of the screen alone. */
export function screenAlone(run: RunLayout): RunLayout {
  return run.temporary.pieces.length === 0
    ? run
    : { ...run, temporary: { pieces: [], braced: [], blocked: [] } };
}
