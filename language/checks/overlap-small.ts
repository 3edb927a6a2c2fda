import { faceOverlap, infillOf, seeThroughFrom } from '../figures/index.ts';
import type { RunLayout } from '../layout/index.ts';
import type { Job } from '../model/index.ts';
import { formatDegrees, formatLength, inches, mm } from '../units/index.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';
import type { Finding } from './finding.ts';
import { toldLeaves } from './told-leaves.ts';

/** Slats by turns on both faces that hardly reach past one another. */
export const overlapSmall: LimitedRunCheck = {
  kind: {
    code: 'overlap-small',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('slats by turns on both faces overlap by 3/4" (20 mm) or more'),
    threshold: {
      is: 'length',
      imperial: inches(0.75),
      metric: mm(20),
      says: 'least overlap of slats by turns on both faces',
    },
    message: (a) =>
      a.open === 1
        ? 'The slats of the two faces do not overlap: one sees straight through between them. Take a gap narrower than the slat.'
        : `The faces overlap by ${a.overlap}; less than ${a.least} opens as boards dry and move. ` +
          `One sees through from ${a.angle} off square. Take a narrower gap or a wider board.`,
  },
  check: (run, job) => [
    ...told(run, job, undefined),
    ...toldLeaves(run).flatMap(({ gate }) => told(run, job, gate)),
  ],
};

function told(run: RunLayout, job: Job, gate: string | undefined): readonly Finding[] {
  const infill = infillOf(run, gate);
  if (infill.mounting.value.kind !== 'alternate') return [];
  const found = faceOverlap(run.pieces.filter((piece) => piece.gate === gate));
  const least = thresholdOf(job, overlapSmall.kind);
  // A tick more or less is the rounding of a gap, not a smaller overlap.
  if (!found || found.overlap >= least - 1) return [];
  const { overlap, cavity, slats } = found;
  return [
    {
      code: 'overlap-small',
      at: infill.fill,
      args: {
        overlap: formatLength(Math.max(0, overlap), job.measure.value),
        least: formatLength(least, job.measure.value),
        angle: formatDegrees(seeThroughFrom(overlap, cavity)),
        open: overlap <= 0 ? 1 : 0,
      },
      pieces: slats,
    },
  ];
}
