import {
  asPlanned,
  type FlatStock,
  type GateSpec,
  type InfillSpec,
  isMeasured,
  type Placement,
  type Remedy,
  type RunSpec,
  type Sourced,
} from '../model/index.ts';
import type { Ticks } from '../units/index.ts';

/** Whether anything is measured that the layout goes by: boards, bays, posts or ends. Slats that are cut change nothing. */
export function isAsBuilt(spec: RunSpec): boolean {
  const { bays = [], posts = [], height, bottom, fit } = spec.measured ?? {};
  if (bays.length + posts.length > 0 || height || bottom || fit) return true;
  return flatsOf(spec).some(isMeasured);
}

/** The run as it was planned before posts, ends or boards were measured or slats cut; undefined where none was. */
export function plannedSpec(spec: RunSpec): RunSpec | undefined {
  if (!spec.measured && !isAsBuilt(spec)) return undefined;
  const { measured, rail, stiffeners, battens, collars, kick, filler, placement, ...rest } = spec;
  return {
    ...rest,
    ...(rail ? { rail: planned(rail) } : {}),
    ...(stiffeners ? { stiffeners: { ...stiffeners, stock: planned(stiffeners.stock) } } : {}),
    ...(battens ? { battens: planned(battens) } : {}),
    ...(collars ? { collars: { ...collars, stock: planned(collars.stock) } } : {}),
    ...(kick ? { kick: { ...kick, stock: planned(kick.stock) } } : {}),
    ...(filler ? { filler: { ...filler, stock: planned(filler.stock) } } : {}),
    ...(placement ? { placement: plannedPlacement(placement) } : {}),
    infill: plannedInfill(spec.infill),
    gates: spec.gates.map((gate) => ({
      ...gate,
      frame: planned(gate.frame),
      ...(gate.brace ? { brace: planned(gate.brace) } : {}),
      infill: plannedInfill(gate.infill),
    })),
  };
}

/** The run with its ends where they were measured, and its pattern made to close as it is to be there. */
export function atMeasuredEnds(spec: RunSpec): RunSpec {
  const { height, bottom, fit } = spec.measured ?? {};
  const at = ({ value, origin }: Sourced<Ticks>) => ({ value: { low: value, high: value }, origin });
  return {
    ...spec,
    ...(height ? { height: at(height) } : {}),
    ...(bottom ? { bottom: at(bottom) } : {}),
    ...(fit ? { infill: { ...spec.infill, fit } } : {}),
  };
}

const planned = ({ value, origin }: Sourced<FlatStock>): Sourced<FlatStock> => ({
  value: asPlanned(value),
  origin,
});

function plannedInfill(infill: InfillSpec): InfillSpec {
  const { pattern, cleat, fit } = infill;
  const remedy = (value: Remedy): Remedy =>
    value.kind === 'trim' && value.board ? { ...value, board: asPlanned(value.board) } : value;
  return {
    ...infill,
    pattern: { ...pattern, repeat: pattern.repeat.map(planned) },
    ...(cleat ? { cleat: planned(cleat) } : {}),
    fit: { ...fit, remedies: fit.remedies.map((one) => ({ ...one, value: remedy(one.value) })) },
  };
}

function plannedPlacement(placement: Placement): Placement {
  if (placement.kind !== 'on' || placement.bridge?.kind !== 'filler') return placement;
  return { ...placement, bridge: { ...placement.bridge, board: planned(placement.bridge.board) } };
}

function flatsOf(spec: RunSpec): readonly FlatStock[] {
  const { rail, stiffeners, battens, collars, kick, filler, placement, infill, gates } = spec;
  const bridge = placement?.kind === 'on' ? placement.bridge : undefined;
  const board = bridge?.kind === 'filler' ? bridge.board : undefined;
  const own = [rail, stiffeners?.stock, battens, collars?.stock, kick?.stock, filler?.stock, board];
  return [...own.flatMap((one) => one?.value ?? []), ...infillFlats(infill), ...gates.flatMap(gateFlats)];
}

const gateFlats = ({ frame, brace, infill }: GateSpec): readonly FlatStock[] => [
  frame.value,
  ...(brace ? [brace.value] : []),
  ...infillFlats(infill),
];

const infillFlats = ({ pattern, cleat, fit }: InfillSpec): readonly FlatStock[] => [
  ...pattern.repeat.map(({ value }) => value),
  ...(cleat ? [cleat.value] : []),
  ...fit.remedies.flatMap(({ value }) => (value.kind === 'trim' && value.board ? [value.board] : [])),
];
