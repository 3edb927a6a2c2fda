import type { FlatStock, Origin, RunSpec, Sourced } from '../model/index.ts';
import { type Panel, panelPieces, type Range } from './infill.ts';
import { bridgeLabel } from './labels.ts';
import { type Line, lineSpan, thickestOf } from './lines.ts';
import { turned } from './make-piece.ts';
import { bridgeKey } from './names.ts';
import type { Piece } from './piece.ts';

/** What a return is made of: slats square to both runs, as long as `reach` says, from the one before on. */
export interface ReturnParts {
  readonly spec: RunSpec;
  readonly lines: readonly Line[];
  /** Where its middle line begins, in the frame of the run that follows, and which way it goes: 1 toward the back. */
  readonly at: readonly [x: number, y: number];
  readonly way: 1 | -1;
  readonly length: number;
  readonly posts: readonly [before: string, own: string];
  readonly from: readonly Origin[];
}

/** Between the faces of two posts that stand one behind the other, held by cleats. */
export function returnBetween(parts: ReturnParts, cleat: Sourced<FlatStock>): Piece[] {
  const { spec, lines, length, posts } = parts;
  const gap = spec.infill.endGap.value;
  return turnedPanel(parts, [gap, length - gap], {
    kind: 'between',
    front: 0 - Math.floor(thickestOf(lines) / 2),
    cleat,
    ends: [
      { name: 'left', at: 0, holder: posts[0] },
      { name: 'right', at: length, holder: posts[1] },
    ],
    span: lineSpan(lines),
  });
}

/** Between the sides of two posts that stand side by side, from the outer face of one to that of the other. */
export function returnBeside(parts: ReturnParts, sides: readonly [before: Range, own: Range]): Piece[] {
  const { lines, length, posts } = parts;
  const z = lineSpan(lines);
  return turnedPanel(parts, [0, length], {
    kind: 'face',
    face: 'back',
    plane: 0,
    holders: sides.map((x, at) => ({ key: posts[at] ?? '', x, z })),
  });
}

function turnedPanel(
  { spec, lines, at, way, from }: ReturnParts,
  reach: Range,
  hold: Panel['hold'],
): Piece[] {
  const panel: Panel = {
    run: spec.name,
    key: bridgeKey(spec.name, 'return'),
    label: bridgeLabel('return'),
    upright: false,
    lines,
    reach,
    flush: 'middle',
    step: spec.measure.step,
    hold,
    from,
  };
  return panelPieces(panel).map((piece) => ({
    ...turned(piece, at, way),
    ...(piece.role === 'cleat' ? {} : { side: 'middle' as const }),
  }));
}
