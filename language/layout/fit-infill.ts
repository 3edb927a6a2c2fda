import type { Band, InfillSpec, Origin } from '../model/index.ts';
import type { Measure, Ticks } from '../units/index.ts';
import {
  chosenFit,
  type FitProblem,
  type FitTarget,
  fitAlternate,
  fitPattern,
  layOut,
  layOutAlternate,
  type RepeatSlat,
  type TrimBoard,
} from './fit/index.ts';
import type { FitChoice, FitResult } from './layout.ts';
import { type Line, linesOf } from './lines.ts';

/** A place to fill with a pattern. */
export interface Place {
  readonly infill: InfillSpec;
  readonly gate?: string;
  readonly bays: readonly number[];
  /** In the direction the pattern reads, at the tallest where ends may move. */
  readonly space: Ticks;
  /** Level: height of the upper edge from the datum when no end is moved. Upright: station of the left edge. */
  readonly edge: Ticks;
  /** Level: where the ends may be, above ground. */
  readonly ends?: { readonly bottom: Band; readonly height: Band };
  readonly measure: Measure;
  readonly besideNominal: boolean;
  /** The block a text edit goes into, and its statements of the ends. */
  readonly block: Origin;
  /** Set where that block is not there yet: how it begins. */
  readonly opens?: string;
  readonly bottom?: Origin;
  readonly height?: Origin;
}

/** A place filled. */
export interface Filled {
  readonly result: FitResult;
  readonly lines: readonly Line[];
  /** Of the back, where slats lie on both faces; `lines` are those of the front then. */
  readonly back?: readonly Line[];
  /** Level: the ends as built, above ground. */
  readonly bottom: Ticks;
  readonly height: Ticks;
}

/** Fits the pattern to a place and says where every line of it is. */
export function fillPlace(place: Place): Filled {
  const problem = fitProblemOf(place);
  const { kind } = place.infill.mounting.value;
  const fit = kind === 'alternate' ? fitAlternate(problem) : fitPattern(problem);
  const height = fit.chosen?.height ?? place.ends?.height.high ?? 0;
  const bottom = fit.chosen?.bottom ?? place.ends?.bottom.low ?? 0;
  const { upright } = place.infill.flip;
  const lowered = upright || !place.ends ? 0 : place.ends.height.high - height;
  return {
    ...linesByFace(place, problem, fit.chosen, place.edge - lowered),
    bottom,
    height,
    result: {
      gate: place.gate,
      bays: place.bays,
      space: place.space,
      upright,
      chosen: fit.chosen,
      leftover: fit.leftover,
      nominalCount: fit.nominalCount,
      choices: fit.choices,
      origin: place.infill.fit.origin,
    },
  };
}

/** How the pattern closes in a place, if it does. */
export function chosenIn(place: Place): FitChoice | undefined {
  const problem = fitProblemOf(place);
  return place.infill.mounting.value.kind === 'alternate' ? fitAlternate(problem).chosen : chosenFit(problem);
}

function linesByFace(
  { infill }: Place,
  problem: FitProblem,
  chosen: FitChoice | undefined,
  edge: Ticks,
): Pick<Filled, 'lines' | 'back'> {
  const { kind } = infill.mounting.value;
  if (kind === 'alternate') {
    const { front, back } = layOutAlternate(problem, chosen);
    return { lines: linesOf(infill, front, edge, true), back: linesOf(infill, back, edge, true) };
  }
  const lines = linesOf(infill, layOut(problem, chosen), edge, chosen !== undefined);
  return kind === 'both' ? { lines, back: lines } : { lines };
}

function fitProblemOf(place: Place): FitProblem {
  const { pattern, fit, flip } = place.infill;
  return {
    repeat: pattern.repeat.map(({ value }): RepeatSlat => {
      const from = value.parent?.width.value ?? value.width.value;
      return { stock: value.name, width: value.width.value, from };
    }),
    gap: pattern.gap.value,
    edgeGap: pattern.edgeGap.value,
    edgeHalf: pattern.edgeHalf,
    end: pattern.end.value,
    remedies: fit.remedies.map(({ value }) => value),
    upright: flip.upright,
    space: place.space,
    ends: flip.upright ? undefined : place.ends,
    measure: place.measure,
    besideNominal: place.besideNominal,
    trimBoards: trimBoardsOf(place.infill),
    target: targetOf(place),
  };
}

/** What trim may be ripped from when none is named: the pattern's boards, and those its rips come from. */
function trimBoardsOf({ pattern }: InfillSpec): readonly TrimBoard[] {
  const boards = new Map<string, Ticks>();
  for (const { value } of pattern.repeat) {
    const board = value.parent ?? value;
    boards.set(board.name, board.width.value);
  }
  return [...boards].map(([stock, width]) => ({ stock, width }));
}

/** Where in the text a fit and its ends are stated anew. */
export function targetOf({
  infill,
  block,
  opens,
  bottom,
  height,
}: Pick<Place, 'infill' | 'block' | 'opens' | 'bottom' | 'height'>): FitTarget {
  const stated = (origin: Origin | undefined): string | undefined =>
    origin?.why === 'stated' && origin.uri === block.uri && origin.path.startsWith(`${block.path}/`)
      ? origin.path
      : undefined;
  return {
    uri: block.uri,
    block: block.path,
    ...(opens === undefined ? {} : { opens }),
    fit: stated(infill.fit.origin),
    bottom: stated(bottom),
    height: stated(height),
  };
}
