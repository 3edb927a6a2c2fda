import type { Frame, RunLayout } from '../layout/index.ts';
import { BEHIND_ALL, lineGroup } from './line-group.ts';
import type { Part } from './part.ts';
import { hundredth, linePath } from './path-text.ts';
import { alongside, planAxes } from './plan-axes.ts';
import { boundsAround } from './plan-run.ts';
import type { Label } from './view.ts';

/** Past both ends of the run, in letters. */
const PAST = 3;

/** Property lines that lie along a run, on the plan. Undefined where the job states none. */
export function propertyMarks(run: RunLayout, frame: Frame, letter: number): Part | undefined {
  const lines = run.spec.propertyLines ?? [];
  if (lines.length === 0) return undefined;
  const axes = planAxes(frame);
  const length = run.spec.length.value;
  const ends = lines.map(({ y }) => {
    const [from, to] = [axes.at(0, y), axes.at(length, y)];
    const long = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
    const [dx, dy] = [0, 1].map((axis) => ((to[axis] ?? 0) - (from[axis] ?? 0)) / long) as [number, number];
    const past = PAST * letter;
    return [
      [from[0] - dx * past, from[1] - dy * past],
      [to[0] + dx * past, to[1] + dy * past],
    ] as const;
  });
  const path = ends.map(([from, to]) => linePath(...from, ...to)).join('');
  const labels = lines.map(({ y }, index): Label => {
    const [x, at] = axes.at(length / 4, y);
    return {
      room: 0,
      roomFor: 'length',
      ...alongside([axes.back[0] * Math.sign(y || 1), axes.back[1] * Math.sign(y || 1)]),
      kind: 'note',
      key: `${run.key}/plan/property-line-${index + 1}`,
      text: 'property line, as stated',
      x: hundredth(x),
      y: hundredth(at),
      priority: 14,
    };
  });
  return {
    groups: [lineGroup(`${run.key}/plan/property-lines`, 'swing', path, BEHIND_ALL - 1)],
    labels,
    bounds: boundsAround(ends.flat().map(([x, y]) => [x, y])),
  };
}
