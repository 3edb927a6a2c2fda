import { type Flat, type Frame, type Piece, toPlan } from '../layout/index.ts';
import { lowestGround, type SightTriangle } from '../model/index.ts';
import { formatLength, inches, mm } from '../units/index.ts';
import { commonPractice, type LimitedLayoutCheck, thresholdOf } from './define.ts';
import { ruleOf } from './rule-of.ts';

const ASK = 'Local rules decide: ask your local authority.';

/** Part of a run in the way of those who look across a corner of roads. */
export const inSightTriangle: LimitedLayoutCheck = {
  kind: {
    code: 'in-sight-triangle',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('nothing over 30 in in a sight triangle; towns set their own'),
    threshold: {
      is: 'length',
      imperial: inches(30),
      metric: mm(750),
      says: 'height allowed in a sight triangle',
    },
    message: (a) =>
      a.height === ''
        ? `Run ${a.run} has no place on the plan, so no one knows whether it stands in this triangle. Give it one with \`placed at\` or \`after\`.`
        : `Run ${a.run} stands in the sight triangle with ${a.count} pieces, up to ${a.height} high; ${a.limit} is the most there (${a.by}). Move it, or lower it there. ${ASK}`,
  },
  check: (layout, job) =>
    job.sightTriangles.flatMap((triangle) =>
      layout.runs.flatMap((run) => {
        const at = triangle.origin;
        const place = layout.places.get(run.key);
        const name = run.spec.name;
        if (!place) {
          const args = { run: name, height: '', count: 0, limit: '', by: '' };
          return [{ code: 'in-sight-triangle', at, args }];
        }
        const { kind } = inSightTriangle;
        const rule = ruleOf(job, 'in-sight-triangle');
        const limit = rule?.value ?? thresholdOf(job, kind);
        const above = ruleOf(job, 'sight-to')?.value ?? Infinity;
        const ground = lowestGround(run.groundLine, 0, run.spec.length.value);
        const inside = run.pieces.filter((piece) => {
          const [bottom, top] = heights(piece);
          return top - ground > limit && bottom - ground < above && standsIn(piece, place, triangle);
        });
        if (inside.length === 0) return [];
        const measure = job.measure.value;
        const height = Math.max(...inside.map((piece) => heights(piece)[1])) - ground;
        const args = {
          run: name,
          count: inside.length,
          height: formatLength(height, measure),
          limit: formatLength(limit, measure),
          by: rule?.from ?? 'common practice',
        };
        const related = [{ at: run.spec.origin, note: name }];
        const pieces = inside.map(({ key }) => key);
        return [{ code: 'in-sight-triangle', at, args, pieces, related }];
      }),
    ),
};

function heights({ solid }: Piece): readonly [number, number] {
  const levels = solid.vertices.map(([, , z]) => z);
  return [Math.min(...levels), Math.max(...levels)];
}

/** Whether a piece, seen from above as the rectangle round it in its run, has area in common with the triangle. */
function standsIn({ solid }: Piece, place: Frame, { corners }: SightTriangle): boolean {
  const xs = solid.vertices.map(([x]) => x);
  const ys = solid.vertices.map(([, y]) => y);
  const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const box = [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ].map(([x = 0, y = 0]) => toPlan(place, x, y));
  return !isParted(box, corners) && !isParted(corners, box);
}

/** Whether a side of the first has all of the second beyond it: then convex shapes share no area. */
function isParted(first: readonly Flat[], second: readonly Flat[]): boolean {
  return first.some((a, index) => {
    const b = first[(index + 1) % first.length] ?? a;
    const across = ([x, y]: Flat) => (b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0]);
    const inner = Math.max(...first.map(across)) > -Math.min(...first.map(across)) ? 1 : -1;
    return second.every((point) => inner * across(point) <= 0);
  });
}
