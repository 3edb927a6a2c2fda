import { type Band, type GateSpec, type Problem, type RunSpec, standsBetween } from '../model/index.ts';
import { formatLength, type Ticks } from '../units/index.ts';
import { alternateProblem } from './alternate-boards.ts';
import { roomOf } from './as-built.ts';
import { braceFits } from './brace.ts';
import { cableThickness } from './cable.ts';
import { type Filled, fillPlace } from './fit-infill.ts';
import { cleatProblems, roomBetween } from './holds.ts';
import type { Panel, Range } from './infill.ts';
import { gateLabel } from './labels.ts';
import type { Course, FitResult, Leaf, Opening } from './layout.ts';
import { braceOf, type LeafDepths, leafDepths } from './leaf-depths.ts';
import { bracePiece, cablePiece, framePieces, type LeafFrame } from './leaf-frame.ts';
import { leafOpenings, panelsOf } from './leaf-panels.ts';
import { leafRails, panesOf } from './leaf-rails.ts';
import { thickestOf } from './lines.ts';
import { gateKey } from './names.ts';
import type { Piece } from './piece.ts';
import { pocketProblems } from './pockets.ts';
import type { PlacedBay } from './posts.ts';
import { geometryProblem } from './problems.ts';

/** A leaf planned: everything but the pieces of its panels, which are made with those of the bays. */
export interface LeafPlan {
  readonly leaf: Leaf;
  readonly frame: readonly Piece[];
  /** One, or the front and the back where both have slats. */
  readonly panels: readonly Panel[];
  readonly openings: readonly Opening[];
  readonly fit: FitResult;
  readonly filled: Filled;
}

/** Ends of the run's infill as built, above ground. */
export interface BuiltEnds {
  readonly bottom: Ticks;
  readonly height: Ticks;
}

/**
 * Plans the leaf in a gate's bay; `number` counts gates from station 0, `courses` are those of the bay beside it;
 * `as` fills it as another leaf is filled. A leaf that cannot be built has no
 * plan; one that only lacks its brace has one.
 */
export function planLeaf(
  spec: RunSpec,
  gate: GateSpec,
  placed: PlacedBay,
  number: number,
  built: BuiltEnds,
  courses: readonly Course[] = [],
  as?: (x: Range) => Filled,
): { plan?: LeafPlan; problems: readonly Problem[] } {
  const { bay } = placed;
  const mixed = alternateProblem(gate.infill);
  if (mixed) return { problems: [mixed] };
  const x = leafRange(gate, placed);
  const filled = as?.(x) ?? fillLeaf(spec, gate, bay.number, x, built);
  const ground = spec.ground.value;
  const z: Range = gate.infill.flip.upright
    ? [ground + bottomOf(gate, built).low, ground + heightOf(gate, built).high]
    : [ground + filled.bottom, ground + filled.height];
  const small = smallness(spec, gate, x, z);
  if (small) return { problems: [small] };

  const thickest = thickestOf(filled.lines);
  const depths = leafDepths(spec, gate, thickest);
  const width = gate.frame.value.width.value;
  const own = leafRails({ gate, z, ground, courses, measure: spec.measure });
  const frame: LeafFrame = {
    spec,
    gate,
    bay: bay.number,
    key: gateKey(spec.name, gate),
    label: gateLabel(number, gate.half?.side),
    hungOn: (gate.hinges.value === 'left' ? placed.left : placed.right).mark.key,
    x,
    z,
    inside: { x: [x[0] + width, x[1] - width], z: [z[0] + width, z[1] - width] },
    y: depths.frame,
    rails: own.rails,
    panes: panesOf(own.rails),
  };
  const problems = [...depths.problems, ...holdProblems(spec, gate, thickest, depths)];
  if (problems.some(({ code }) => code !== 'brace-no-room')) return { problems };
  problems.push(...own.problems);
  const braces = depths.brace ? braced(frame, depths.brace) : [];
  if (depths.brace && braces.length < frame.panes.length) problems.push(wideBrace(frame));
  const leaf: Leaf = {
    gate: gate.name,
    spec: gate,
    x0: x[0],
    x1: x[1],
    z0: z[0],
    z1: z[1],
    width: x[1] - x[0],
    height: z[1] - z[0],
    bay: bay.number,
  };
  const plan: LeafPlan = {
    leaf,
    frame: [...framePieces(frame, thickest), ...braces],
    panels: panelsOf(frame, filled, depths),
    openings: leafOpenings(frame, filled),
    fit: filled.result,
    filled,
  };
  return { plan, problems };
}

function leafRange({ hinges, hingeGap, latchGap }: GateSpec, { bay }: PlacedBay): Range {
  const [from, to] = roomOf(bay);
  return hinges.value === 'left'
    ? [from + hingeGap.value, to - latchGap.value]
    : [from + latchGap.value, to - hingeGap.value];
}

const fixed = (value: Ticks): Band => ({ low: value, high: value });

const bottomOf = (gate: GateSpec, built: BuiltEnds): Band => gate.bottom?.value ?? fixed(built.bottom);

const heightOf = (gate: GateSpec, built: BuiltEnds): Band => gate.height?.value ?? fixed(built.height);

function fillLeaf(spec: RunSpec, gate: GateSpec, bay: number, x: Range, built: BuiltEnds): Filled {
  const { infill, frame } = gate;
  const { upright } = infill.flip;
  const inset = standsBetween(infill.mounting.value) ? frame.value.width.value : 0;
  const ends = { bottom: bottomOf(gate, built), height: heightOf(gate, built) };
  const extent = upright ? x[1] - x[0] : ends.height.high - ends.bottom.low;
  return fillPlace({
    infill,
    gate: gate.name,
    bays: [bay],
    space: extent - 2 * inset,
    edge: upright ? x[0] + inset : spec.ground.value + ends.height.high - inset,
    ends: upright ? undefined : ends,
    measure: spec.measure,
    // A leaf hangs beside the run: a gap that is the run's own is compared with it.
    besideNominal: infill.pattern.gap.value === spec.infill.pattern.gap.value,
    block: gate.origin,
    bottom: gate.bottom?.origin,
    height: gate.height?.origin,
  });
}

function smallness(spec: RunSpec, gate: GateSpec, x: Range, z: Range): Problem | undefined {
  const { infill, frame, name } = gate;
  const shown = (ticks: Ticks) => formatLength(ticks, spec.measure);
  const members = 2 * frame.value.width.value;
  const slats = standsBetween(infill.mounting.value) ? roomBetween(infill) : 1;
  const needsWidth = members + (infill.flip.upright ? 1 : slats);
  const needsHeight = members + (infill.flip.upright ? slats : 1);
  const width = x[1] - x[0];
  const height = z[1] - z[0];
  if (width >= needsWidth && height >= needsHeight) return undefined;
  return geometryProblem('leaf-too-small', gate.opening.origin, {
    gate: name,
    width: shown(Math.max(0, width)),
    height: shown(Math.max(0, height)),
    needsWidth: shown(needsWidth),
    needsHeight: shown(needsHeight),
  });
}

function holdProblems(
  spec: RunSpec,
  gate: GateSpec,
  thickest: Ticks,
  depths: LeafDepths,
): readonly Problem[] {
  const { value: stock } = gate.frame;
  const holder = {
    name: stock.name,
    y: depths.frame,
    room: stock.width.value,
    sides: 1,
    wall: stock.wall,
  } as const;
  if (gate.infill.mounting.value.kind !== 'between')
    return pocketProblems(gate.infill, [holder], thickest, spec.measure);
  return cleatProblems(gate.infill, [holder], thickest, depths.slats, spec.measure);
}

/** One in every pane that it goes into. */
function braced(frame: LeafFrame, y: Range): readonly Piece[] {
  const { gate, spec } = frame;
  const width = braceWidth(spec, gate);
  return frame.panes.flatMap((pane, index) => {
    if (!braceFits({ inside: { x: frame.inside.x, z: pane.z }, width })) return [];
    const number = frame.panes.length > 1 ? index + 1 : undefined;
    const made = gate.cable ? cablePiece(frame, y, pane, number) : bracePiece(frame, y, pane, number);
    return made ? [made] : [];
  });
}

function wideBrace({ gate, spec }: LeafFrame): Problem {
  const { by, origin } = braceOf(gate);
  const args = { gate: gate.name, by, width: formatLength(braceWidth(spec, gate), spec.measure) };
  return geometryProblem('brace-too-wide', origin, args);
}

/** Across a brace; a cable is as thick as it is wide. */
function braceWidth({ measure }: RunSpec, { brace }: GateSpec): Ticks {
  return brace?.value.width.value ?? cableThickness(measure);
}
