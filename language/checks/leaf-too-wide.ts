import { formatLength, inches } from '../units/index.ts';
import { commonPractice, type RunCheck } from './define.ts';

/** A wooden leaf wider than this sags sooner or later. */
const WIDEST_WOODEN_LEAF = inches(42);

/** A gate leaf too wide to hang well as one. */
export const leafTooWide: RunCheck = {
  kind: {
    code: 'leaf-too-wide',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('a wooden leaf is no wider than 42"; some builders hang up to 60" and see it sag'),
    message: (a) =>
      `The leaf of ${a.gate} is ${a.width} wide; past ${a.limit} a wooden leaf sags on its hinges. ` +
      'Make the opening narrower, use two leaves, or hang it on a welded frame.',
  },
  check: (run, job) =>
    run.leaves
      .filter((leaf) => leaf.width > WIDEST_WOODEN_LEAF && isWood(leaf.spec.frame.value.material?.kind.value))
      .map((leaf) => ({
        code: 'leaf-too-wide',
        at: leaf.spec.opening.origin,
        args: {
          gate: leaf.gate,
          width: formatLength(leaf.width, job.measure.value),
          limit: formatLength(WIDEST_WOODEN_LEAF, job.measure.value),
        },
        pieces: run.pieces.filter((piece) => piece.gate === leaf.gate).map((piece) => piece.key),
      })),
};

const isWood = (kind: string | undefined): boolean => kind === undefined || kind === 'wood';
