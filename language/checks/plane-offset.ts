import type { RunLayout } from '../layout/index.ts';
import { formatLength, inches, mm, type Ticks } from '../units/index.ts';
import { commonPractice, type LimitedLayoutCheck, thresholdOf } from './define.ts';
import type { Finding } from './finding.ts';
import { bayBeside, meetingsOf } from './joints.ts';

/** What is less is not seen. */
const SEEN = inches(1 / 16);

/** Slats of two runs that go straight on and whose faces are neither flush nor clearly stepped. */
export const planeOffset: LimitedLayoutCheck = {
  kind: {
    code: 'plane-offset',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('adjoining faces are flush within 1/16", or stepped by 1" or more'),
    threshold: {
      is: 'length',
      imperial: inches(1),
      metric: mm(25),
      says: 'offset of two faces from which on it looks like a step that is meant',
    },
    message: (a) =>
      `The ${a.face} of ${a.second} is ${a.offset} off that of ${a.first}: neither flush nor a clear step. ` +
      `Use slats and posts of one thickness, or set one run back by ${a.step} or more.`,
  },
  check: (layout, job) =>
    meetingsOf(layout).flatMap(({ first, second, turn }): Finding[] => {
      const start = second.joints.start;
      const [one, other] = [facesBeside(first, 'last'), facesBeside(second, 'first')];
      if (turn !== 0 || !start || !one || !other) return [];
      const { value } = second.spec.infill.mounting;
      const face = value.kind === 'face' ? value.face : 'front';
      const side = face === 'front' ? 0 : 1;
      const offset = Math.abs(one[side] - other[side] - start.corner.at[1]);
      if (offset <= SEEN || offset >= thresholdOf(job, planeOffset.kind)) return [];
      return [
        {
          code: 'plane-offset',
          at: second.spec.placement?.origin ?? second.spec.origin,
          args: {
            first: first.spec.name,
            second: second.spec.name,
            face,
            offset: formatLength(Math.round(offset), job.measure.value),
            step: formatLength(thresholdOf(job, planeOffset.kind), job.measure.value),
          },
        },
      ];
    }),
};

/** Front and back of the slats next to the shared post. */
function facesBeside(run: RunLayout, end: 'first' | 'last'): readonly [Ticks, Ticks] | undefined {
  const bay = bayBeside(run, end);
  const slats = run.pieces.filter((piece) => piece.role === 'slat' && piece.bay === bay);
  const y = slats.flatMap(({ solid }) => solid.vertices.map((vertex) => vertex[1]));
  return bay === undefined || y.length === 0 ? undefined : [Math.min(...y), Math.max(...y)];
}
