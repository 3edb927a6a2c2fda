import type { Layout, RunLayout } from '../../layout/index.ts';
import type { Place, Viewer } from '../../model/index.ts';
import { areaOf, eyesOf, type PlaceArea, type Scene, sceneOf } from './scene.ts';
import { type WorstSight, worstSight } from './worst-sight.ts';

/** A viewer looking at a place: what stands between, the area looked at, and the most that is seen of it. */
export interface Look {
  readonly scene: Scene;
  readonly area: PlaceArea;
  readonly sight: WorstSight;
}

interface Remembered {
  readonly asked: string;
  readonly runs: readonly RunLayout[];
  readonly look: Look | 'apart' | undefined;
}

/**
 * By the first run of a layout and the names of viewer and place, as they were asked last; forgotten with the run.
 * What is edited takes the place of what was.
 */
const remembered = new WeakMap<RunLayout, Map<string, Remembered>>();

/**
 * What a viewer sees of a place at worst. Undefined when a run they stand beside cannot be laid out; `apart` when
 * they stand beside runs whose places to one another are not known. Findings, workings and pictures ask for the
 * same look, so it is worked out once for each state of the runs.
 */
export function lookOf(
  layout: Pick<Layout, 'runs' | 'places'>,
  viewer: Viewer,
  place: Place,
): Look | 'apart' | undefined {
  const { runs, places } = layout;
  const [first] = runs;
  if (!first) return undefined;
  const asked = JSON.stringify([viewer, place, [...places]]);
  const key = JSON.stringify([viewer.name, place.name]);
  const table = remembered.get(first) ?? new Map<string, Remembered>();
  remembered.set(first, table);
  const held = table.get(key);
  if (
    held?.asked === asked &&
    held.runs.length === runs.length &&
    held.runs.every((run, at) => run === runs[at])
  )
    return held.look;
  const look = looked(layout, viewer, place);
  table.delete(key);
  table.set(key, { asked, runs, look });
  // Names that are typed leave one entry a key; the oldest goes.
  const [oldest] = table.keys();
  if (oldest !== undefined && table.size > MOST_HELD) table.delete(oldest);
  return look;
}

/** More looks of one state than jobs have. */
const MOST_HELD = 400;

function looked(
  layout: Pick<Layout, 'runs' | 'places'>,
  viewer: Viewer,
  place: Place,
): Look | 'apart' | undefined {
  const scene = sceneOf(layout, [viewer.at.run, ...(viewer.to ? [viewer.to.run] : []), place.at.run]);
  if (scene === undefined || scene === 'apart') return scene;
  const area = areaOf(scene, place);
  const sight = area && worstSight(scene, area, eyesOf(scene, viewer));
  return area && sight ? { scene, area, sight } : undefined;
}
