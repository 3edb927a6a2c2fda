import type { Remedy } from '../../../model/index.ts';
import type { FitProblem } from '../index.ts';
import {
  asDrawn,
  changeTo,
  changeWidths,
  evenGaps,
  isBanded,
  moveEnds,
  ripLast,
  trim,
  usualBottoms,
  usualGaps,
} from './exhaustive-ways.ts';
import type { Found } from './one-by-one.ts';

function byRemedy(p: FitProblem, remedy: Remedy): Found[] {
  switch (remedy.kind) {
    case 'move-ends':
      return moveEnds(p);
    case 'gaps':
      return evenGaps(p, 'gaps', remedy.low, remedy.high);
    case 'short-repeat': {
      const stated = p.remedies.flatMap((each) => (each.kind === 'gaps' ? [each] : []))[0];
      return evenGaps(p, 'short-repeat', ...(stated ? ([stated.low, stated.high] as const) : usualGaps(p)));
    }
    case 'rip-last':
      return ripLast(p, remedy.least);
    case 'change-width':
      return changeTo(p, remedy.slat, remedy.width);
    case 'trim': {
      const board = remedy.board && { stock: remedy.board.name, width: remedy.board.width.value };
      return trim(p, remedy.edge, board);
    }
  }
}

/** What is built, by the rules read one after the other. */
export function chosenOf(p: FitProblem): Found | undefined {
  const drawn = asDrawn(p)[0];
  if (drawn) return drawn;
  const order = [...p.remedies];
  if (p.upright && order.length === 0) order.push({ kind: 'move-ends' });
  if (isBanded(p) && !order.some(({ kind }) => kind === 'move-ends')) order.unshift({ kind: 'move-ends' });
  for (const remedy of order) {
    const [best] = byRemedy(p, remedy).sort((a, b) => a.gapChange - b.gapChange || b.count - a.count);
    if (best) return best;
  }
  return undefined;
}

/** Every way at all: with the usual limits, and with those the text states. */
export function everyWay(p: FitProblem): Found[] {
  return [
    ...moveEnds(p),
    ...usualBottoms(p),
    ...evenGaps(p, 'gaps', ...usualGaps(p)),
    ...evenGaps(p, 'short-repeat', ...usualGaps(p)),
    ...ripLast(p),
    ...changeWidths(p),
    ...trim(p, 'bottom'),
    ...trim(p, 'top'),
    ...p.remedies.flatMap((remedy) => byRemedy(p, remedy)),
  ];
}
