import { type Ticks, wholeTicks } from './ticks.ts';

/** What floats may lose, in ticks: so far past a whole tick, or a mark of the tape, counts as on it. */
export const ROUNDING = 1e-4;

/** The nearest multiple of `step`, halves away from zero. A step of no size leaves whole ticks. */
export function roundToStep(t: Ticks, step: Ticks): Ticks {
  const size = Math.abs(wholeTicks(t));
  const below = floorToStep(size, step);
  const rest = size - below;
  const near = rest > 0 && 2 * rest >= step ? below + step : below;
  return t < 0 && near > 0 ? -near : near;
}

/** The greatest multiple of `step` that is not more than `t`. Cuts round this way. */
export function floorToStep(t: Ticks, step: Ticks): Ticks {
  const whole = Math.floor(t);
  if (!(step > 1)) return whole;
  // By remainder, since a quotient of large whole numbers could round up to the next one.
  const rest = whole % step;
  return rest < 0 ? whole - rest - step : whole - rest;
}

/** The least multiple of `step` that is not less than `t`. */
export function ceilToStep(t: Ticks, step: Ticks): Ticks {
  const below = -floorToStep(-t, step);
  return below === 0 ? 0 : below;
}
