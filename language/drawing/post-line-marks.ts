import { type LinePost, postLine } from '../figures/index.ts';
import type { Frame, RunLayout } from '../layout/index.ts';
import { isMetric } from '../model/index.ts';
import { formatLength, inches, type Measure, mm } from '../units/index.ts';
import { BEFORE_ALL, lineGroup } from './line-group.ts';
import type { Part } from './part.ts';
import { hundredth, linePath } from './path-text.ts';
import { type At, awayFrom, moved, planAxes } from './plan-axes.ts';
import { besideDimensions, boundsAround } from './plan-run.ts';
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

/** "1/2" to front, shim 1/4"". */
function textOf({ off, shims }: LinePost, measure: Measure): string {
  const fine = (size: number) =>
    formatLength(Math.round(size), {
      unit: isMetric(measure) ? 'mm' : 'inches',
      step: isMetric(measure) ? mm(1) : inches(1 / 16),
    });
  const faces = Object.entries(shims);
  const packed = faces.flatMap(([face, size]) =>
    size < 1 ? [] : [`shim ${fine(size)}${faces.length > 1 ? ` at ${face}` : ''}`],
  );
  const stands = off === 0 ? [] : [`${fine(Math.abs(off))} to ${off < 0 ? 'front' : 'back'}`];
  return [...stands, ...packed].join(', ');
}
