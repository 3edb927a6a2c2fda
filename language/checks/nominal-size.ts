import type { FlatStock, PostStock, Sourced, Stock } from '../model/index.ts';
import { dressedWidthOf } from '../standards/index.ts';
import { formatLength, type Ticks } from '../units/index.ts';
import type { JobCheck } from './define.ts';
import { replaceAt } from './written-change.ts';

/** Stock whose stated size is the name of a size, where the piece measures less. */
export const nominalSize: JobCheck = {
  kind: {
    code: 'nominal-size',
    severity: 'warning',
    stage: 'model',
    basis: {
      kind: 'published',
      source: 'American Softwood Lumber Standard PS 20',
      section: 'dressed dry sizes of boards, dimension lumber and timbers',
      confirmed: 'secondary',
    },
    message: (a) =>
      `${a.stock} is stated as ${a.stated} ${a.side}, which is what the board is called; dressed it measures ${a.actual}. ` +
      'Measure one and write that: every course adds up the difference.',
  },
  check: (job) =>
    job.stock.flatMap((stock) => {
      // What was measured is what it is.
      if (!isWood(stock) || ('measured' in stock && stock.measured)) return [];
      return sidesOf(stock).flatMap(([side, size]) => {
        const actual = dressedWidthOf(size.value);
        if (actual === undefined) return [];
        return [
          {
            code: 'nominal-size',
            at: size.origin,
            args: {
              stock: stock.name,
              side,
              stated: formatLength(size.value, job.measure.value),
              actual: formatLength(actual, job.measure.value),
            },
            fixes: [
              {
                title: `Write ${formatLength(actual, job.measure.value)}`,
                preferred: true,
                changes: [replaceAt(size.origin, formatLength(actual, job.measure.value))],
              },
            ],
          },
        ];
      });
    }),
};

/** A rip is sawn to the width stated, whatever its board is called. */
function sidesOf(stock: Stock): readonly (readonly [string, Sourced<Ticks>])[] {
  switch (stock.kind) {
    case 'post':
      return postSides(stock);
    case 'board':
    case 'rail':
      return boardSides(stock);
    case 'rip':
    case 'cleat':
    case 'channel':
      return [];
  }
}

const postSides = (post: PostStock) => [['along', post.along] as const, ['through', post.through] as const];
const boardSides = (board: FlatStock) => [['wide', board.width] as const];

/** Metal, composite and PVC come in the sizes they are called. */
function isWood(stock: Stock): boolean {
  return (stock.material?.kind.value ?? 'wood') === 'wood';
}
