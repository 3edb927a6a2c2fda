import {
  clipped,
  type Look,
  lookOf,
  type PlaceArea,
  type Sight,
  shadowOf,
  sightOn,
  wallsBefore,
} from '../figures/index.ts';
import {
  convexParts,
  movedSolid,
  type Piece,
  placesOf as placesOnPlan,
  type RunLayout,
  type Solid,
  type Vec3,
} from '../layout/index.ts';
import { type Job, levelAt, type Place, type Viewer } from '../model/index.ts';
import { type Measure, TICKS_PER_MM } from '../units/index.ts';
import { compose } from './compose.ts';
import { letterFor } from './letter.ts';
import { BEHIND_ALL, lineGroup } from './line-group.ts';
import { linePath, outlinePath } from './path-text.ts';
import { pieceGroups } from './piece-groups.ts';
import type { Seen } from './places.ts';
import type { Silhouette } from './project.ts';
import { stackedOutline } from './stacked-outline.ts';
import { titleBlock } from './title-block.ts';
import type { Group, View } from './view.ts';

/** Who looks at what. */
export type Looks = Pick<Job, 'viewers' | 'places'>;

/**
 * Each place as each viewer sees it, from the spot where most of it is seen: pieces in central projection on the
 * place's own plane, so that the place has its true size and what is nearer is larger. The place lies behind
 * all; what of it is left uncovered is what shows.
 */
export function eyeViews(runs: readonly RunLayout[], { viewers, places }: Looks, measure: Measure): View[] {
  if (viewers.length === 0 || places.length === 0) return [];
  const layout = { runs, places: placesOnPlan(runs) };
  return viewers.flatMap((viewer) =>
    places.flatMap((place) => {
      const look = lookOf(layout, viewer, place);
      // With no screen in the way there is nothing to look at.
      if (look === undefined || look === 'apart' || look.sight.ways.past > 0.9999) return [];
      return [drawEye(look, viewer, place, measure)];
    }),
  );
}

function drawEye({ scene, area, sight: worst }: Look, viewer: Viewer, place: Place, measure: Measure): View {
  const key = `%eye/${viewer.name}/${place.name}`;
  const sight = sightOn(area.plane, worst.eye);
  // The plane's x runs to the right for one who looks at it from the front of its run, and to the left from behind.
  const turned = fromBehind(area, worst.eye) ? -1 : 1;
  const sheet: OnSheet = (x, z) => [(turned * x) / TICKS_PER_MM, (0 - z) / TICKS_PER_MM];
  const [x0, z0, x1, z1] = area.window;
  const [left, right] = [x0, x1].map((x) => sheet(x, 0)[0]).sort((a, b) => a - b) as [number, number];
  const [top, low] = [sheet(0, z1)[1], sheet(0, z0)[1]];
  const around = Math.max(right - left, low - top);
  const frame = [left - 0.9 * around, top - 0.6 * around, right + 0.9 * around, low + 0.6 * around] as const;
  const letter = letterFor(frame[2] - frame[0], frame[3] - frame[1]);
  const seen = scene.runs.flatMap(({ run, solids }) =>
    run.pieces.flatMap((piece, at) => {
      const shape = silhouette(aboveGround(piece, run, solids[at] as Solid), sight, worst.eye, sheet, frame);
      return shape ? [{ piece, shape } satisfies Seen] : [];
    }),
  );
  // Behind all pieces, for these stand on the eye's side of the walls, and before the place.
  const walls = scene.runs.flatMap(({ run, walls: met }) =>
    met.flatMap((wall): Group[] => {
      const solids = wallsBefore([wall], worst.eye);
      const outline = stackedOutline(solids.flatMap((solid) => outlineOn(solid, sight, sheet, frame)));
      const name = `${key}/wall-${run.key}-${wall.side}`;
      return outline.length < 6 ? [] : [lineGroup(name, 'trim', outlinePath(outline), BEHIND_ALL - 1)];
    }),
  );
  const percent = (share: number) => `${Math.round(share * 1000) / 10} %`;
  const titles = {
    title: `${place.name} as ${viewer.name} sees it`,
    notes: [`${percent(worst.seen)} of it is seen`, ...(viewer.to ? ['from the worst spot'] : [])],
  };
  const outline = `M${left} ${top}H${right}V${low}H${left}Z`;
  const pieces = {
    groups: [
      lineGroup(`${key}/place`, 'place', outline, BEHIND_ALL),
      ...walls,
      ...pieceGroups(
        seen,
        () => Infinity,
        () => false,
        false,
      ),
      lineGroup(`${key}/edge`, 'hidden', outline, -BEHIND_ALL),
      lineGroup(`${key}/frame`, 'dimension', frameLines(frame), -BEHIND_ALL - 1),
    ],
    labels: [],
    bounds: frame,
  };
  return compose(
    {
      key,
      run: '',
      part: 'eye',
      kind: 'eye',
      title: `${titles.title}: ${titles.notes.join(', ')}`,
      side: viewer.name,
      letter,
    },
    [pieces, titleBlock(key, titles, frame[0], frame[2], frame[3] + 1.4 * letter, measure, letter)],
  );
}

type OnSheet = (x: number, z: number) => readonly [x: number, y: number];
type Frame = readonly [x0: number, y0: number, x1: number, y1: number];

function fromBehind({ plane: { origin, along } }: PlaceArea, eye: Vec3): boolean {
  return along[0] * (eye[1] - origin[1]) - along[1] * (eye[0] - origin[0]) > 0;
}

/** A post without what is buried of it: the ground hides that. */
function aboveGround(piece: Piece, run: RunLayout, solid: Solid): Solid {
  if (piece.role !== 'post') return solid;
  const [x = 0] = piece.solid.vertices[0] ?? [];
  const ground = levelAt(run.groundLine, Math.min(Math.max(Math.round(x), 0), run.spec.length.value));
  return movedSolid(solid, ([east, north, z]) => [east, north, Math.max(z, ground)]);
}

/** A solid's outline on the sheet, cut off at the frame; undefined for what is not in it. */
function silhouette(
  solid: Solid,
  sight: Sight,
  eye: Vec3,
  sheet: OnSheet,
  frame: Frame,
): Silhouette | undefined {
  const away = solid.vertices.map((vertex) =>
    Math.hypot(...vertex.map((value, axis) => value - (eye[axis] as number))),
  );
  const depth = { near: Math.min(...away) / TICKS_PER_MM, far: Math.max(...away) / TICKS_PER_MM };
  const parts = convexParts(solid).flatMap((part) => outlineOn(part, sight, sheet, frame));
  const outline = stackedOutline(parts);
  if (outline.length < 6) return undefined;
  const whole = around(outline, depth);
  return parts.length > 1 ? { ...whole, parts: parts.map((part) => around(part, depth)) } : whole;
}

/** The outline of a convex solid within the frame, as a list of one; an empty one for what is not in it. */
function outlineOn(solid: Solid, sight: Sight, sheet: OnSheet, frame: Frame): readonly (readonly number[])[] {
  const shadow = shadowOf(solid, sight);
  const points: number[] = [];
  for (let i = 0; i < shadow.length; i += 2)
    points.push(...sheet(shadow[i] as number, shadow[i + 1] as number));
  const outline = clipped(points, frame);
  return outline.length < 6 ? [] : [outline];
}

function around(outline: readonly number[], depth: Pick<Silhouette, 'near' | 'far'>): Silhouette {
  const xs = outline.filter((_, i) => i % 2 === 0);
  const ys = outline.filter((_, i) => i % 2 === 1);
  return {
    x0: Math.min(...xs),
    y0: Math.min(...ys),
    x1: Math.max(...xs),
    y1: Math.max(...ys),
    // Corners run clockwise on the sheet, as everywhere in a silhouette.
    outline: isClockwise(outline) ? outline : reversed(outline),
    ...depth,
  };
}

/** With y down. */
function isClockwise(outline: readonly number[]): boolean {
  let area = 0;
  for (let i = 0; i < outline.length; i += 2) {
    const j = (i + 2) % outline.length;
    area +=
      (outline[i] as number) * (outline[j + 1] as number) -
      (outline[j] as number) * (outline[i + 1] as number);
  }
  return area > 0;
}

function reversed(outline: readonly number[]): number[] {
  const points: number[] = [];
  for (let i = outline.length - 2; i >= 0; i -= 2)
    points.push(outline[i] as number, outline[i + 1] as number);
  return points;
}

function frameLines([x0, y0, x1, y1]: Frame): string {
  return (
    linePath(x0, y0, x1, y0) + linePath(x1, y0, x1, y1) + linePath(x1, y1, x0, y1) + linePath(x0, y1, x0, y0)
  );
}
