import type { RunLayout } from '../layout/index.ts';
import { BEFORE_ALL, lineGroup } from './line-group.ts';
import type { Part } from './part.ts';
import { linePath } from './path-text.ts';
import { type At, fromAbove, type PlanAxes } from './plan-axes.ts';
import { corners, project } from './project.ts';

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
    const outline = corners(project(solid, projection));
    const ring: At[] = [];
    for (let at = 0; at < outline.length; at += 2) ring.push([outline[at] ?? 0, outline[at + 1] ?? 0]);
    const lines = ring
      .map(([x, y], index) => {
        const [toX, toY] = ring[(index + 1) % ring.length] ?? [x, y];
        return linePath(x, y, toX, toY);
      })
      .join('');
    // Collars at the bottom and at the top of a post lie over one another.
    if (drawn.has(lines)) continue;
    drawn.add(lines);
    path += lines;
    points.push(...ring);
  }
  if (path === '') return { groups: [], points };
  return { groups: [lineGroup(`${run.key}/plan/dressing`, 'dimension', path, BEFORE_ALL + 2)], points };
}
