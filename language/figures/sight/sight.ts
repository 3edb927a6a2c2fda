import { convexParts, type Solid, type Vec3 } from '../../layout/index.ts';
import { coveredArea, type Polygon } from './covered-area.ts';
import type { PlaceArea, Scene } from './scene.ts';
import type { SceneWall } from './scene-walls.ts';
import { shadowOf, sightOn } from './shadow.ts';
import { gatewaysOf, type Way } from './ways.ts';

/** How much of a place is seen from an eye, as shares of its area from 0 to 1. */
export interface PlaceSight {
  readonly eye: Vec3;
  readonly seen: number;
  /** What is seen, by the way the line of sight takes; they sum to `seen`. */
  readonly ways: Readonly<Record<Way, number>>;
}

const NOTHING = { gates: 0, through: 0, over: 0, under: 0, past: 0 };

/**
 * Share of a place that is seen from an eye: its area less what the pieces cover of it as seen from there, by
 * central projection of each piece's solid onto the place's plane and the exact area of their union. A line of
 * sight that meets gates of one run and the top of another counts as the first of gates, through, over, under.
 * The ground at the runs hides too, and so do the walls they begin and end at; the viewer's own floor and the ground elsewhere do not.
 */
export function sightOf(scene: Scene, area: PlaceArea, eye: Vec3): PlaceSight {
  const hiding = shadows(scene, area, eye);
  const size = sizeOf(area);
  if (!hiding || size <= 0) return { eye, seen: 0, ways: NOTHING };
  const { pieces, shadow } = hiding;
  const gateways = gatewaysOf(scene.runs);
  const covered = [...pieces, ...shadow(gateways.ground)];
  let reached = coveredArea(area.window, covered);
  const seen = 1 - reached / size;
  const ways: Record<Way, number> = { ...NOTHING };
  for (const way of ['gates', 'through', 'over', 'under'] as const) {
    covered.push(...shadow(gateways[way]));
    const more = coveredArea(area.window, covered);
    ways[way] = Math.max(0, more - reached) / size;
    reached = more;
  }
  ways.past = Math.max(0, size - reached) / size;
  return { eye, seen: Math.max(0, seen), ways };
}

/** As `sightOf`, the share alone. */
export function seenShare(scene: Scene, area: PlaceArea, eye: Vec3): number {
  const hiding = shadows(scene, area, eye);
  const size = sizeOf(area);
  if (!hiding || size <= 0) return 0;
  const ground = hiding.shadow(gatewaysOf(scene.runs).ground);
  return Math.max(0, 1 - coveredArea(area.window, [...hiding.pieces, ...ground]) / size);
}

const sizeOf = ({ window: [x0, z0, x1, z1] }: PlaceArea): number => (x1 - x0) * (z1 - z0);

/** What pieces cover of a place's plane; undefined for an eye that lies in that plane and so sees nothing of it. */
function shadows(scene: Scene, { plane, window }: PlaceArea, eye: Vec3) {
  const sight = sightOn(plane, eye);
  if (sight.distance <= 0) return undefined;
  const shadow = (solids: readonly Solid[]): Polygon[] =>
    solids.flatMap(convexParts).flatMap((solid) => {
      const polygon = shadowOf(solid, sight);
      return meets(polygon, window) ? [polygon] : [];
    });
  return {
    pieces: scene.runs.flatMap(({ solids, walls }) => [
      ...shadow(solids),
      ...shadow(wallsBefore(walls, eye)),
    ]),
    shadow,
  };
}

/** Of an eye past a wall no one knows where its window is: that wall is left out, so that no more is said to be hidden. */
export function wallsBefore(walls: readonly SceneWall[], eye: Vec3): readonly Solid[] {
  return walls.filter((wall) => !wall.past(eye)).flatMap(({ solids }) => solids);
}

function meets(polygon: Polygon, [x0, y0, x1, y1]: PlaceArea['window']): boolean {
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let i = 0; i < polygon.length; i += 2) {
    const [x, y] = [polygon[i] as number, polygon[i + 1] as number];
    left = Math.min(left, x);
    right = Math.max(right, x);
    low = Math.min(low, y);
    high = Math.max(high, y);
  }
  return left < x1 && right > x0 && low < y1 && high > y0;
}
