import { bothFaces } from '../figures/index.ts';
import { JOB, type RunCheck } from './define.ts';

/** A run that is to be alike from both sides and is not. */
export const facesDiffer: RunCheck = {
  kind: {
    code: 'faces-differ',
    severity: 'warning',
    stage: 'layout',
    basis: JOB,
    message: (a) =>
      `The two sides of ${a.run} do not look alike, which this job asks for: they differ from ${a.piece} on. ` +
      'Put slats between posts or on both faces; upright ones in an order that reads the same from either end.',
  },
  check: (run, job) => {
    if (!job.alike) return [];
    const faces = bothFaces(run);
    if (faces.answer !== 'different') return [];
    const { infill } = run.spec.gates.find(({ name }) => name === faces.piece.gate) ?? run.spec;
    return [
      {
        code: 'faces-differ',
        at: infill.fill,
        args: { run: run.spec.name, piece: faces.piece.label },
        pieces: [faces.piece.key],
        related: [{ at: job.alike, note: 'it is asked for here' }],
      },
    ];
  },
};
