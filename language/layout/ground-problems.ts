import type { Problem, RunSpec } from '../model/index.ts';
import { formatLength, type Ticks } from '../units/index.ts';
import { geometryProblem } from './problems.ts';

/** Levels of the ground stated off the run, or in no order. The run is built all the same. */
export function groundProblems({ levels, length, measure }: RunSpec): readonly Problem[] {
  const shown = (ticks: Ticks) => formatLength(ticks, measure);
  let before = -1;
  return (levels ?? []).flatMap(({ station, origin }): Problem[] => {
    const last = before;
    before = Math.max(before, station);
    if (station > length.value) {
      const args = { station: shown(station), length: shown(length.value) };
      return [geometryProblem('ground-outside', origin, args)];
    }
    if (station > last) return [];
    return [geometryProblem('stations-order', origin, { station: shown(station), before: shown(last) })];
  });
}
