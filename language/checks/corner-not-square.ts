import { formatDegrees } from '../units/index.ts';
import { commonPractice, type LayoutCheck } from './define.ts';
import type { Finding } from './finding.ts';
import { meetingsOf } from './joints.ts';

/** Runs that meet at another angle than the faces of their post make. */
export const cornerNotSquare: LayoutCheck = {
  kind: {
    code: 'corner-not-square',
    severity: 'information',
    stage: 'layout',
    basis: commonPractice(
      'slats and cleats bear on a flat face; a square post is beveled or packed to the real angle',
    ),
    message: (a) =>
      `The corner post stands square to ${a.first}; ${a.second} meets it at ${a.inside}, and there slats and cleats ` +
      `touch no more than its edge. Bevel the post, or rip packers, to ${a.bevel}.`,
  },
  check: (layout) =>
    meetingsOf(layout).flatMap(({ first, second, turn }): Finding[] => {
      const off = Math.abs(turn) % 90;
      const { placement } = second.spec;
      if (off === 0 || placement?.kind !== 'after') return [];
      return [
        {
          code: 'corner-not-square',
          at: placement.turn.origin,
          args: {
            first: first.spec.name,
            second: second.spec.name,
            inside: formatDegrees(180 - Math.abs(turn)),
            bevel: formatDegrees(Math.min(off, 90 - off)),
          },
        },
      ];
    }),
};
