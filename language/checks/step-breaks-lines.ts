import type { Course } from '../layout/index.ts';
import { formatLength, inches, mm, type Ticks } from '../units/index.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';

/** Neighboring bays at a step whose slat edges do not meet. */
export const stepBreaksLines: LimitedRunCheck = {
  kind: {
    code: 'step-breaks-lines',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('slat edges go on within 1/16" (2 mm) from bay to bay'),
    threshold: {
      is: 'length',
      imperial: inches(1 / 16),
      metric: mm(2),
      says: 'how far lines may miss one another at a step',
    },
    message: (a) =>
      `From bay ${a.left} to bay ${a.right} an edge of a slat misses the next by ${a.residual}. ` +
      'Close the pattern without a ripped slat or trim, or keep a level top.',
  },
  check: (run, job) => {
    const { spec } = run;
    if (!spec.levels || spec.slope?.value !== 'in-steps' || spec.infill.flip.upright) return [];
    const measure = job.measure.value;
    const seen = thresholdOf(job, stepBreaksLines.kind);
    let worst: { left: number; right: number; residual: Ticks } | undefined;
    for (const [index, left] of run.bays.entries()) {
      const right = run.bays[index + 1];
      if (!right || left.gate !== undefined || right.gate !== undefined) continue;
      const sides = [left, right].map(({ number }) => run.courses.get(number) ?? []);
      const residual = missedBy(sides[0] ?? [], sides[1] ?? []);
      if (residual > seen && residual > (worst?.residual ?? 0))
        worst = { left: left.number, right: right.number, residual };
    }
    if (!worst) return [];
    const args = { left: worst.left, right: worst.right, residual: formatLength(worst.residual, measure) };
    return [{ code: 'step-breaks-lines', at: spec.slope.origin, args }];
  },
};

/** The most by which an edge of one, at a height that both reach, is off the nearest edge of the other. */
function missedBy(a: readonly Course[], b: readonly Course[]): Ticks {
  const low = Math.max(...[a, b].map((side) => side.at(-1)?.end ?? Infinity));
  const high = Math.min(...[a, b].map((side) => side[0]?.start ?? -Infinity));
  const edges = (side: readonly Course[]) => side.flatMap(({ start, end }) => [start, end]);
  const off = (side: readonly Course[], other: readonly Course[]) =>
    edges(side)
      .filter((edge) => edge >= low && edge <= high)
      .map((edge) => Math.min(...edges(other).map((one) => Math.abs(one - edge))));
  return Math.max(0, ...off(a, b), ...off(b, a));
}
