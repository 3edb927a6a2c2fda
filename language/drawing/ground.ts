import { BEHIND_ALL, lineGroup } from './line-group.ts';
import type { Part } from './part.ts';
import { linePath } from './path-text.ts';

/** All in letters: how far the line goes on past the run, and the strokes under it. */
export const PAST_GROUND = 1.9;
const STROKE = 0.75;
const APART = 0.42;
const CLUSTER = 4.6;

/**
 * The ground line through points of the sheet from left to right, going on level past the first and last, with
 * clusters of three slanting strokes under it; `past` is how far it goes on at the left and at the right.
 */
export function ground(
  prefix: string,
  points: readonly (readonly [x: number, y: number])[],
  letter: number,
  past: readonly [left: number, right: number] = [PAST_GROUND * letter, PAST_GROUND * letter],
): Part {
  const [x0, y0] = points[0] ?? [0, 0];
  const [x1, y1] = points.at(-1) ?? [0, 0];
  const from = x0 - past[0];
  const to = x1 + past[1];
  const all: (readonly [number, number])[] = [[from, y0], ...points, [to, y1]];
  const level = points.every(([, y]) => y === y0);
  const span = to - from - 2 * STROKE * letter;
  const clusters = Math.max(1, Math.min(2000, Math.round(span / (CLUSTER * letter))));
  let hatch = '';
  for (let i = 0; i < clusters; i++) {
    const middle = from + STROKE * letter + (span * (i + 0.5)) / clusters;
    for (const stroke of [-1, 0, 1]) {
      const x = middle + stroke * APART * letter;
      const top = x + (STROKE / 2) * letter;
      const y = heightAt(all, top);
      hatch += linePath(top, y, x - (STROKE / 2) * letter, y + STROKE * letter);
    }
  }
  let path = '';
  if (level) path = linePath(from, y0, to, y0);
  else for (const [i, [x, y]] of all.entries()) if (i > 0) path += linePath(...(all[i - 1] ?? [x, y]), x, y);
  const ys = all.map(([, y]) => y);
  return {
    groups: [
      lineGroup(`${prefix}/ground`, 'ground', path, -BEHIND_ALL / 2),
      lineGroup(`${prefix}/ground-hatch`, 'hatch', hatch, BEHIND_ALL),
    ],
    labels: [],
    bounds: [from, Math.min(...ys), to, Math.max(...ys) + STROKE * letter],
  };
}

function heightAt(points: readonly (readonly [number, number])[], x: number): number {
  const after = points.findIndex((point) => point[0] >= x);
  const [right, left] = [points[after], points[after - 1]];
  if (!right) return points.at(-1)?.[1] ?? 0;
  if (!left) return right[1];
  return left[1] + ((right[1] - left[1]) * (x - left[0])) / (right[0] - left[0]);
}
