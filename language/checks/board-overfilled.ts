import type { Piece } from '../layout/index.ts';
import { LEAST_TRIM } from '../model/index.ts';
import { formatLength } from '../units/index.ts';
import { longestStock } from './board-too-long.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';
import type { Finding } from './finding.ts';

/** A piece so nearly as long as the longest board that the trim of its ends, stated or as usual, leaves too little. */
export const boardOverfilled: LimitedRunCheck = {
  kind: {
    code: 'board-overfilled',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('ends of boards are checked and out of square: 1/4" (6 mm) is cut off at least'),
    threshold: {
      is: 'length',
      ...LEAST_TRIM,
      says: 'least length left to trim the ends of a board, where the job states no trim',
    },
    message: (a) =>
      `${a.piece} takes ${a.length} of ${a.stock} that comes in ${a.longest} at most: ${a.left === 'none' ? 'nothing is' : `only ${a.left} is`} left to trim its ends${a.trim === '' ? '' : `, and the job trims ${a.trim}`}. Measure the boards, or state longer ones.`,
  },
  check: (run, job) => {
    const { trim } = job.saw;
    const least = trim ? trim.value : thresholdOf(job, boardOverfilled.kind);
    const length = (ticks: number) => formatLength(ticks, job.measure.value);
    return [...longestStock(run)].flatMap(([stock, longest]): Finding[] => {
      const tight = run.pieces.filter(
        ({ cut }) => cut.stock === stock.name && cut.longPoint <= longest && longest - cut.longPoint < least,
      );
      const worst = tight.reduce<Piece | undefined>(
        (held, piece) => (!held || piece.cut.longPoint > held.cut.longPoint ? piece : held),
        undefined,
      );
      if (!worst) return [];
      const left = longest - worst.cut.longPoint;
      return [
        {
          code: 'board-overfilled',
          at: worst.from[0] ?? run.spec.origin,
          args: {
            piece: worst.label,
            length: length(worst.cut.longPoint),
            stock: stock.name,
            longest: length(longest),
            left: left === 0 ? 'none' : length(left),
            trim: trim ? length(trim.value) : '',
          },
          pieces: tight.map(({ key }) => key),
        },
      ];
    });
  },
};
