import type { RunSpec } from '../model/index.ts';
import type { Ticks } from '../units/index.ts';
import { roomOf } from './as-built.ts';
import { spellName } from './fit/index.ts';
import { chosenIn, type Filled, fillPlace, type Place } from './fit-infill.ts';
import type { Bay, Course, FitChoice } from './layout.ts';
import { coursesOf, type Line } from './lines.ts';
import { fillLines, type GivenLines } from './lines-as.ts';
import { isAsBuilt } from './planned-spec.ts';
import type { PlacedBay, PlacedPosts } from './posts.ts';

/** What fills a bay. */
export interface Infilled extends Filled {
  readonly courses: readonly Course[];
}

/** What fills the bays of a run. */
export interface Infills {
  readonly all: readonly Infilled[];
  of(bay: PlacedBay): Infilled | undefined;
  /** Above ground, as built. */
  readonly ends: { readonly bottom: Ticks; readonly height: Ticks };
}

/** Level: one infill for all bays, on the same lines, those of another run where they are given. Upright: one for each clear width that occurs. */
export function fillBays(spec: RunSpec, { bays }: PlacedPosts, given?: GivenLines): Infills {
  const { infill, height, bottom } = spec;
  const ends = { bottom: bottom.value, height: height.value };
  const { upright } = infill.flip;
  const shared = sharedPlace(spec);
  const line = bays.filter(({ gate }) => !gate);
  if (!upright) {
    const numbers = line.map(({ bay }) => bay.number);
    const goneOn = given && fillLines(spec, given, numbers);
    const level = withCourses(
      goneOn ??
        fillPlace({
          ...shared,
          bays: numbers,
          space: ends.height.high - ends.bottom.low,
          edge: spec.ground.value + ends.height.high,
          ends,
        }),
      false,
    );
    return { all: line.length > 0 ? [level] : [], of: ({ gate }) => (gate ? undefined : level), ends: level };
  }
  const fitted = new Map<number, Infilled>();
  const all: Infilled[] = [];
  for (const { alike, space } of bySpace(line.map(({ bay }) => bay))) {
    const first = fillPlace({ ...shared, bays: alike.map(({ number }) => number), space, edge: 0 });
    all.push(withCourses(first, true));
    for (const bay of alike) fitted.set(bay.number, withCourses(movedBy(first, roomOf(bay)[0]), true));
  }
  return {
    all,
    of: ({ bay }) => fitted.get(bay.number),
    ends: { bottom: ends.bottom.low, height: ends.height.high },
  };
}

/** How an upright pattern closes in each of some bays, where it does. */
export function closeUpright(
  spec: RunSpec,
  bays: readonly Bay[],
): ReadonlyMap<number, FitChoice | undefined> {
  return new Map(
    bySpace(bays).flatMap(({ alike, space }) => {
      const choice = chosenIn({ ...sharedPlace(spec), bays: [], space, edge: 0 });
      return alike.map(({ number }): [number, FitChoice | undefined] => [number, choice]);
    }),
  );
}

function bySpace(bays: readonly Bay[]): { readonly alike: readonly Bay[]; readonly space: Ticks }[] {
  return [...new Set(bays.map(clearOf))].map((space) => ({
    alike: bays.filter((bay) => clearOf(bay) === space),
    space,
  }));
}

function sharedPlace(spec: RunSpec) {
  const { infill, measure } = spec;
  return { infill, measure, besideNominal: false, ...whereStated(spec) };
}

function clearOf(bay: Bay): Ticks {
  const [from, to] = roomOf(bay);
  return to - from;
}

/**
 * Where a fit and the ends are stated anew. Once something was measured that is with what was measured, so that the
 * plan stays as it was.
 */
export function whereStated(spec: RunSpec): Pick<Place, 'block' | 'opens' | 'bottom' | 'height'> {
  const { origin, bottom, height, measured, name } = spec;
  const ends = { bottom: bottom.origin, height: height.origin };
  if (!isAsBuilt(spec)) return { block: origin, ...ends };
  if (measured) return { block: measured.origin, ...ends };
  return { block: { ...origin, path: '' }, opens: `measured ${spellName(name)}`, ...ends };
}

function withCourses(filled: Filled, upright: boolean): Infilled {
  return { ...filled, courses: coursesOf(filled.lines, upright) };
}

function movedBy(filled: Filled, by: Ticks): Filled {
  const moved = (lines: readonly Line[]) =>
    lines.map((line) => ({ ...line, low: line.low + by, high: line.high + by }));
  return { ...filled, lines: moved(filled.lines), ...(filled.back ? { back: moved(filled.back) } : {}) };
}
