import { BEHIND_ALL, lineGroup } from './line-group.ts';
import type { Part } from './part.ts';
import { linePath } from './path-text.ts';

/** All in letters: how far the line goes on past the run, and the strokes under it. */
const PAST = 1.9;
const STROKE = 0.75;
const APART = 0.42;
const CLUSTER = 4.6;

/** The ground line, with clusters of three slanting strokes under it. `y` is the ground's height on the sheet. */
export function ground(prefix: string, x0: number, x1: number, y: number, letter: number): Part {
  const from = x0 - PAST * letter;
  const to = x1 + PAST * letter;
  const low = y + STROKE * letter;
  const span = to - from - 2 * STROKE * letter;
  const clusters = Math.max(1, Math.min(2000, Math.round(span / (CLUSTER * letter))));
  let hatch = '';
  for (let i = 0; i < clusters; i++) {
    const middle = from + STROKE * letter + (span * (i + 0.5)) / clusters;
    for (const stroke of [-1, 0, 1]) {
      const x = middle + stroke * APART * letter;
      hatch += linePath(x + (STROKE / 2) * letter, y, x - (STROKE / 2) * letter, low);
    }
  }
  return {
    groups: [
      lineGroup(`${prefix}/ground`, 'ground', linePath(from, y, to, y), -BEHIND_ALL / 2),
      lineGroup(`${prefix}/ground-hatch`, 'hatch', hatch, BEHIND_ALL),
    ],
    labels: [],
    bounds: [from, y, to, low],
  };
}
