import { isMetric, type Job } from '../model/index.ts';
import { formatLength, inches, mm, type Ticks } from '../units/index.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';
import { toldLeaves } from './told-leaves.ts';

/** A gate leaf too wide to hang well as one. */
export const leafTooWide: LimitedRunCheck = {
  kind: {
    code: 'leaf-too-wide',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('a wooden leaf is no wider than 42"; some builders hang up to 60" and see it sag'),
    threshold: {
      is: 'length',
      imperial: inches(42),
      metric: mm(1070),
      says: 'widest wooden leaf',
    },
    message: (a) =>
      a.far === 'yes'
        ? `The leaf of ${a.gate} is ${a.width} wide; past ${a.most} no brace keeps a wooden leaf from sagging. Write \`leaves two\`, or hang it on a welded frame.`
        : `The leaf of ${a.gate} is ${a.width} wide; past ${a.limit} a wooden leaf sags on its hinges. ` +
          'Make the opening narrower, use `leaves two`, or hang it on a welded frame.',
  },
  check: (run, job) =>
    toldLeaves(run)
      .filter(
        (leaf) =>
          leaf.width > thresholdOf(job, leafTooWide.kind) &&
          isWood(leaf.spec.frame.value.material?.kind.value),
      )
      .map((leaf) => ({
        code: 'leaf-too-wide',
        at: leaf.spec.opening.origin,
        args: {
          gate: leaf.gate,
          width: formatLength(leaf.width, job.measure.value),
          far: leaf.width > mostOf(job) ? 'yes' : '',
          most: formatLength(mostOf(job), job.measure.value),
          limit: formatLength(thresholdOf(job, leafTooWide.kind), job.measure.value),
        },
        pieces: run.pieces.filter((piece) => piece.gate === leaf.gate).map((piece) => piece.key),
      })),
};

/** What no builder of wooden leaves goes past (common practice). */
const mostOf = (job: Job): Ticks => (isMetric(job.measure.value) ? mm(1525) : inches(60));

const isWood = (kind: string | undefined): boolean => kind === undefined || kind === 'wood';
