import type { FitChoice } from '../../layout/index.ts';
import type { Band, Filling, FitSpec, InfillSpec, Origin, RunSpec, Sourced } from '../../model/index.ts';
import type { Ticks } from '../../units/index.ts';

/** Whether a statement stands in the block of a run. */
const isWithin = ({ uri, path }: Origin, block: Origin): boolean =>
  uri === block.uri && path.startsWith(`${block.path}/`);

const isSamePlace = (one: Origin, other: Origin): boolean => one.uri === other.uri && one.path === other.path;

/** Whether a pattern can stand in a run: remedies stated there may name slats that it lacks. */
export function canTake({ infill, origin }: RunSpec, { pattern }: Filling): boolean {
  if (!isWithin(infill.fit.origin, origin)) return true;
  const names = new Set(pattern.repeat.map(({ value }) => value.name));
  return infill.fit.remedies.every(({ value }) => value.kind !== 'change-width' || names.has(value.slat));
}

/** The run filled otherwise; and with it each gate that takes its pattern from the run. */
export function refilled(spec: RunSpec, filling: Filling): RunSpec {
  const fillIn = (infill: InfillSpec, block: Origin): InfillSpec => ({
    ...infill,
    pattern: filling.pattern,
    fit: isWithin(infill.fit.origin, block) ? infill.fit : (filling.fit ?? nothingAsked(infill.fit)),
  });
  return {
    ...spec,
    infill: fillIn(spec.infill, spec.origin),
    gates: spec.gates.map((gate) =>
      isSamePlace(gate.infill.fill, spec.infill.fill)
        ? { ...gate, infill: fillIn(gate.infill, gate.origin) }
        : gate,
    ),
  };
}

const nothingAsked = ({ origin }: FitSpec): FitSpec => ({
  remedies: [],
  origin: { ...origin, why: 'default' },
});

/** The run with so many bays, gates not counted. */
export function withBays(spec: RunSpec, count: number): RunSpec {
  return { ...spec, spacing: { ...spec.spacing, value: { kind: 'bays', count } } };
}

/** Whether the ends a choice asks for lie within what the job lets them be. */
export function keepsEnds({ bottom, height }: RunSpec, { restated }: FitChoice): boolean {
  const within = ({ value }: Sourced<Band>, at: Ticks | undefined) =>
    at === undefined || (at >= value.low && at <= value.high);
  return within(bottom, restated?.bottom) && within(height, restated?.height);
}

/** Whether a choice keeps the gaps within the band that the text states for them, where it states one. */
export function keepsGaps({ infill }: RunSpec, { kind, gap }: FitChoice): boolean {
  if (kind !== 'gaps' && kind !== 'short-repeat') return true;
  const bands = infill.fit.remedies.flatMap(({ value }) => (value.kind === 'gaps' ? [value] : []));
  return bands.length === 0 || bands.some(({ low, high }) => gap >= low && gap <= high);
}
