import type { Solid, Vec3 } from '../../layout/index.ts';
import { type Frame, type Layout, movedSolid, type RunLayout, toPlan } from '../../layout/index.ts';
import { levelAt, type Place, type Spot, type Viewer } from '../../model/index.ts';
import { type SceneWall, sceneWalls } from './scene-walls.ts';

/** A run where it stands, with its solids in plan coordinates: east and north of the datum point, and up, in ticks. */
export interface PlacedRun {
  readonly run: RunLayout;
  readonly frame: Frame;
  readonly solids: readonly Solid[];
  /** The walls it begins and ends at. */
  readonly walls: readonly SceneWall[];
}

/** Runs whose places to one another are known, that a viewer and a place stand beside. */
export interface Scene {
  readonly runs: readonly PlacedRun[];
}

/** Where a run stands that has no place: at the datum point, its stations going east. */
const ALONE: Frame = { origin: [0, 0, 0], bearing: 90 };

/**
 * What stands between a viewer and a place. Undefined when a run they stand beside cannot be laid out, or, `apart`,
 * when they stand beside runs whose places to one another are not known.
 */
export function sceneOf(
  layout: Pick<Layout, 'runs' | 'places'>,
  names: readonly string[],
): Scene | 'apart' | undefined {
  const beside = new Set(names);
  const named = layout.runs.filter(({ spec }) => beside.has(spec.name));
  if (named.length < beside.size || named.some(({ sound }) => !sound)) return undefined;
  const [only] = named;
  if (only && named.length === 1 && !layout.places.has(only.key)) return { runs: [placedRun(only, ALONE)] };
  if (named.some(({ key }) => !layout.places.has(key))) return 'apart';
  return {
    runs: layout.runs.flatMap((run) => {
      const frame = layout.places.get(run.key);
      return frame && run.sound ? [placedRun(run, frame)] : [];
    }),
  };
}

const placed = new WeakMap<RunLayout, PlacedRun>();

/** A run's solids taken to the plan; remembered as long as its place is the same. */
export function placedRun(run: RunLayout, frame: Frame): PlacedRun {
  const held = placed.get(run);
  if (held && sameFrame(held.frame, frame)) return held;
  const solids = run.pieces.map(({ solid }) => movedSolid(solid, (at) => inPlan(frame, at)));
  const made = { run, frame, solids, walls: sceneWalls(run, frame) };
  placed.set(run, made);
  return made;
}

const sameFrame = (a: Frame, b: Frame): boolean =>
  a.bearing === b.bearing && a.origin.every((value, axis) => value === b.origin[axis]);

/** A point of a run's frame in plan coordinates. */
export function inPlan(frame: Frame, [x, y, z]: Vec3): Vec3 {
  const [east, north] = toPlan(frame, x, y);
  return [east, north, z];
}

/** The spot's place on the plan, at a height from the datum. */
function spotIn(scene: Scene, spot: Spot, z: (run: RunLayout) => number): Vec3 | undefined {
  const beside = scene.runs.find(({ run }) => run.spec.name === spot.run);
  return beside && inPlan(beside.frame, [spot.along, spot.off, z(beside.run)]);
}

/** Level of the floor at a spot: as stated, or the ground of the run there. */
const floorAt =
  (spot: Spot, floor: { readonly value: number } | undefined) =>
  (run: RunLayout): number =>
    floor?.value ?? levelAt(run.groundLine, Math.min(Math.max(spot.along, 0), run.spec.length.value));

/** Where a viewer's eye is: one point, or the two ends of the stretch walked. */
export function eyesOf(scene: Scene, { at, to, eye, floor }: Viewer): readonly Vec3[] {
  return [at, ...(to ? [to] : [])].flatMap((spot) => {
    const level = floorAt(spot, floor);
    return [spotIn(scene, spot, (run) => level(run) + eye.value)].filter((point) => point !== undefined);
  });
}

/** The area of a place: where its middle stands, which way it lies, and what it covers of that upright plane. */
export interface PlaceArea {
  readonly plane: { readonly origin: Vec3; readonly along: readonly [number, number] };
  /** Along the plane from its origin, and up from the datum. */
  readonly window: readonly [x0: number, z0: number, x1: number, z1: number];
}

export function areaOf(scene: Scene, { at, width, heights, floor }: Place): PlaceArea | undefined {
  const beside = scene.runs.find(({ run }) => run.spec.name === at.run);
  if (!beside) return undefined;
  const origin = inPlan(beside.frame, [at.along, at.off, 0]);
  const [east, north] = inPlan({ ...beside.frame, origin: [0, 0, 0] }, [1, 0, 0]);
  const level = floorAt(at, floor)(beside.run);
  const half = width.value / 2;
  return {
    plane: { origin, along: [east, north] },
    window: [-half, level + heights.value.low, half, level + heights.value.high],
  };
}
