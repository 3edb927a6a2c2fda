import { cutOffAngle } from '../figures/index.ts';
import type { Opening } from '../layout/index.ts';
import { formatDegrees, formatLength, type Measure, spellLength, type Ticks } from '../units/index.ts';
import { JOB, type RunCheck } from './define.ts';
import { type Infill, infillsOf, openingSize } from './infills.ts';

/** A gap wider than the job's `gap at most`: one finding for a run's bays and one for each gate. */
export const gapTooWide: RunCheck = {
  kind: {
    code: 'gap-too-wide',
    severity: 'warning',
    stage: 'layout',
    basis: JOB,
    message: (a) =>
      `The widest gap is ${a.gap}; this job allows ${a.limit}. Straight on one sees through it; ` +
      `it closes to the eye from ${a.angle} off square. Narrow the gap, or allow more in the job.`,
  },
  check: (run, job) => {
    const limit = job.privacy.gap;
    if (!limit) return [];
    return infillsOf(run).flatMap((infill) => {
      const widest = widestOpening(infill);
      if (!widest) return [];
      const gap = openingSize(infill, widest);
      // Gaps that do not come out even are spread by single ticks, which no tape shows.
      if (gap <= limit.value + 1) return [];
      const pattern = infill.spec.pattern;
      return [
        {
          code: 'gap-too-wide',
          at: infill.spec.fill,
          args: {
            ...told(gap, limit.value, job.measure.value),
            angle: formatDegrees(cutOffAngle(gap, widest.depth)),
          },
          related: [
            { at: limit.origin, note: 'the limit stands here' },
            {
              at: widest.between ? pattern.gap.origin : pattern.edgeGap.origin,
              note: 'the gap is stated here',
            },
          ],
        },
      ];
    });
  },
};

function widestOpening(infill: Infill): Opening | undefined {
  let widest: Opening | undefined;
  for (const opening of infill.openings) {
    if (!widest || openingSize(infill, opening) > openingSize(infill, widest)) widest = opening;
  }
  return widest;
}

/** In the job's measure; to the last tick where the two would look alike in it. */
function told(gap: Ticks, limit: Ticks, measure: Measure): { gap: string; limit: string } {
  const seen = { gap: formatLength(gap, measure), limit: formatLength(limit, measure) };
  if (seen.gap !== seen.limit) return seen;
  return { gap: spellLength(gap, measure), limit: spellLength(limit, measure) };
}
