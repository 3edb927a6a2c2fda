import type { Silhouette } from './project.ts';

/** A silhouette cut along a level line: what is above it, and what is below. */
export function splitAt(seen: Silhouette, level: number): { above?: Silhouette; below?: Silhouette } {
  if (seen.y1 <= level) return { above: seen };
  if (seen.y0 >= level) return { below: seen };
  if (!seen.outline) return { above: { ...seen, y1: level }, below: { ...seen, y0: level } };
  return { above: side(seen, level, true), below: side(seen, level, false) };
}

function side(seen: Silhouette, level: number, above: boolean): Silhouette {
  const points = seen.outline ?? [];
  const outline: number[] = [];
  for (let i = 0; i < points.length; i += 2) {
    const ax = points[i] as number;
    const ay = points[i + 1] as number;
    const bx = points[(i + 2) % points.length] as number;
    const by = points[(i + 3) % points.length] as number;
    if (above ? ay <= level : ay >= level) outline.push(ax, ay);
    if (ay !== level && by !== level && ay < level !== by < level) {
      outline.push(ax + ((bx - ax) * (level - ay)) / (by - ay), level);
    }
  }
  const xs = outline.filter((_, i) => i % 2 === 0);
  const ys = outline.filter((_, i) => i % 2 === 1);
  const [x0, x1] = [Math.min(...xs), Math.max(...xs)];
  return { ...seen, x0, x1, y0: Math.min(...ys), y1: Math.max(...ys), outline };
}
