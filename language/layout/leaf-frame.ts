import type { GateSpec, Origin, RunSpec } from '../model/index.ts';
import { braceStandsOn, makeBrace } from './brace.ts';
import { cutWithin, type Range } from './infill.ts';
import { braceLabel, railLabel, stileLabel } from './labels.ts';
import type { LeafRail, Pane, RailName } from './leaf-rails.ts';
import { makeBoard } from './make-board.ts';
import type { About } from './make-piece.ts';
import type { Piece } from './piece.ts';

/** The frame of a leaf: where it is, and what it is called. */
export interface LeafFrame {
  readonly spec: RunSpec;
  readonly gate: GateSpec;
  readonly bay: number;
  readonly key: string;
  readonly label: string;
  /** Key of the post it hangs on. */
  readonly hungOn: string;
  /** Outer edges, and the edges of the inside. */
  readonly x: Range;
  readonly z: Range;
  readonly inside: { readonly x: Range; readonly z: Range };
  readonly y: Range;
  /** From the top down, and the spaces between them. */
  readonly rails: readonly LeafRail[];
  readonly panes: readonly Pane[];
}

/** Outer frame of a leaf: two stiles as high as the leaf and rails between them. */
export function framePieces(frame: LeafFrame): readonly Piece[] {
  const { gate, x, y, z, inside, spec } = frame;
  const { name } = gate.frame.value;
  const tall = cutWithin(z, spec.measure.step, 'start');
  const wide = cutWithin(inside.x, spec.measure.step, 'middle');
  const stiles = (['left', 'right'] as const).map((hand) => {
    const side = sideOf(gate, hand);
    const about: About = {
      ...aboutOf(frame, [gate.frame.origin, gate.frame.value.origin]),
      key: stileKey(frame, hand),
      label: stileLabel(frame.label, side),
      role: 'stile',
      supports: side === 'hinge' ? [frame.hungOn] : frame.rails.map((rail) => railKey(frame, rail.name)),
    };
    const across: Range = hand === 'left' ? [x[0], inside.x[0]] : [inside.x[1], x[1]];
    return makeBoard(about, { name }, true, { x: across, y, z: tall });
  });
  const rails = frame.rails.map(({ name: end, z: across }) => {
    const about: About = {
      ...aboutOf(frame, [gate.frame.origin, gate.frame.value.origin]),
      key: railKey(frame, end),
      label: railLabel(frame.label, end),
      role: 'rail',
      supports: [stileKey(frame, gate.hinges.value)],
    };
    return makeBoard(about, { name }, false, { x: wide, y, z: across });
  });
  return [...stiles, ...rails];
}

/** The brace of a pane, `y` through the screen. It must fit (see `braceFits`). `number` where there are several. */
export function bracePiece(frame: LeafFrame, y: Range, pane: Pane, number?: number): Piece | undefined {
  const { gate, spec } = frame;
  const inside = { x: frame.inside.x, z: pane.z };
  if (!gate.brace) return undefined;
  const stands = braceStandsOn({ inside });
  const supports =
    stands === 'rails'
      ? [railKey(frame, pane.below), railKey(frame, pane.above)]
      : [stileKey(frame, 'left'), stileKey(frame, 'right')];
  const about: About = {
    ...aboutOf(frame, [gate.brace.origin, gate.brace.value.origin]),
    key: `${frame.key}/brace${number === undefined ? '' : `-${number}`}`,
    label: braceLabel(frame.label, number),
    role: 'brace',
    supports,
  };
  return makeBrace(about, gate.brace.value.name, {
    inside,
    y,
    width: gate.brace.value.width.value,
    hinges: gate.hinges.value,
    step: spec.measure.step,
  });
}

function sideOf({ hinges }: GateSpec, hand: 'left' | 'right'): 'hinge' | 'latch' {
  return hinges.value === hand ? 'hinge' : 'latch';
}

export function stileKey({ key, gate }: Pick<LeafFrame, 'key' | 'gate'>, hand: 'left' | 'right'): string {
  return `${key}/stile-${sideOf(gate, hand)}`;
}

export function railKey({ key }: Pick<LeafFrame, 'key'>, end: RailName): string {
  return `${key}/rail-${end}`;
}

function aboutOf(
  { spec, gate, bay }: LeafFrame,
  from: readonly Origin[],
): Pick<About, 'run' | 'gate' | 'bay' | 'side' | 'from'> {
  return { run: spec.name, gate: gate.name, bay, side: 'middle', from: [...from, gate.origin] };
}
