import { corners, type Silhouette } from './project.ts';

/** What of an object's outline lies behind nearer things, which are all convex. */

/** Edges this close to the edge of what is in front of them still show. */
const MARGIN = 0.02;

/** What is left of a silhouette in more parts than this takes too long to follow: it is drawn. */
const MOST_PARTS = 1000;

/** Hidden stretches of one edge with less than this between them are drawn as one, in millimeters. */
const JOIN = 60;

/** Whether two silhouettes' boxes share an area. */
export function overlap(a: Silhouette, b: Silhouette): boolean {
  return a.x0 < b.x1 - MARGIN && b.x0 < a.x1 - MARGIN && a.y0 < b.y1 - MARGIN && b.y0 < a.y1 - MARGIN;
}

/**
 * Whether a silhouette is hidden whole. `front` is what lies before it; only things that fill their
 * box are counted as hiding, so the answer errs toward drawing what could be left out.
 */
export function isHidden(seen: Silhouette, front: readonly Silhouette[]): boolean {
  // Quick answers for most: one thing covers it all, or all before it together are not enough.
  let covered = 0;
  const area = (seen.x1 - seen.x0 - 2 * MARGIN) * (seen.y1 - seen.y0 - 2 * MARGIN);
  for (const cover of front) {
    if (cover.outline) continue;
    if (covers(cover, seen)) return true;
    covered += sharedArea(seen, cover);
  }
  if (covered < area) return false;
  let rest: [number, number, number, number][] = [
    [seen.x0 + MARGIN, seen.y0 + MARGIN, seen.x1 - MARGIN, seen.y1 - MARGIN],
  ];
  for (const cover of front) {
    if (cover.outline) continue;
    rest = rest.flatMap((part) => cutAway(part, cover));
    if (rest.length === 0) return true;
    if (rest.length > MOST_PARTS) return false;
  }
  return false;
}

function covers(cover: Silhouette, seen: Silhouette): boolean {
  return (
    cover.x0 <= seen.x0 + MARGIN &&
    cover.y0 <= seen.y0 + MARGIN &&
    cover.x1 >= seen.x1 - MARGIN &&
    cover.y1 >= seen.y1 - MARGIN
  );
}

function sharedArea(a: Silhouette, b: Silhouette): number {
  const width = Math.min(a.x1, b.x1) - Math.max(a.x0, b.x0);
  const height = Math.min(a.y1, b.y1) - Math.max(a.y0, b.y0);
  return width > 0 && height > 0 ? width * height : 0;
}

function cutAway(
  part: [number, number, number, number],
  cover: Silhouette,
): [number, number, number, number][] {
  const [x0, y0, x1, y1] = part;
  if (cover.x0 >= x1 || cover.x1 <= x0 || cover.y0 >= y1 || cover.y1 <= y0) return [part];
  const left: [number, number, number, number][] = [];
  if (cover.y0 > y0) left.push([x0, y0, x1, cover.y0]);
  if (cover.y1 < y1) left.push([x0, cover.y1, x1, y1]);
  const top = Math.max(y0, cover.y0);
  const low = Math.min(y1, cover.y1);
  if (cover.x0 > x0) left.push([x0, top, cover.x0, low]);
  if (cover.x1 < x1) left.push([cover.x1, top, x1, low]);
  return left;
}

/** The stretches of an outline that lie behind `front`, as lines [x, y, x, y]. */
export function hiddenEdges(
  seen: Silhouette,
  front: readonly Silhouette[],
): (readonly [number, number, number, number])[] {
  const points = corners(seen);
  const lines: (readonly [number, number, number, number])[] = [];
  for (let i = 0; i < points.length; i += 2) {
    const ax = points[i] as number;
    const ay = points[i + 1] as number;
    const bx = points[(i + 2) % points.length] as number;
    const by = points[(i + 3) % points.length] as number;
    const length = Math.hypot(bx - ax, by - ay);
    if (length < MARGIN) continue;
    const spans: [number, number][] = [];
    for (const cover of front) {
      const span = inside(ax, ay, bx, by, cover);
      if (span) spans.push(span);
    }
    for (const [from, to] of joined(spans, JOIN / length)) {
      lines.push([ax + (bx - ax) * from, ay + (by - ay) * from, ax + (bx - ax) * to, ay + (by - ay) * to]);
    }
  }
  return lines;
}

/** Share of the line a to b that lies within a convex silhouette, more than MARGIN from its edge. */
function inside(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  cover: Silhouette,
): [number, number] | undefined {
  const points = corners(cover);
  let from = 0;
  let to = 1;
  for (let i = 0; i < points.length; i += 2) {
    const px = points[i] as number;
    const py = points[i + 1] as number;
    const ex = (points[(i + 2) % points.length] as number) - px;
    const ey = (points[(i + 3) % points.length] as number) - py;
    const size = Math.hypot(ex, ey);
    if (size === 0) continue;
    // Distance inward from this edge, for corners that run clockwise on a sheet with y down.
    const start = (ex * (ay - py) - ey * (ax - px)) / size - MARGIN;
    const end = (ex * (by - py) - ey * (bx - px)) / size - MARGIN;
    if (start < 0 && end < 0) return undefined;
    if (start < 0) from = Math.max(from, start / (start - end));
    else if (end < 0) to = Math.min(to, start / (start - end));
    if (from >= to) return undefined;
  }
  return [from, to];
}

function joined(spans: [number, number][], gap: number): [number, number][] {
  spans.sort((a, b) => a[0] - b[0]);
  const result: [number, number][] = [];
  for (const span of spans) {
    const last = result[result.length - 1];
    if (last && span[0] <= last[1] + gap) last[1] = Math.max(last[1], span[1]);
    else result.push([span[0], span[1]]);
  }
  return result;
}
