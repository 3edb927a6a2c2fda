import type { GateSpec } from '../model/index.ts';
import type { Ticks } from '../units/index.ts';
import type { Filled } from './fit-infill.ts';
import type { Line } from './lines.ts';
import type { PlacedBay } from './posts.ts';

/** One leaf of a pair: a gate of its own in its part of the opening. */
export interface Half {
  readonly gate: GateSpec;
  readonly placed: PlacedBay;
}

/**
 * The two leaves of a pair, the active one first. Each has its part of the opening up to the middle of the meeting
 * gap, so that the parts add up to the opening; between equal leaves the meeting gap takes an odd tick.
 */
export function halvesOf(
  gate: GateSpec,
  placed: PlacedBay,
): readonly [active: Half, passive: Half] | undefined {
  const { pair, hinges, hingeGap } = gate;
  if (!pair) return undefined;
  const { from, to } = placed.bay;
  const room = to - from - 2 * hingeGap.value - pair.meetingGap.value;
  const equal = Math.floor(room / 2);
  const active = pair.active?.value ?? equal;
  const passive = pair.active ? room - active : equal;
  const meeting = to - from - 2 * hingeGap.value - active - passive;
  const widths = hinges.value === 'left' ? [active, passive] : [passive, active];
  const split = from + hingeGap.value + (widths[0] ?? 0) + Math.floor(meeting / 2);
  const half = (side: 'left' | 'right'): Half => {
    const isActive = hinges.value === side;
    const [low, high] = side === 'left' ? [from, split] : [split, to];
    const gap = side === 'left' ? Math.floor(meeting / 2) : Math.ceil(meeting / 2);
    const own: GateSpec = {
      ...gate,
      name: nameOf(gate, side),
      half: { of: gate.name, side, active: isActive, mirrors: !isActive && active === passive },
      hinges: { ...gate.hinges, value: side },
      opening: { ...gate.opening, value: high - low },
      station: { ...gate.station, value: low },
      latchGap: { value: gap, origin: { ...pair.meetingGap.origin, why: 'derived' } },
      post: isActive ? gate.post : (gate.latchPost ?? gate.post),
      infill: isActive ? gate.infill : { ...gate.infill, flip: otherWay(gate.infill.flip) },
    };
    return {
      gate: own,
      placed: { ...placed, bay: { ...placed.bay, from: low, to: high, clear: high - low } },
    };
  };
  return hinges.value === 'left' ? [half('left'), half('right')] : [half('right'), half('left')];
}

/** What the leaves of a gate are called: as the gate, or each of a pair by its side. */
export function leafNames(gate: Pick<GateSpec, 'name' | 'pair'>): readonly string[] {
  return gate.pair ? [nameOf(gate, 'left'), nameOf(gate, 'right')] : [gate.name];
}

const nameOf = ({ name }: Pick<GateSpec, 'name'>, side: 'left' | 'right'): string => `${name} (${side} leaf)`;

/** What fills the passive leaf: the active one's lines, mirrored where upright slats stand beside each other. */
export function mirrored(filled: Filled, { gate, placed }: Half, sum: Ticks): Filled {
  const reflect = (lines: readonly Line[]) => (gate.infill.flip.upright ? reflected(lines, sum) : lines);
  return {
    ...filled,
    lines: reflect(filled.lines),
    ...(filled.back
      ? { back: filled.back === filled.lines ? reflect(filled.lines) : reflect(filled.back) }
      : {}),
    result: { ...filled.result, gate: gate.name, bays: [placed.bay.number], mirrored: true },
  };
}

/** From left to right again, and numbered so. `sum` is twice the station they are mirrored at. */
function reflected(lines: readonly Line[], sum: Ticks): readonly Line[] {
  let course = 0;
  return lines.toReversed().map((line) => ({
    ...line,
    course: line.course === undefined ? undefined : ++course,
    low: sum - line.high,
    high: sum - line.low,
  }));
}

const otherWay = (flip: GateSpec['infill']['flip']): GateSpec['infill']['flip'] => ({
  ...flip,
  topEdge: flip.topEdge === 'left' ? 'right' : 'left',
});
