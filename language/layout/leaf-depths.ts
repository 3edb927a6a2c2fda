import { facesOf, type GateSpec, type Problem, type RunSpec } from '../model/index.ts';
import { formatLength, type Ticks } from '../units/index.ts';
import { facePlane } from './bay-panel.ts';
import { centered } from './holds.ts';
import type { Range } from './infill.ts';
import { geometryProblem } from './problems.ts';

/** Where the layers of a leaf are through the screen. */
export interface LeafDepths {
  readonly frame: Range;
  /** Slats on a face: the frame's face they lie on. Slats between: the front of the slats. */
  readonly slats: Ticks;
  /** Missing when there is no brace, or no room for it. */
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
  const behind = (depth: Ticks): Range =>
    face === 'front' ? [slats, slats + depth] : [slats - depth, slats];
  return {
    frame: behind(thick),
    slats,
    brace: gate.brace && behind(gate.brace.value.thickness.value),
    problems: [],
  };
}

/** The frame in the middle, slats on its front and its back, the brace between them. */
function onBoth({ measure }: RunSpec, { name, frame, brace }: GateSpec): LeafDepths {
  const depth = centered(frame.value.thickness.value);
  const thick = brace?.value.thickness.value;
  const room = depth[1] - depth[0];
  const own: LeafDepths = { frame: depth, slats: depth[0], problems: [] };
  if (!brace || thick === undefined) return own;
  if (thick <= room) return { ...own, brace: [depth[0], depth[0] + thick] };
  const args = { gate: name, needs: formatLength(thick, measure), room: formatLength(room, measure) };
  return { ...own, problems: [geometryProblem('brace-no-room', brace.origin, args)] };
}

/** With a brace, cleats and slats are flush with the frame's front and the brace with its back. */
function between(
  { measure }: RunSpec,
  { name, frame, brace, infill }: GateSpec,
  thickest: Ticks,
): LeafDepths {
  const depth = centered(frame.value.thickness.value);
  const [middle] = centered(thickest);
  if (!brace) return { frame: depth, slats: middle, problems: [] };
  const cleat = infill.cleat?.value.thickness.value ?? 0;
  const thick = brace.value.thickness.value;
  const needs = 2 * cleat + thickest + thick;
  const room = depth[1] - depth[0];
  if (needs <= room) {
    const own: Range = [depth[1] - thick, depth[1]];
    return { frame: depth, slats: depth[0] + cleat, brace: own, problems: [] };
  }
  const args = { gate: name, needs: formatLength(needs, measure), room: formatLength(room, measure) };
  const problem = geometryProblem('brace-no-room', brace.origin, args);
  return { frame: depth, slats: middle, problems: [problem] };
}
