import { type SlatJoint, slatJointsOf } from '../figures/index.ts';
import { jointGapOf } from '../layout/index.ts';
import { floorToStep, formatLength, inches, mm, type Ticks } from '../units/index.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';
import { writeJointGap } from './write-joint-gap.ts';

/** Two slats that meet end to end on too little, or on nothing. */
export const jointUnsupported: LimitedRunCheck = {
  kind: {
    code: 'joint-unsupported',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('slats meet over a post, each with 3/4" (20 mm) or more on it'),
    threshold: {
      is: 'length',
      imperial: inches(0.75),
      metric: mm(20),
      says: 'least that each of two slats bears on where they meet',
    },
    message: (a) =>
      `Where slats meet over post ${a.post}, ${a.slat} bears on it by ${a.bears}; screws closer than ${a.least} to an end split it. ` +
      'Use posts that are wider along the run, or a smaller `joint gap`.',
  },
  check: (run, job) => {
    const least = thresholdOf(job, jointUnsupported.kind);
    const found = slatJointsOf(run).filter(({ bears }) => bears < least);
    const worst = found.reduce<SlatJoint | undefined>(
      (held, one) => (held && held.bears <= one.bears ? held : one),
      undefined,
    );
    if (!worst) return [];
    const room = floorToStep(jointGapOf(run.spec) - 2 * (least - worst.bears), run.spec.measure.step);
    const shown = (ticks: Ticks) => formatLength(ticks, job.measure.value);
    return [
      {
        code: 'joint-unsupported',
        at: run.spec.post.origin,
        args: { post: worst.post, slat: worst.slat.label, bears: shown(worst.bears), least: shown(least) },
        pieces: found.map(({ slat }) => slat.key),
        fixes: room > 0 ? [writeJointGap(run.spec, room)] : [],
      },
    ];
  },
};
