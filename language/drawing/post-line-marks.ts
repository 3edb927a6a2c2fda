import { type LinePost, postLine } from '../figures/index.ts';
import type { Frame, RunLayout } from '../layout/index.ts';
import { isMetric } from '../model/index.ts';
import { formatLength, inches, type Measure, mm, roundToStep } from '../units/index.ts';
import { BEFORE_ALL, lineGroup } from './line-group.ts';
import type { Part } from './part.ts';
import { hundredth, linePath } from './path-text.ts';
import { type At, awayFrom, moved, planAxes } from './plan-axes.ts';
import { boundsAround } from './plan-run.ts';
import { besideDimensions } from './plan-sides.ts';
import { textWidth } from './text-width.ts';
import type { Label } from './view.ts';

/** Off the run, in letters: past the numbers of the posts. */
const OFF = 2.7;

/**
 * On the plan, where posts were measured off the line: the best straight line through them, and beside each post how
 * far it is off and what shim it takes. Undefined where none was measured.
 */
export function postLineMarks(
  run: RunLayout,
  frame: Frame,
  measure: Measure,
  letter: number,
): Part | undefined {
  const line = postLine(run);
  if (!line) return undefined;
  const axes = planAxes(frame);
  const length = run.spec.length.value;
  const [from, to] = [axes.at(0, line.ends[0]), axes.at(length, line.ends[1])];
  const { side, edge } = besideDimensions(run, axes);
  const labels = line.posts.flatMap((post): Label[] => {
    const mark = run.posts[post.number - 1];
    const text = textOf(post, measure);
    if (!mark || text === '') return [];
    const [x, y] = moved(axes.at((mark.from + mark.to) / 2, edge), side, OFF * letter);
    return [
      {
        ...awayFrom(side),
        kind: 'note',
        key: `${run.key}/plan/post-line-${post.number}`,
        text,
        x: hundredth(x),
        y: hundredth(y),
        priority: 15,
        room: 0,
        roomFor: 'length',
      },
    ];
  });
  const reaches = labels.map(({ x, y, text }): At => moved([x, y], side, (textWidth(text) + 0.5) * letter));
  return {
    groups: [lineGroup(`${run.key}/plan/post-line`, 'swing', linePath(...from, ...to), BEFORE_ALL + 1)],
    labels,
    bounds: boundsAround([from, to, ...reaches]),
  };
}

/** "1/2" to front, shim 1/4"": what a rule shows, and nothing of what it does not. */
function textOf({ off, shims }: LinePost, measure: Measure): string {
  const rule: Measure = isMetric(measure)
    ? { unit: 'mm', step: mm(1) }
    : { unit: 'inches', step: inches(1 / 16) };
  const shown = (size: number) => {
    const marks = roundToStep(Math.round(size), rule.step);
    return marks > 0 ? formatLength(marks, rule) : undefined;
  };
  const faces = Object.entries(shims);
  const packed = faces.flatMap(([face, size]) => {
    const thick = shown(size);
    return thick === undefined ? [] : [`shim ${thick}${faces.length > 1 ? ` at ${face}` : ''}`];
  });
  const away = shown(Math.abs(off));
  const stands = away === undefined ? [] : [`${away} to ${off < 0 ? 'front' : 'back'}`];
  return [...stands, ...packed].join(', ');
}
