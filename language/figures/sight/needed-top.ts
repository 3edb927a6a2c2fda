import type { Vec3 } from '../../layout/index.ts';
import type { PlaceArea, PlacedRun, Scene } from './scene.ts';
import { inPlan } from './scene.ts';

/** How high, from the datum, the top of a run must be so that an eye does not see a place over it. */
export interface NeededTop {
  readonly run: string;
  /** Height from the datum, in ticks. */
  readonly top: number;
}

/**
 * The top that each run crossed by the lines of sight to the upper edge of a place would need: at the run's
 * distance d of D from the eye, the line is at eye + (edge - eye) * d / D (similar triangles). The greatest need.
 */
export function neededTop(scene: Scene, area: PlaceArea, eye: Vec3): NeededTop | undefined {
  const { plane, window } = area;
  let most: NeededTop | undefined;
  for (const x of [window[0], (window[0] + window[2]) / 2, window[2]]) {
    const edge: Vec3 = [
      plane.origin[0] + x * plane.along[0],
      plane.origin[1] + x * plane.along[1],
      window[3],
    ];
    for (const placed of scene.runs) {
      const top = crossing(placed, eye, edge);
      if (top !== undefined && (!most || top > most.top)) most = { run: placed.run.spec.name, top };
    }
  }
  return most;
}

/** Height at which a line crosses the middle of a run's posts, within its length. */
function crossing({ run, frame }: PlacedRun, from: Vec3, to: Vec3): number | undefined {
  const origin = inPlan(frame, [0, 0, 0]);
  const along = inPlan({ ...frame, origin: [0, 0, 0] }, [1, 0, 0]);
  const back = inPlan({ ...frame, origin: [0, 0, 0] }, [0, 1, 0]);
  const local = (point: Vec3, axis: Vec3) =>
    (point[0] - origin[0]) * axis[0] + (point[1] - origin[1]) * axis[1];
  const [a, b] = [local(from, back), local(to, back)];
  if (a > 0 === b > 0 || a === b) return undefined;
  const t = a / (a - b);
  const station = local(from, along) + t * (local(to, along) - local(from, along));
  if (station < 0 || station > run.spec.length.value) return undefined;
  return from[2] + t * (to[2] - from[2]);
}
