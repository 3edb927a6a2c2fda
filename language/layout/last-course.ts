import { groundLine, type RunSpec } from '../model/index.ts';
import { floorToStep, ROUNDING, type Ticks } from '../units/index.ts';
import type { Infilled } from './fill-bays.ts';
import type { Stand } from './follow-ground.ts';
import { heightAt, type Incline, inclineThrough, lineOverGround } from './incline.ts';
import { slatReach } from './level-reach.ts';
import type { Line } from './lines.ts';
import { courseBelow } from './more-courses.ts';
import type { PlacedBay } from './posts.ts';

/**
 * A bay with one more course below, its bottom edge ripped to a straight line that keeps the bottom stated above the
 * ground all along it, as near to that as the board is wide. Left out where it would be narrower than asked for at
 * either end, and where the ground asks for no taper.
 */
export function withLastCourse(
  spec: RunSpec,
  placed: PlacedBay,
  stand: Stand,
  infill: Infilled | undefined,
): Stand {
  const { filled } = stand;
  if (!spec.lastFollows || !infill || !filled) return stand;
  const next = courseBelow(spec.infill, filled.lines, filled.lines, infill.result.chosen);
  const low = next && taperOf(spec, placed, next);
  if (!next || !low) return stand;
  const reach = slatReach(spec, placed);
  const bottom = Math.floor(Math.min(...reach.map((x) => heightAt(low, x))));
  const course: Line = { ...next, ripped: true, low: bottom, taper: low };
  const lines = [...filled.lines, course];
  return {
    ...stand,
    z: [bottom - spec.infill.pattern.edgeGap.value, stand.z[1]],
    low,
    filled: { ...filled, lines, ...(filled.back ? { back: lines } : {}) },
  };
}

/** The bottom edge of a course that follows the ground; its widths are marks of the tape at both ends. */
function taperOf(spec: RunSpec, placed: PlacedBay, { high, low }: Line): Incline | undefined {
  const reach = slatReach(spec, placed);
  const clear = spec.bottom.value.low;
  // Over both posts, for what covers its ends there.
  const ground = lineOverGround(groundLine(spec), placed.left.mark.from, placed.right.mark.to);
  const most = high - low;
  const widths = reach.map((x) =>
    Math.min(most, floorToStep(high - heightAt(ground, x) - clear + ROUNDING, spec.measure.step)),
  ) as [Ticks, Ticks];
  if (Math.min(...widths) < (spec.lastFollows?.value ?? 0) || widths[0] === widths[1]) return undefined;
  return inclineThrough(reach, [high - widths[0], high - widths[1]]);
}
