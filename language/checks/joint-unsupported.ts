import { jointGapOf, type Piece, type RunLayout } from '../layout/index.ts';
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

/** A level slat that ends on a post others go on from. */
export interface SlatJoint {
  readonly post: number;
  readonly slat: Piece;
  readonly bears: Ticks;
}

/** Level slats that end within the width of a post they lie on, and how far each reaches over it. */
export function slatJointsOf({ posts, pieces }: RunLayout): readonly SlatJoint[] {
  const byKey = new Map(posts.map((post) => [post.key, post]));
  return pieces.flatMap((slat): SlatJoint[] => {
    if (slat.role !== 'slat' || slat.gate !== undefined || slat.side === 'middle') return [];
    const along = slat.solid.vertices.map(([x]) => x);
    const [low, high] = [Math.min(...along), Math.max(...along)];
    return slat.supports.flatMap((key): SlatJoint[] => {
      const post = byKey.get(key);
      if (!post) return [];
      if (low > post.from && low < post.to) return [{ post: post.number, slat, bears: post.to - low }];
      if (high > post.from && high < post.to) return [{ post: post.number, slat, bears: high - post.from }];
      return [];
    });
  });
}
