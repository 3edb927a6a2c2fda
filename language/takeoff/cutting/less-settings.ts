import { fewestSettings, type SettingsProgress } from './fewest-settings.ts';
import type { Packing, Problem } from './problem.ts';
import type { Progress } from './solve.ts';

/** Plans with fewer settings than the cheapest that is known, begun anew where a cheaper one is found. */
export interface LessSettings {
  /** How far it has come; undefined where there is no plan yet. */
  of(cheapest: Progress): SettingsProgress | undefined;
  step(cheapest: Progress): void;
}

/** @param within what it may cost more than the cheapest, as a share */
export function lessSettings(problem: Problem, within: number): LessSettings {
  let begun:
    | { from: Packing; steps: Generator<SettingsProgress, SettingsProgress>; now: SettingsProgress }
    | undefined;
  const at = ({ packing, cost }: Progress) => {
    if (!packing) return undefined;
    if (begun?.from === packing) return begun;
    const steps = fewestSettings(problem, packing, mostCost(cost, within, problem));
    begun = { from: packing, steps, now: steps.next().value };
    return begun;
  };
  return {
    of: (cheapest) => at(cheapest)?.now,
    step: (cheapest) => {
      const one = at(cheapest);
      if (one && !one.now.done) one.now = one.steps.next().value;
    },
  };
}

/** A combined cost, by the money: any number of boards for so much. */
function mostCost(cost: number, within: number, { scale }: Problem): number {
  const money = Math.floor(cost / scale);
  return (Math.floor(money * (1 + within) + 1e-9) + 1) * scale - 1;
}
