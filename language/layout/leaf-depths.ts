import { facesOf, type GateSpec, type Origin, type Problem, type RunSpec } from '../model/index.ts';
import { formatLength, type Ticks } from '../units/index.ts';
import { facePlane } from './bay-panel.ts';
import { cableThickness } from './cable.ts';
import { centered } from './holds.ts';
import type { Range } from './infill.ts';
import { geometryProblem } from './problems.ts';

/** Where the layers of a leaf are through the screen. */
export interface LeafDepths {
  readonly frame: Range;
  /** Slats on a face: the frame's face they lie on. Slats between: the front of the slats. */
  readonly slats: Ticks;
  /** Of a brace or a cable; missing when there is none, or no room for it. */
  readonly brace?: Range;
  readonly problems: readonly Problem[];
}

/**
 * Slats on a face of the leaf share their plane with slats on that face of the run, and the frame lies right
 * behind them; otherwise the leaf's whole thickness is centered in the run.
 */
export function leafDepths(spec: RunSpec, gate: GateSpec, thickest: Ticks): LeafDepths {
  const { value: mounting } = gate.infill.mounting;
  if (facesOf(mounting).length === 2) return onBoth(spec, gate);
  if (mounting.kind === 'grooves' || mounting.kind === 'channels') return inPockets(spec, gate, thickest);
  return mounting.kind === 'face'
    ? onFace(spec, gate, mounting.face, thickest)
    : between(spec, gate, thickest);
}

function onFace(spec: RunSpec, gate: GateSpec, face: 'front' | 'back', thickest: Ticks): LeafDepths {
  const thick = gate.frame.value.thickness.value;
  const whole = centered(thick + thickest);
  const { value: own } = spec.infill.mounting;
  const shared = own.kind === 'face' && own.face === face;
  const slats = shared ? facePlane(spec, face) : face === 'front' ? whole[0] + thickest : whole[0] + thick;
  const bar = thicknessOf(spec, gate);
  const behind = (depth: Ticks): Range =>
    face === 'front' ? [slats, slats + depth] : [slats - depth, slats];
  return {
    frame: behind(thick),
    slats,
    ...(bar === undefined ? {} : { brace: behind(bar) }),
    problems: [],
  };
}

/** The frame in the middle, slats on its front and its back, the brace between them. */
function onBoth(spec: RunSpec, gate: GateSpec): LeafDepths {
  const depth = centered(gate.frame.value.thickness.value);
  const thick = thicknessOf(spec, gate);
  const room = depth[1] - depth[0];
  const own: LeafDepths = { frame: depth, slats: depth[0], problems: [] };
  if (thick === undefined) return own;
  if (thick <= room) return { ...own, brace: [depth[0], depth[0] + thick] };
  return { ...own, problems: [noRoom(spec, gate, thick, room)] };
}

/** With a brace, cleats and slats are flush with the frame's front and the brace with its back. */
function between(spec: RunSpec, gate: GateSpec, thickest: Ticks): LeafDepths {
  const depth = centered(gate.frame.value.thickness.value);
  const [middle] = centered(thickest);
  const thick = thicknessOf(spec, gate);
  if (thick === undefined) return { frame: depth, slats: middle, problems: [] };
  const cleat = gate.infill.cleat?.value.thickness.value ?? 0;
  const needs = 2 * cleat + thickest + thick;
  const room = depth[1] - depth[0];
  if (needs <= room) {
    const own: Range = [depth[1] - thick, depth[1]];
    return { frame: depth, slats: depth[0] + cleat, brace: own, problems: [] };
  }
  return { frame: depth, slats: middle, problems: [noRoom(spec, gate, needs, room)] };
}

/** Slats in the middle of the frame, a brace or a cable right behind what they end in. */
function inPockets(spec: RunSpec, gate: GateSpec, thickest: Ticks): LeafDepths {
  const depth = centered(gate.frame.value.thickness.value);
  const { value: mounting } = gate.infill.mounting;
  const layer = mounting.kind === 'channels' ? mounting.channel.value.thickness.value : thickest;
  const [, back] = centered(Math.max(layer, thickest));
  const own: LeafDepths = { frame: depth, slats: centered(thickest)[0], problems: [] };
  const thick = thicknessOf(spec, gate);
  if (thick === undefined) return own;
  if (back + thick <= depth[1]) return { ...own, brace: [back, back + thick] };
  return { ...own, problems: [noRoom(spec, gate, 2 * (back + thick), depth[1] - depth[0])] };
}

/** Of the brace, or of the cable in its place. */
function thicknessOf({ measure }: RunSpec, { brace, cable }: GateSpec): Ticks | undefined {
  return brace?.value.thickness.value ?? (cable && cableThickness(measure));
}

/** What keeps a leaf from sagging, and where that is stated. */
export function braceOf({ brace, cable, origin }: GateSpec): {
  readonly by: 'brace' | 'cable';
  readonly origin: Origin;
} {
  return { by: cable && !brace ? 'cable' : 'brace', origin: brace?.origin ?? cable ?? origin };
}

function noRoom({ measure }: RunSpec, gate: GateSpec, needs: Ticks, room: Ticks): Problem {
  const { by, origin } = braceOf(gate);
  const { value: mounting } = gate.infill.mounting;
  const held =
    mounting.kind === 'grooves' || mounting.kind === 'channels'
      ? mounting.kind
      : facesOf(mounting).length > 0
        ? 'faces'
        : 'cleats';
  const shown = (ticks: Ticks) => formatLength(ticks, measure);
  const args = { gate: gate.name, by, held, needs: shown(needs), room: shown(room) } as const;
  return geometryProblem('brace-no-room', origin, args);
}
