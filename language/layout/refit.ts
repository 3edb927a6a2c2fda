import type { Band, FlatStock, InfillSpec, Measured, Remedy, RunSpec, Sourced } from '../model/index.ts';
import type { Ticks } from '../units/index.ts';
import { closeUpright, whereStated } from './fill-bays.ts';
import { type Ask, changesFor } from './fit/index.ts';
import { targetOf } from './fit-infill.ts';
import type { FitChoice, Restated, RestatedRemedy, RunLayout, TextChange } from './layout.ts';

/** The run with what a choice of fit states anew. Remedies of a run hold for its bays alone, not for its gates. */
export function refitted(spec: RunSpec, restated: Restated | undefined): RunSpec {
  if (!restated) return spec;
  const { remedies, bottom, height } = restated;
  const origin = spec.infill.fit.origin;
  const fit = remedies
    ? {
        remedies: remedies.map((remedy): Sourced<Remedy> => ({ value: remedyOf(remedy, spec), origin })),
        origin,
      }
    : spec.infill.fit;
  return {
    ...spec,
    ...(spec.measured ? { measured: withoutRestated(spec.measured, restated) } : {}),
    infill: { ...spec.infill, fit },
    bottom: restatedEnd(spec.bottom, bottom),
    height: restatedEnd(spec.height, height),
  };
}

/** What was measured, but for what is stated anew and would else count before it. */
function withoutRestated(
  { fit, bottom, height, ...rest }: Measured,
  { remedies, bottom: low, height: high }: Restated,
): Measured {
  return {
    ...rest,
    ...(fit && !remedies ? { fit } : {}),
    ...(bottom && low === undefined ? { bottom } : {}),
    ...(height && high === undefined ? { height } : {}),
  };
}

function restatedEnd(band: Sourced<Band>, at: Ticks | undefined): Sourced<Band> {
  return at === undefined ? band : { ...band, value: { low: at, high: at } };
}

function remedyOf(remedy: RestatedRemedy, { infill }: RunSpec): Remedy {
  if (remedy.kind !== 'trim') return remedy;
  const board = remedy.board && boardNamed(infill, remedy.board.stock);
  return { kind: 'trim', edge: remedy.edge, ...(board ? { board } : {}) };
}

function boardNamed({ pattern, fit }: InfillSpec, name: string): FlatStock | undefined {
  const boards = [
    ...pattern.repeat.flatMap(({ value }) => [value.parent ?? value, value]),
    ...fit.remedies.flatMap(({ value }) => (value.kind === 'trim' && value.board ? [value.board] : [])),
  ];
  return boards.find((board) => board.name === name);
}

/** How the upright pattern of a run closes in each bay as it stands, with what is stated anew. */
export function refitUpright(
  run: RunLayout,
  restated: Restated | undefined,
): ReadonlyMap<number, FitChoice | undefined> {
  const bays = run.bays.filter(({ gate }) => gate === undefined);
  return closeUpright(refitted(run.spec, restated), bays);
}

/** Edits of the text that ask for other remedies in a run. */
export function fitEdits({ spec }: RunLayout, remedies: readonly RestatedRemedy[]): readonly TextChange[] {
  const { infill, measure } = spec;
  const target = targetOf({ infill, ...whereStated(spec) });
  return changesFor({ target, measure }, { asks: remedies as readonly Ask[] });
}
