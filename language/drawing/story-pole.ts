import { type Measure, roundToStep, type Ticks, toMm } from '../units/index.ts';
import { dimensionText } from './dimension-text.ts';
import { BEFORE_ALL, lineGroup } from './line-group.ts';
import type { Part } from './part.ts';
import { hundredth, linePath } from './path-text.ts';
import { MIDDLE } from './place-labels.ts';
import { textWidth } from './text-width.ts';
import type { Label } from './view.ts';

/** All in letters. */
const STROKE = 0.3;
const ASIDE = 0.8;
const APART = 1.2;

/**
 * A pole at `x` (sheet millimeters) marked with both edges of every slat, and their heights from the datum:
 * top edges in the first column, bottom edges in the second.
 */
export function storyPole(
  prefix: string,
  edges: readonly (readonly [bottom: Ticks, top: Ticks])[],
  x: number,
  measure: Measure,
  letter: number,
): Part {
  const sorted = [...edges].sort((a, b) => b[1] - a[1]);
  const [first, last] = [sorted[0], sorted.at(-1)];
  if (!first || !last) return { groups: [], labels: [], bounds: [x, 0, x, 0] };
  const text = (z: Ticks) => dimensionText(roundToStep(z, measure.step), measure);
  const wide = Math.max(...sorted.map(([, top]) => textWidth(text(top))), textWidth('top')) * letter;
  const columns = [x + ASIDE * letter, x + ASIDE * letter + wide + APART * letter] as const;
  const [head, foot] = [-toMm(first[1]), -toMm(last[0])];
  let path = linePath(x, head - 0.45 * letter, x, foot + 0.45 * letter);
  const common = { anchor: 'start', turn: 0, shift: [0, -MIDDLE] } as const;
  const labels: Label[] = [];
  for (const [index, [bottom, top]] of sorted.entries()) {
    for (const z of [bottom, top])
      path += linePath(x - STROKE * letter, -toMm(z), x + STROKE * letter, -toMm(z));
    // Room as far as the next mark of the same column.
    const next = sorted[index + 1] ?? sorted[index - 1];
    const room = next ? Math.abs(toMm(top - next[1])) : 0;
    for (const [column, z] of [top, bottom].entries()) {
      labels.push({
        ...common,
        key: `${prefix}/pole/${column === 0 ? 'top' : 'bottom'}-${index + 1}`,
        text: text(z),
        x: hundredth(columns[column] ?? x),
        y: hundredth(-toMm(z)),
        kind: 'dimension',
        priority: 40 + column,
        room: hundredth(room),
        roomFor: 'height',
      });
    }
  }
  for (const [column, name] of ['top', 'bottom'].entries())
    labels.push({
      ...common,
      key: `${prefix}/pole/${name}`,
      text: name,
      x: hundredth(columns[column] ?? x),
      y: hundredth(head - 1.6 * letter),
      kind: 'note',
      priority: 12,
      room: 0,
      roomFor: 'length',
    });
  return {
    groups: [lineGroup(`${prefix}/pole`, 'dimension', path, BEFORE_ALL)],
    labels,
    bounds: [x, head - 2.6 * letter, columns[1] + wide, foot],
  };
}
