import { groundLine, highestGround, type RunSpec } from '../model/index.ts';
import { floorToStep, type Ticks } from '../units/index.ts';
import { evenDrops } from './even-drops.ts';
import type { Infilled, Infills } from './fill-bays.ts';
import type { Incline } from './incline.ts';
import type { Range } from './infill.ts';
import { withLastCourse } from './last-course.ts';
import type { Course } from './layout.ts';
import { coursesOf, type Line } from './lines.ts';
import { goOnBelow, pitchOf } from './more-courses.ts';
import type { PlacedBay } from './posts.ts';
import { isRacked, type Rack, rackedStands } from './racks.ts';

/** How a bay stands over the ground. */
export interface Stand {
  /** The highest ground within it, the posts at its ends included. */
  readonly ground: Ticks;
  /** Bottom and top of what fills it, from the datum. */
  readonly z: Range;
  /** Where it slopes: `z` are the lowest and highest of it then. */
  readonly rack?: Rack;
  /** The lowest edge of its slats, where that follows the ground under a level bay. */
  readonly low?: Incline;
  /** None where a gate hangs. */
  readonly filled?: Held;
}

/** Slat lines of a bay; `back` of its other face, where that has slats too. */
interface Held {
  readonly lines: readonly Line[];
  readonly back?: readonly Line[];
  readonly courses: readonly Course[];
}

/** Every bay over the ground as it is, by number. The infills are laid out for the run's highest ground. */
export function standsOf(
  spec: RunSpec,
  bays: readonly PlacedBay[],
  infills: Infills,
): ReadonlyMap<number, Stand> {
  if (isRacked(spec)) return rackedStands(spec, bays, infills);
  const ref = spec.ground.value;
  const z: Range = [ref + infills.ends.bottom, ref + infills.ends.height];
  const line = groundLine(spec);
  const grounds = bays.map(({ left, right }) =>
    spec.levels ? highestGround(line, left.mark.from, right.mark.to) : ref,
  );
  const stepped = spec.levels && spec.slope?.value === 'in-steps';
  const drops = stepped ? dropsOf(spec, infills, grounds) : [];
  return new Map(
    bays.map((placed, index): [number, Stand] => {
      const infill = infills.of(placed);
      const ground = grounds[index] ?? ref;
      const stand = stepped
        ? lowered(spec, infill, ground, z, drops[index] ?? 0)
        : underLevelTop(spec, infill, infills, ground, z);
      return [placed.bay.number, withLastCourse(spec, placed, stand, infill)];
    }),
  );
}

function lowered(spec: RunSpec, infill: Infilled | undefined, ground: Ticks, z: Range, drop: Ticks): Stand {
  const stand: Stand = { ground, z: [z[0] - drop, z[1] - drop] };
  if (!infill) return stand;
  if (spec.infill.flip.upright) return { ...stand, filled: infill };
  const down = (lines: readonly Line[]) =>
    lines.map((line) => ({ ...line, low: line.low - drop, high: line.high - drop }));
  return { ...stand, filled: changed(infill, down) };
}

function underLevelTop(
  spec: RunSpec,
  infill: Infilled | undefined,
  infills: Infills,
  ground: Ticks,
  z: Range,
): Stand {
  const fall = spec.ground.value - ground;
  const shared = infill ?? infills.all[0];
  const stand: Stand = { ground, z, filled: infill };
  if (!(fall > 0) || !shared) return stand;
  if (spec.infill.flip.upright) {
    // As long as the tape's marks allow, so that tops stay on one line.
    const high = floorToStep(z[1] - z[0] + fall, spec.measure.step);
    return { ...stand, z: [z[1] - high, z[1]] };
  }
  const floor = ground + spec.bottom.value.low;
  const filled = changed(shared, (lines) => goOnBelow(spec.infill, lines, shared.result.chosen, floor));
  if (filled.lines.length + (filled.back?.length ?? 0) === shared.lines.length + (shared.back?.length ?? 0))
    return stand;
  const lowest = Math.min(...[...filled.lines, ...(filled.back ?? [])].map(({ low }) => low));
  return {
    ground,
    z: [lowest - spec.infill.pattern.edgeGap.value, z[1]],
    ...(infill ? { filled } : {}),
  };
}

function changed(infill: Infilled, change: (lines: readonly Line[]) => readonly Line[]): Held {
  const lines = change(infill.lines);
  const back = infill.back && change(infill.back);
  return { lines, ...(back ? { back } : {}), courses: coursesOf(lines, false) };
}

function dropsOf(spec: RunSpec, infills: Infills, grounds: readonly Ticks[]): readonly Ticks[] {
  const own = infills.all[0];
  const falls = grounds.map((ground) => spec.ground.value - ground);
  // Upright slats have no lines to keep; they step by marks of the tape.
  if (spec.infill.flip.upright || !own) return falls.map((fall) => floorToStep(fall, spec.measure.step));
  const pitch = pitchOf(spec.infill, own.lines, own.result.chosen);
  return evenDrops(falls.map((fall) => Math.floor(fall / pitch))).map((pitches) => pitches * pitch);
}
