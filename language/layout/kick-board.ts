import { groundLine, isMetric, type RunSpec } from '../model/index.ts';
import { floorToStep, inches, type Measure, mm, ROUNDING, type Ticks } from '../units/index.ts';
import { roomOf } from './as-built.ts';
import type { Stand } from './follow-ground.ts';
import { centered } from './holds.ts';
import { groundAbove, heightAt, type Incline, inclineThrough, lineOverGround, raised } from './incline.ts';
import type { Range } from './infill.ts';
import { bayLabel, kickLabel } from './labels.ts';
import { makeSloped, slopedOver } from './make-racked.ts';
import type { Piece } from './piece.ts';
import type { PlacedBay } from './posts.ts';

/** Narrower than this no board is ripped (common practice: 1-1/2", 40 mm). */
export function narrowestKick(measure: Measure): Ticks {
  return isMetric(measure) ? mm(40) : inches(1.5);
}

/** The kick board of a bay, and its bottom edge; neither where there is no room for one. */
export interface Kick {
  readonly piece: Piece;
  readonly bottom: Incline;
}

/**
 * A board between the posts of a bay, in the space under its slats: a gap below level slats, right under the bottom
 * rail of upright ones. Its bottom edge keeps its clearance above the ground all along the bay: parallel to its top
 * edge, or following the ground. No wider than its stock, which then hangs higher than it might.
 */
export function kickBoard(spec: RunSpec, { bay, left, right }: PlacedBay, stand: Stand): Kick | undefined {
  const { kick, measure } = spec;
  if (!kick) return undefined;
  const { name, width, thickness, origin } = kick.stock.value;
  const x = roomOf(bay);
  const top = topOf(spec, stand);
  const over = slopedOver(top.rise);
  const depths = depthsOf(spec, top, x).map((depth) =>
    Math.min(floorToStep(depth / over + ROUNDING, measure.step), width.value),
  ) as [Ticks, Ticks];
  if (Math.min(...depths) < narrowestKick(measure)) return undefined;
  const bottom = inclineThrough(x, [
    heightAt(top, x[0]) - depths[0] * over,
    heightAt(top, x[1]) - depths[1] * over,
  ]);
  const ripped = depths.some((depth) => depth < width.value);
  const piece = makeSloped(
    {
      key: `${bay.key}/kick`,
      label: kickLabel(bayLabel(bay.number)),
      role: 'kick',
      run: spec.name,
      bay: bay.number,
      side: 'middle',
      supports: [left.mark.key, right.mark.key],
      from: [kick.origin, origin, spec.origin],
    },
    { name, ripped, ...(depths[0] === depths[1] ? {} : { under: bottom }) },
    { x, y: centered(thickness.value), top: top.z, width: Math.max(...depths) },
    top,
    measure.step,
  );
  return { piece, bottom };
}

/** Where its top edge is. */
function topOf({ infill }: RunSpec, { rack, low, z }: Stand): Incline {
  if (rack) return rack.bottom;
  const { gap, edgeGap } = infill.pattern;
  const under: Incline = low ?? { at: 0, z: z[0], rise: 0 };
  if (infill.flip.upright) return under;
  // `z` is an edge gap below the lowest slat already, a course that follows the ground is not.
  return raised(under, low ? -Math.max(gap.value, edgeGap.value) : -Math.max(0, gap.value - edgeGap.value));
}

/** Room for it at both ends, upright. */
function depthsOf(spec: RunSpec, top: Incline, x: Range): readonly [number, number] {
  const { kick } = spec;
  const line = groundLine(spec);
  const clear = kick?.clearance.value ?? 0;
  if (kick?.follows) {
    const ground = lineOverGround(line, ...x);
    const at = (station: Ticks) => heightAt(top, station) - heightAt(ground, station) - clear;
    return [at(x[0]), at(x[1])];
  }
  const room = 0 - groundAbove(line, top, ...x) - clear;
  return [room, room];
}
