import type {
  FlatStock,
  GateSpec,
  InfillSpec,
  Mounting,
  Origin,
  PostStock,
  Problem,
  RunSpec,
  Sourced,
} from '../model/index.ts';
import { formatLength, type Ticks } from '../units/index.ts';
import { geometryProblem } from './problems.ts';

/** Sizes that nothing can be built from: zero, negative or no whole number. Empty when all are sound. */
export function sizeProblems(spec: RunSpec): readonly Problem[] {
  const found: Problem[] = [];
  const tell = (what: string, origin: Origin) => found.push(geometryProblem('no-size', origin, { what }));
  const sized = (what: string, { value, origin }: Sourced<Ticks>) => {
    if (!isSize(value)) tell(what, origin);
  };
  const gap = (what: string, { value, origin }: Sourced<Ticks>) => {
    if (value !== 0 && !isSize(value)) tell(what, origin);
  };
  const flat = (stock: FlatStock) => {
    sized(`width of ${stock.name}`, stock.width);
    sized(`thickness of ${stock.name}`, stock.thickness);
  };
  const post = (stock: PostStock) => {
    sized(`along of ${stock.name}`, stock.along);
    sized(`through of ${stock.name}`, stock.through);
  };
  const held = (mounting: Mounting) => {
    if (mounting.kind === 'grooves') {
      sized('depth of the grooves', mounting.depth);
      if (mounting.width) sized('width of the grooves', mounting.width);
    }
    if (mounting.kind !== 'channels') return;
    const { name, width, thickness, wall } = mounting.channel.value;
    sized(`width of ${name}`, width);
    sized(`thickness of ${name}`, thickness);
    sized(`wall of ${name}`, wall);
  };
  const infill = ({ pattern, cleat, endGap, mounting }: InfillSpec) => {
    if (pattern.repeat.length === 0) tell(`repeat of ${pattern.name}`, pattern.origin);
    for (const stock of new Set(pattern.repeat.map((item) => item.value))) flat(stock);
    gap(`gap of ${pattern.name}`, pattern.gap);
    gap(`edge gap of ${pattern.name}`, pattern.edgeGap);
    gap('end gap', endGap);
    if (cleat) flat(cleat.value);
    held(mounting.value);
  };

  sized('length', spec.length);
  post(spec.post.value);
  if (spec.embed) gap('embed', spec.embed);
  gap('tops', spec.tops);
  if (spec.slatJoints?.gap) gap('joint gap', spec.slatJoints.gap);
  if (spec.rail) flat(spec.rail.value);
  if (spec.stiffeners) {
    flat(spec.stiffeners.stock.value);
    if (spec.stiffeners.apart) sized('space between stiffeners', spec.stiffeners.apart);
  }
  if (spec.placement?.kind === 'on' && spec.placement.bridge?.kind === 'filler')
    flat(spec.placement.bridge.board.value);
  if (spec.battens) flat(spec.battens.value);
  if (spec.collars) flat(spec.collars.stock.value);
  if (spec.kick) {
    flat(spec.kick.stock.value);
    gap('space under the kick board', spec.kick.clearance);
  }
  if (spec.lastFollows) sized('least width of the last course', spec.lastFollows);
  if (spec.filler) {
    flat(spec.filler.stock.value);
    sized('least width of the filler', spec.filler.least);
  }
  for (const wall of [spec.walls?.start, spec.walls?.end]) if (wall) gap('gap at the wall', wall.off);
  if (spec.caps) {
    const cap = spec.caps.value;
    sized(`thickness of ${cap.name}`, cap.thickness);
    gap(`edge of ${cap.name}`, cap.edge);
    gap(`overhang of ${cap.name}`, cap.overhang);
    for (const size of [cap.along, cap.through]) if (size) sized(`size of ${cap.name}`, size);
  }
  infill(spec.infill);
  if (!Number.isSafeInteger(spec.ground.value)) tell('ground', spec.ground.origin);
  if (!isSize(spec.measure.step)) tell('measure', spec.origin);
  for (const gate of spec.gates) {
    sized(`opening of ${gate.name}`, gate.opening);
    gap('station', gate.station);
    gap('hinge gap', gate.hingeGap);
    gap('latch gap', gate.latchGap);
    if (gate.pair) gap('meeting gap', gate.pair.meetingGap);
    if (gate.pair?.active) sized('active leaf', gate.pair.active);
    post(gate.post.value);
    if (gate.latchPost) post(gate.latchPost.value);
    flat(gate.frame.value);
    if (gate.brace) flat(gate.brace.value);
    infill(gate.infill);
  }
  found.push(...heightProblems(spec, spec.height, spec.bottom));
  for (const gate of spec.gates) found.push(...gateHeightProblems(spec, gate));
  return found;
}

function gateHeightProblems(spec: RunSpec, { height, bottom }: GateSpec): readonly Problem[] {
  return height || bottom ? heightProblems(spec, height ?? spec.height, bottom ?? spec.bottom) : [];
}

function heightProblems(
  { measure }: RunSpec,
  height: RunSpec['height'],
  bottom: RunSpec['bottom'],
): readonly Problem[] {
  const { low, high } = height.value;
  const floor = bottom.value;
  const sound = isSize(low) && isSize(high) && floor.low >= 0 && Number.isSafeInteger(floor.low);
  if (!sound) return [geometryProblem('no-size', height.origin, { what: 'height' })];
  // The bands may not cross either: the lowest top stays above the highest bottom.
  if (high >= low && floor.high >= floor.low && low > floor.high) return [];
  const shown = (ticks: Ticks) => formatLength(ticks, measure);
  return [geometryProblem('no-height', height.origin, { height: shown(low), bottom: shown(floor.high) })];
}

const isSize = (value: number): boolean => Number.isSafeInteger(value) && value > 0;
