import { ceilToStep, floorToStep, type Ticks } from '../../units/index.ts';
import type { Restated } from '../layout.ts';
import type { Ask } from './asks.ts';
import type { Draft } from './draft.ts';
import { type FitProblem, hasBand } from './problem.ts';
import { trimBoardsOf } from './trim.ts';

/** A change of what the text states: another fit, or other ends. */
export interface Edit {
  readonly asks?: readonly Ask[];
  readonly bottom?: Ticks;
  readonly height?: Ticks;
}

/** Edits that may bring a choice about, the one with the roundest figures first. */
export function editsFor(problem: FitProblem, asks: readonly Ask[], draft: Draft): Edit[] {
  if (draft.kind === 'move-ends' && !problem.upright) return [movedEndsEdit(problem, draft)];
  const last: readonly Ask[] = hasBand(problem) ? [{ kind: 'move-ends' }] : [];
  return fitsFor(problem, asks, draft).map((fit) => ({ asks: [...fit, ...last] }));
}

function movedEndsEdit({ ends }: FitProblem, { bottom, height }: Draft): Edit {
  return {
    ...(bottom !== ends?.bottom.low ? { bottom } : {}),
    ...(height !== ends?.height.high ? { height } : {}),
  };
}

function fitsFor(problem: FitProblem, asks: readonly Ask[], draft: Draft): (readonly Ask[])[] {
  const { kind, slat = '', width = 0, edge = 'bottom' } = draft;
  switch (kind) {
    case 'move-ends':
      return [[{ kind }]];
    case 'gaps':
      return gapsAround(problem, draft).map((gaps) => [gaps]);
    case 'short-repeat':
      return [[{ kind }], ...gapsAround(problem, draft).map((gaps): Ask[] => [{ kind }, gaps])];
    case 'rip-last': {
      const stated = asks.filter((ask) => ask.kind === 'rip-last').map((ask) => [ask]);
      const least = floorToStep(width, problem.measure.step);
      return [[{ kind }], ...stated, [{ kind, least }], [{ kind, least: width }]];
    }
    case 'change-width':
      return [[{ kind, slat, width }]];
    case 'trim':
      return boardsNamed(problem, asks, slat).map((board) => [{ kind, board, edge }]);
    case 'as-drawn':
      return [];
  }
}

function gapsAround({ measure }: FitProblem, { gap }: Draft): Ask[] {
  const low = Math.floor(gap);
  const high = Math.ceil(gap);
  return [
    { kind: 'gaps', low: floorToStep(low, measure.step), high: ceilToStep(high, measure.step) },
    { kind: 'gaps', low, high },
  ];
}

function boardsNamed(problem: FitProblem, asks: readonly Ask[], stock: string) {
  const stated = asks.flatMap((ask) => (ask.kind === 'trim' && ask.board ? [ask.board] : []));
  return [...trimBoardsOf(problem), ...stated].filter((board) => board.stock === stock).slice(0, 1);
}

/** The same for those who lay the whole run out anew. */
export function restatedBy({ asks, bottom, height }: Edit): Restated {
  return {
    ...(asks ? { remedies: asks } : {}),
    ...(bottom === undefined ? {} : { bottom }),
    ...(height === undefined ? {} : { height }),
  };
}

/** The problem as it stands once the text is changed. */
export function edited(problem: FitProblem, { bottom, height }: Edit): FitProblem {
  const { ends } = problem;
  if (!ends || (bottom === undefined && height === undefined)) return problem;
  const at = (value: Ticks) => ({ low: value, high: value });
  const moved = {
    bottom: bottom === undefined ? ends.bottom : at(bottom),
    height: height === undefined ? ends.height : at(height),
  };
  const space = problem.space - (moved.bottom.low - ends.bottom.low) - (ends.height.high - moved.height.high);
  return { ...problem, ends: moved, space };
}
