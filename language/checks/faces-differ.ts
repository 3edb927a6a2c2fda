import { type BothFaces, bothFaces, infillOf } from '../figures/index.ts';
import type { Piece, RunLayout } from '../layout/index.ts';
import type { GateSpec, RunSpec } from '../model/index.ts';
import { JOB, type RunCheck } from './define.ts';
import type { Fix } from './finding.ts';
import { appendTo } from './written-change.ts';

/** A run that is to be alike from both sides and is not. */
export const facesDiffer: RunCheck = {
  kind: {
    code: 'faces-differ',
    severity: 'warning',
    stage: 'layout',
    basis: JOB,
    message: (a) =>
      a.by === 'screws'
        ? `The two sides of ${a.run} look alike but for the screws, which show on one side alone, from ${a.piece} on; this job asks for the same on both. Write \`screws plugged\`, \`screws hidden\` or \`screws alternate\`, or put the slats in grooves.`
        : `The two sides of ${a.run} do not look alike, which this job asks for: they differ from ${a.piece} on. ` +
          'Put slats between posts or on both faces; upright ones in an order that reads the same from either end.',
  },
  check: (run, job) => {
    if (!job.alike) return [];
    const faces = bothFaces(run);
    if (faces.answer !== 'different') return [];
    const infill = infillOf(run, faces.piece.gate);
    return [
      {
        code: 'faces-differ',
        at: faces.by === 'screws' ? infill.mounting.origin : infill.fill,
        args: { run: run.spec.name, piece: faces.piece.label, by: faces.by },
        pieces: [faces.piece.key],
        related: [{ at: job.alike, note: 'it is asked for here' }],
        fixes: fixesOf(run, faces),
      },
    ];
  },
};

function blockOf(run: RunLayout, { gate }: Piece): RunSpec | GateSpec {
  return run.leaves.find((leaf) => leaf.gate === gate)?.spec ?? run.spec;
}

function fixesOf(run: RunLayout, faces: BothFaces): readonly Fix[] {
  if (faces.answer !== 'different' || faces.by !== 'screws') return [];
  const block = blockOf(run, faces.piece).origin;
  return [{ title: 'Write `screws plugged`', changes: [appendTo(block, 'screws plugged')] }];
}
