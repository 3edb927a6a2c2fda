import { bottomEdge, heightAt, type RunLayout } from '../layout/index.ts';
import { levelAt } from '../model/index.ts';
import { type Measure, mm, roundToStep, toMm } from '../units/index.ts';
import { dimensionText } from './dimension-text.ts';
import { BEFORE_ALL, lineGroup } from './line-group.ts';
import type { Part } from './part.ts';
import { hundredth, linePath } from './path-text.ts';
import { MIDDLE } from './place-labels.ts';
import type { Label } from './view.ts';

/** In letters: from the end of the bay to the line, and half a stroke across it. */
const INSET = 0.6;
const STROKE = 0.22;
/** Height of the gap from which a text stands inside it; depth of a text below the ground otherwise. */
const ROOMY = 1.5;
const BELOW = 1.75;

/** About as far as a text reaches from its line, in ticks. */
const reachOf = (letter: number): number => mm(3.5 * letter);

/** Where the ground is not level: from the ground to the lowest edge, at both ends of each bay. */
export function clearanceMarks(run: RunLayout, measure: Measure, letter: number): Part {
  const level = run.groundLine.every(({ z }) => z === run.ground);
  const labels: Label[] = [];
  let path = '';
  for (const { key, number, from, to, clear } of level ? [] : run.bays) {
    const edge = bottomEdge(run, number);
    if (!edge) continue;
    for (const end of ['left', 'right'] as const) {
      const at = end === 'left' ? from : to;
      const inward = end === 'left' ? 1 : -1;
      const surface = levelAt(run.groundLine, at);
      const bottom = heightAt(edge, at);
      const clearance = bottom - surface;
      const x = toMm(at) + inward * INSET * letter;
      const [y0, y1] = [-toMm(bottom), -toMm(surface)];
      path += linePath(x, y0, x, y1);
      for (const y of [y0, y1]) path += linePath(x - STROKE * letter, y, x + STROKE * letter, y);
      // Between slats and ground where a text goes in between; else below the ground's hatching.
      const inside = y1 - y0 >= ROOMY * letter;
      const lowest = Math.max(y1, -toMm(levelAt(run.groundLine, Math.round(at + inward * reachOf(letter)))));
      labels.push({
        key: `${key}/clearance-${end}`,
        text: dimensionText(roundToStep(clearance, measure.step), measure),
        x: hundredth(x),
        y: hundredth(inside ? (y0 + y1) / 2 : lowest),
        anchor: end === 'left' ? 'start' : 'end',
        turn: 0,
        shift: [inward * (inside ? 0.5 : -0.2), inside ? -MIDDLE : -BELOW],
        kind: 'dimension',
        priority: 36,
        room: hundredth(toMm(clear) / 2 - INSET * letter),
        roomFor: 'length',
      });
    }
  }
  const groups = path === '' ? [] : [lineGroup(`${run.key}/clearances`, 'dimension', path, BEFORE_ALL)];
  return { groups, labels, bounds: [0, -toMm(run.ground), toMm(run.spec.length.value), -toMm(run.ground)] };
}
