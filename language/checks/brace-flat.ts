import type { Piece } from '../layout/index.ts';
import { degrees, formatDegrees } from '../units/index.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';
import type { Finding } from './finding.ts';
import { toldLeaves } from './told-leaves.ts';

/** A brace that rises so little that it pushes sideways rather than up. */
export const braceFlat: LimitedRunCheck = {
  kind: {
    code: 'brace-flat',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice(
      'a brace rises at 45 degrees or more from the low hinge corner, a cable falls so from the top one',
    ),
    threshold: { is: 'degrees', imperial: 45, metric: 45, says: 'least slope of a brace from level' },
    message: (a) =>
      (a.cable === 1
        ? `The cable of ${a.gate} falls at ${a.angle}; under ${a.least} it pulls inward more than up, and the leaf sags. `
        : `The brace of ${a.gate} rises at ${a.angle}; under ${a.least} it pushes outward more than up, and the leaf sags. `) +
      (Number(a.middle) > 0
        ? 'Ask for fewer rails, so that it has more height, or make the leaf narrower.'
        : 'Make the leaf narrower or higher, or hang it on a welded frame.'),
  },
  check: (run, job) =>
    toldLeaves(run).flatMap(({ gate, spec }): Finding[] => {
      const least = thresholdOf(job, braceFlat.kind);
      const own = run.pieces.filter((piece) => piece.gate === gate);
      const braces = own.filter(({ role }) => role === 'brace' || role === 'cable');
      const flattest = Math.min(...braces.map(slopeOf));
      if (braces.length === 0 || flattest >= least - CUT) return [];
      return [
        {
          code: 'brace-flat',
          at: spec.cable ?? (spec.brace?.origin.why === 'stated' ? spec.brace.origin : spec.origin),
          args: {
            gate,
            ...(spec.cable ? { cable: 1 } : {}),
            angle: formatDegrees(flattest),
            least: formatDegrees(least),
            middle: own.filter(({ role }) => role === 'rail').length - 2,
          },
          pieces: braces.map(({ key }) => key),
        },
      ];
    }),
};

/** A brace is cut down to a mark of the tape, which tells on its slope; nobody sees so little. */
const CUT = 0.05;

/** From corner to corner of the space a brace is cut into, in degrees from level. */
function slopeOf({ solid }: Piece): number {
  const extent = (axis: 0 | 2): number => {
    const all = solid.vertices.map((vertex) => vertex[axis]);
    return Math.max(...all) - Math.min(...all);
  };
  return degrees(Math.atan2(extent(2), extent(0)));
}
