import type { RunLayout } from '../layout/index.ts';
import { BEFORE_ALL, lineGroup } from './line-group.ts';
import type { Part } from './part.ts';
import { linePath } from './path-text.ts';
import { type At, fromAbove, type PlanAxes } from './plan-axes.ts';
import { project } from './project.ts';

/**
 * Outlines of caps and collars as thin lines over the posts they hide: what they stand out past the post is what
 * counts at a property line. They are drawn, not filled, so that posts stay to be seen and picked.
 */
export function planDressing(
  run: RunLayout,
  axes: PlanAxes,
): Pick<Part, 'groups'> & { readonly points: readonly At[] } {
  const projection = fromAbove(axes);
  const points: At[] = [];
  let path = '';
  const drawn = new Set<string>();
  for (const { role, solid } of run.pieces) {
    if (role !== 'cap' && role !== 'collar') continue;
    const { x0, y0, x1, y1, outline = [x0, y0, x1, y0, x1, y1, x0, y1] } = project(solid, projection);
    const corners: At[] = [];
    for (let at = 0; at < outline.length; at += 2) corners.push([outline[at] ?? 0, outline[at + 1] ?? 0]);
    const lines = corners
      .map(([x, y], index) => {
        const [toX, toY] = corners[(index + 1) % corners.length] ?? [x, y];
        return linePath(x, y, toX, toY);
      })
      .join('');
    // Collars at the bottom and at the top of a post lie over one another.
    if (drawn.has(lines)) continue;
    drawn.add(lines);
    path += lines;
    points.push(...corners);
  }
  if (path === '') return { groups: [], points };
  return { groups: [lineGroup(`${run.key}/plan/dressing`, 'dimension', path, BEFORE_ALL + 2)], points };
}
