import { type Frame, toPlan } from '../layout/index.ts';
import { TICKS_PER_MM } from '../units/index.ts';
import type { Projection } from './project.ts';
import type { Anchor, Shift } from './view.ts';

/** A point or a direction on the sheet: x right, y down. */
export type At = readonly [x: number, y: number];

/** A run on the plan: its own directions on the sheet, and points of its frame, in ticks, taken there. */
export interface PlanAxes {
  readonly along: At;
  readonly back: At;
  at(x: number, y: number): At;
}

/** East is right and north is up. */
export function planAxes(frame: Frame): PlanAxes {
  const at = (x: number, y: number): At => {
    const [east, north] = toPlan(frame, x, y);
    return [east / TICKS_PER_MM, (0 - north) / TICKS_PER_MM];
  };
  const still: Frame = { origin: [0, 0, 0], bearing: frame.bearing };
  const direction = (x: number, y: number): At => {
    const [east, north] = toPlan(still, x, y);
    return [east, 0 - north];
  };
  return { along: direction(1, 0), back: direction(0, 1), at };
}

/** A run where it stands, seen from above: what is higher is nearer. */
export function fromAbove(axes: PlanAxes): Projection {
  const [ox, oy] = axes.at(0, 0);
  const [ax, ay] = axes.along;
  const [bx, by] = axes.back;
  return (x, y, z, to) => {
    to.x = ox + (x * ax + y * bx) / TICKS_PER_MM;
    to.y = oy + (x * ay + y * by) / TICKS_PER_MM;
    to.away = (0 - z) / TICKS_PER_MM;
  };
}

export function moved([x, y]: At, [dx, dy]: At, by: number): At {
  return [x + dx * by, y + dy * by];
}

/** How a text is written that stands off its point in a direction of the sheet. */
export interface Writing {
  readonly anchor: Anchor;
  readonly turn: 0 | 90;
  readonly shift: Shift;
}

/** Middle of a capital above its baseline, in letters. */
const HALF = 0.36;

/** Read away from a line, so that neighbors along it keep clear: level beside a line that is upright, else turned. */
export function awayFrom([x, y]: At): Writing {
  if (Math.abs(x) > Math.abs(y)) return { anchor: x > 0 ? 'start' : 'end', turn: 0, shift: [0, -HALF] };
  return { anchor: y < 0 ? 'start' : 'end', turn: 90, shift: [0, -HALF] };
}

/** Read along a line; beside one that slants it is level. */
export function alongside([x, y]: At): Writing {
  const slants = Math.min(Math.abs(x), Math.abs(y)) > 0.1;
  if (slants) return { anchor: x > 0 ? 'start' : 'end', turn: 0, shift: [0, -HALF] };
  return { anchor: 'middle', turn: Math.abs(x) > Math.abs(y) ? 90 : 0, shift: [0, -HALF] };
}
