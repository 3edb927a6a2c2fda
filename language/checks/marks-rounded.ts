import type { RunLayout } from '../layout/index.ts';
import { fineLength, formatLength, inches, mm, roundToStep, type Ticks } from '../units/index.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';

/** Edges of slats that no mark of the tape is near: each is marked from one zero, and still off by so much. */
export const marksRounded: LimitedRunCheck = {
  kind: {
    code: 'marks-rounded',
    severity: 'information',
    stage: 'layout',
    basis: commonPractice('the edges of slats are marked from one zero, within 1/32" (1 mm)'),
    threshold: {
      is: 'length',
      imperial: inches(1 / 32),
      metric: mm(1),
      says: 'how far a mark of the tape may be off the edge it stands for',
    },
    message: (a) =>
      `Rounded to ${a.step}, the marks of slats in ${a.run} are up to ${a.off} off; gaps side by side may differ by twice that. Measure to ${a.limit} or finer, or choose sizes that fall on marks.`,
  },
  check: (run, job) => {
    const limit = thresholdOf(job, marksRounded.kind);
    const { unit, step } = job.measure.value;
    // No mark is farther off than half a step.
    if (step <= 2 * limit) return [];
    const off = greatestRounding(run, step);
    if (off <= limit) return [];
    const fine = (ticks: Ticks) => formatLength(ticks, { unit, step: 1 });
    const args = {
      run: run.spec.name,
      step: fine(step),
      off: fineLength(off, job.measure.value),
      limit: fine(2 * limit),
    };
    return [{ code: 'marks-rounded', at: job.measure.origin, args }];
  },
};

/** Of all edges of courses, which are marked from the datum, or upright from station 0. */
export function greatestRounding({ courses, bays }: RunLayout, step: Ticks): Ticks {
  const edges = bays.flatMap(({ number }) =>
    (courses.get(number) ?? []).flatMap(({ start, end }) => [start, end]),
  );
  return edges.reduce((most, edge) => Math.max(most, Math.abs(edge - roundToStep(edge, step))), 0);
}
