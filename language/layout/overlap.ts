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
 * the run, or some of its height, by sweeping along whichever parts them better; still too much for every keystroke.
 */
export function findOverlaps({
  pieces,
  spec,
  leans,
}: Pick<RunLayout, 'pieces' | 'spec'> & Partial<Pick<RunLayout, 'leans'>>): readonly Problem[] {
  const placed = pieces.flatMap((piece) =>
    convexParts(piece.solid).map((part) => ({ piece, body: bodyOf(part) })),
  );
  const along = sweepAxis(placed.map(({ body }) => body));
  const sorted = placed.sort((a, b) => a.body.low[along] - b.body.low[along]);
  // A post that bends is drawn straight, and collars tilt with their post beside what is level.
  const slack = ({ key, role, supports, cut }: Piece): number => {
    const tilted = role === 'collar' ? leans?.get(supports[0] ?? '') : undefined;
    return tilted ? tilted.slack + Math.abs(tilted.slope) * cut.longPoint : (leans?.get(key)?.slack ?? 0);
  };
  const found: Problem[] = [];
  const told = new Set<string>();
  let open: { piece: Piece; body: Body }[] = [];
  for (const next of sorted) {
    open = open.filter(({ body }) => body.high[along] > next.body.low[along]);
    for (const other of open) {
      if (other.piece === next.piece) continue;
      const depth = depthOfOverlap(other.body, next.body) - OVERLAP_TOLERANCE;
      if (depth <= 0 || depth <= slack(other.piece) + slack(next.piece)) continue;
      // Of pieces in several parts, more than one may be in the other's place.
      const pair = [other.piece.key, next.piece.key].sort().join(' ');
      if (told.has(pair)) continue;
      told.add(pair);
      // Told as one meets them along the run, whichever way was swept.
      const [first, second] =
        next.body.low[0] < other.body.low[0] ? [next.piece, other.piece] : [other.piece, next.piece];
      const args = { first: first.label, second: second.label };
      const related = second.from.slice(0, 1).map((origin) => ({ origin, note: second.label }));
      found.push(geometryProblem('pieces-overlap', first.from[0] ?? spec.origin, args, related));
      if (found.length === MOST_TOLD) return found;
    }
    open.push(next);
  }
  return found;
}

/** The axis along which fewest bodies lie beside one another on the average: level slats are parted by their height. */
function sweepAxis(bodies: readonly Body[]): 0 | 2 {
  const beside = (axis: 0 | 2): number => {
    let [low, high, all] = [Infinity, -Infinity, 0];
    for (const body of bodies) {
      low = Math.min(low, body.low[axis]);
      high = Math.max(high, body.high[axis]);
      all += body.high[axis] - body.low[axis];
    }
    return all / Math.max(1, high - low);
  };
  return beside(2) < beside(0) ? 2 : 0;
}
