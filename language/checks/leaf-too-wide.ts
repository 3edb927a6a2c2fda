import { formatLength, inches, mm } from '../units/index.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';

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
      `The leaf of ${a.gate} is ${a.width} wide; past ${a.limit} a wooden leaf sags on its hinges. ` +
      'Make the opening narrower, use two leaves, or hang it on a welded frame.',
  },
  check: (run, job) =>
    run.leaves
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
          limit: formatLength(thresholdOf(job, leafTooWide.kind), job.measure.value),
        },
        pieces: run.pieces.filter((piece) => piece.gate === leaf.gate).map((piece) => piece.key),
      })),
};

const isWood = (kind: string | undefined): boolean => kind === undefined || kind === 'wood';
