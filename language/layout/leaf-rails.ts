import { type GateSpec, type Origin, type Problem, standsBetween } from '../model/index.ts';
import { floorToStep, formatLength, type Measure, type Ticks } from '../units/index.ts';
import type { Range } from './infill.ts';
import type { Course } from './layout.ts';
import { geometryProblem } from './problems.ts';

/** Which rail of a leaf; middle ones are numbered from the top. */
export type RailName = 'top' | 'bottom' | `middle-${number}`;

export interface LeafRail {
  readonly name: RailName;
  readonly z: Range;
}

/** The clear space between two neighboring rails of a leaf. */
export interface Pane {
  readonly z: Range;
  readonly above: RailName;
  readonly below: RailName;
}

/** Where a leaf is, for its rails. */
export interface RailPlace {
  readonly gate: GateSpec;
  readonly z: Range;
  /** The ground that heights are above. */
  readonly ground: Ticks;
  /** Level courses of the bay beside the gate. */
  readonly courses: readonly Course[];
  readonly measure: Measure;
}

/** The rails of a leaf from the top down. A middle rail that cannot be where it is stated is told and left out. */
export function leafRails(place: RailPlace): { rails: readonly LeafRail[]; problems: readonly Problem[] } {
  const { gate, z } = place;
  const width = gate.frame.value.width.value;
  const rails: Range[] = [
    [z[1] - width, z[1]],
    [z[0], z[0] + width],
  ];
  const problems: Problem[] = [];
  const asked = gate.rails ? wanted(place, width) : [];
  const tell = (at: Asked, why: 'outside' | 'meets' | 'no-course' | 'between') =>
    problems.push(geometryProblem('rail-misplaced', at.origin, { gate: gate.name, rail: at.shown, why }));
  for (const at of asked) {
    const { low } = at;
    if (standsBetween(gate.infill.mounting.value)) {
      tell(at, 'between');
      break;
    }
    if (low === undefined) tell(at, 'no-course');
    else if (low < z[0] + width || low + width > z[1] - width) tell(at, 'outside');
    else if (rails.some(([from, to]) => low < to && low + width > from)) tell(at, 'meets');
    else rails.push([low, low + width]);
  }
  rails.sort((a, b) => b[1] - a[1]);
  const nameOf = (index: number): RailName =>
    index === 0 ? 'top' : index === rails.length - 1 ? 'bottom' : `middle-${index}`;
  return { rails: rails.map((range, index) => ({ name: nameOf(index), z: range })), problems };
}

/** The spaces between rails, from the top down. */
export function panesOf(rails: readonly LeafRail[]): readonly Pane[] {
  return rails.slice(1).flatMap((below, index): Pane[] => {
    const above = rails[index];
    return above ? [{ z: [below.z[1], above.z[0]], above: above.name, below: below.name }] : [];
  });
}

interface Asked {
  /** Lower edge; missing where there is no such course. */
  readonly low?: Ticks;
  readonly shown: string;
  readonly origin: Origin;
}

function wanted({ gate, z, ground, courses, measure }: RailPlace, width: Ticks): readonly Asked[] {
  if (!gate.rails) return [];
  const { value: rails, origin } = gate.rails;
  const shown = (ticks: Ticks) => formatLength(ticks, measure);
  const around = (middle: Ticks): Ticks => Math.round(middle - width / 2);
  switch (rails.kind) {
    case 'count': {
      // Lower edges at equal distances, on marks of the tape from the bottom of the leaf.
      const apart = (z[1] - z[0] - width) / (rails.count - 1);
      return Array.from({ length: rails.count - 2 }, (_, index) => {
        const up = floorToStep((index + 1) * apart, measure.step);
        return { low: z[0] + up, shown: shown(z[0] + up - ground), origin };
      });
    }
    case 'at':
      return rails.heights.map((height) => ({
        low: ground + around(height.value),
        shown: shown(height.value),
        origin,
      }));
    case 'courses':
      return rails.courses.map((number) => {
        const course = courses.find((one) => one.number === number);
        const low = course && around((course.start + course.end) / 2);
        return { ...(low === undefined ? {} : { low }), shown: `course ${number}`, origin };
      });
  }
}
