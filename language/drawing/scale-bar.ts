import {
  formatLength,
  type Measure,
  TICKS_PER_FOOT,
  TICKS_PER_INCH,
  TICKS_PER_MM,
  type Ticks,
} from '../units/index.ts';
import { dimensionText } from './dimension-text.ts';
import { BEFORE_ALL, lineGroup } from './line-group.ts';
import type { Part } from './part.ts';
import { linePath, rectPath } from './path-text.ts';

/** Lengths of one division, each a round number in its system. */
const IMPERIAL_DIVISIONS: readonly Ticks[] = [
  ...[1, 2, 3, 6].map((n) => n * TICKS_PER_INCH),
  ...[1, 2, 5, 10, 20, 50, 100, 200, 500].map((n) => n * TICKS_PER_FOOT),
];
const METRIC_DIVISIONS: readonly Ticks[] = [10, 20, 50, 100, 200, 500, 1e3, 2e3, 5e3, 1e4, 2e4, 5e4, 1e5].map(
  (n) => n * TICKS_PER_MM,
);

const DIVISIONS = 4;
/** In letters: the bar is about this long, and this high. */
const LENGTH = 13;
const HEIGHT = 0.32;

/** How long the whole bar is: four divisions of a round length. */
export function scaleBarLength(measure: Measure, letter: number): Ticks {
  const imperial = measure.unit === 'feet' || measure.unit === 'inches';
  const wanted = (LENGTH * letter * TICKS_PER_MM) / DIVISIONS;
  const choices = imperial ? IMPERIAL_DIVISIONS : METRIC_DIVISIONS;
  const off = (division: Ticks) => Math.abs(Math.log(division / wanted));
  return DIVISIONS * choices.reduce((best, one) => (off(one) < off(best) ? one : best));
}

/** A bar with its left end at `x`, its upper edge at `y`, texts above. */
export function scaleBar(prefix: string, x: number, y: number, measure: Measure, letter: number): Part {
  const total = scaleBarLength(measure, letter);
  const length = total / TICKS_PER_MM;
  const step = length / DIVISIONS;
  const high = HEIGHT * letter;
  const frame = rectPath(x, y, x + length, y + high);
  const dark = rectPath(x, y, x + step, y + high) + rectPath(x + 2 * step, y, x + 3 * step, y + high);
  const stops = [0, 1, 2, DIVISIONS];
  const strokes = stops.map((n) => linePath(x + n * step, y, x + n * step, y - 0.25 * letter)).join('');
  return {
    groups: [
      lineGroup(`${prefix}/scale-bar`, 'scale-bar', dark, BEFORE_ALL),
      lineGroup(`${prefix}/scale-frame`, 'dimension', frame + strokes, BEFORE_ALL),
    ],
    labels: stops.map((n) => ({
      key: `${prefix}/scale/${n}`,
      text:
        n === 0 ? '0' : (n === DIVISIONS ? formatLength : dimensionText)((total / DIVISIONS) * n, measure),
      x: Math.round((x + n * step) * 100) / 100,
      y: Math.round(y * 100) / 100,
      anchor: 'middle',
      turn: 0,
      shift: [0, 0.45],
      kind: 'note',
      priority: n === DIVISIONS ? 5 : n === 0 ? 6 : 20,
      room: 0,
      roomFor: 'length',
    })),
    bounds: [x, y - 1.5 * letter, x + length + 2 * letter, y + high],
  };
}
