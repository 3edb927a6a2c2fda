import type { Problem } from '../model/index.ts';
import { type Body, bodyOf, convexParts, depthOfOverlap } from './convex.ts';
import type { RunLayout } from './layout.ts';
import type { Piece, Solid } from './piece.ts';
import { geometryProblem } from './problems.ts';

/**
 * Solids may be this deep in one another, in ticks, before they count as overlapping: what floats may lose.
 * 1/8 000 mm, far below any cut.
 */
export const OVERLAP_TOLERANCE = 1;

/** More overlaps than this of one run say nothing new. */
const MOST_TOLD = 20;

/** Whether two solids share any room. Touching is not overlapping. */
export function overlap(a: Solid, b: Solid): boolean {
  const others = convexParts(b).map(bodyOf);
  return convexParts(a)
    .map(bodyOf)
    .some((body) => others.some((other) => depthOfOverlap(body, other) > OVERLAP_TOLERANCE));
}

/**
 * Pieces of a run that are in one place, at most twenty pairs. Looks only at pieces that share some stretch of
 * the run, by sweeping along it; still too much for every keystroke.
 */
export function findOverlaps({
  pieces,
  spec,
  leans,
}: Pick<RunLayout, 'pieces' | 'spec'> & Partial<Pick<RunLayout, 'leans'>>): readonly Problem[] {
  const sorted = pieces
    .flatMap((piece) => convexParts(piece.solid).map((part) => ({ piece, body: bodyOf(part) })))
    .sort((a, b) => a.body.low[0] - b.body.low[0]);
  // A post that bends is drawn straight, and collars tilt with their post beside what is level.
  const slack = ({ key, role, supports, cut }: Piece): number => {
    const tilted = role === 'collar' ? leans?.get(supports[0] ?? '') : undefined;
    return tilted ? tilted.slack + Math.abs(tilted.slope) * cut.longPoint : (leans?.get(key)?.slack ?? 0);
  };
  const found: Problem[] = [];
  let open: { piece: Piece; body: Body }[] = [];
  for (const next of sorted) {
    open = open.filter(({ body }) => body.high[0] > next.body.low[0]);
    for (const other of open) {
      if (other.piece === next.piece) continue;
      if (depthOfOverlap(other.body, next.body) <= OVERLAP_TOLERANCE + slack(other.piece) + slack(next.piece))
        continue;
      const [first, second] = [other.piece, next.piece];
      const args = { first: first.label, second: second.label };
      const related = second.from.slice(0, 1).map((origin) => ({ origin, note: second.label }));
      found.push(geometryProblem('pieces-overlap', first.from[0] ?? spec.origin, args, related));
      if (found.length === MOST_TOLD) return found;
    }
    open.push(next);
  }
  return found;
}
