import type { GateSpec, Origin, RunSpec } from '../model/index.ts';
import type { Ticks } from '../units/index.ts';
import { braceStandsOn, makeBrace } from './brace.ts';
import { makeCable } from './cable.ts';
import { cutWithin, type Range } from './infill.ts';
import { braceLabel, cableLabel, railLabel, stileLabel } from './labels.ts';
import type { LeafRail, Pane, RailName } from './leaf-rails.ts';
import { makeBoard } from './make-board.ts';
import type { About } from './make-piece.ts';
import type { Groove, Piece } from './piece.ts';
import { grooveFor } from './pockets.ts';

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

/**
 * Outer frame of a leaf: two stiles as high as the leaf and rails between them. Where slats so thick end in grooves,
 * those are in its stiles between the rails, for upright slats all along its top and bottom rails.
 */
export function framePieces(frame: LeafFrame, thickest: Ticks): readonly Piece[] {
  const { gate, x, y, z, inside, spec } = frame;
  const { upright } = gate.infill.flip;
  const grooved = (at: Pick<Groove, 'side' | 'from' | 'to'>): { readonly grooves?: readonly Groove[] } => {
    const groove = grooveFor(gate.infill.mounting.value, thickest, y[0], at);
    return groove ? { grooves: [groove] } : {};
  };
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
    const own = {
      side: hand === 'left' ? 'end' : 'start',
      from: inside.z[0] - tall[0],
      to: inside.z[1] - tall[0],
    } as const;
    return makeBoard(about, { name, ...(upright ? {} : grooved(own)) }, true, { x: across, y, z: tall });
  });
  const rails = frame.rails.map(({ name: end, z: across }) => {
    const about: About = {
      ...aboutOf(frame, [gate.frame.origin, gate.frame.value.origin]),
      key: railKey(frame, end),
      label: railLabel(frame.label, end),
      role: 'rail',
      supports: [stileKey(frame, gate.hinges.value)],
    };
    const outer = end === 'top' || end === 'bottom';
    const own = { side: end === 'top' ? 'end' : 'start', from: 0 } as const;
    return makeBoard(about, { name, ...(upright && outer ? grooved(own) : {}) }, false, {
      x: wide,
      y,
      z: across,
    });
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

/** The cable of a pane, in place of a brace. */
export function cablePiece(frame: LeafFrame, y: Range, pane: Pane, number?: number): Piece | undefined {
  const { gate, spec } = frame;
  if (!gate.cable) return undefined;
  const hung = stileKey(frame, gate.hinges.value);
  const about: About = {
    ...aboutOf(frame, [gate.cable]),
    key: `${frame.key}/cable${number === undefined ? '' : `-${number}`}`,
    label: cableLabel(frame.label, number),
    role: 'cable',
    supports: [hung],
  };
  const inside = { x: frame.inside.x, z: pane.z };
  return makeCable(about, { inside, y, hinges: gate.hinges.value, step: spec.measure.step });
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
