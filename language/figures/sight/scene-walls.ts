import {
  type Frame,
  movedSolid,
  type RunLayout,
  type Solid,
  toPlan,
  type Vec3,
  type WallFace,
  wallAt,
  wallBetween,
} from '../../layout/index.ts';
import { FAR } from './far.ts';

/** A wall at an end of a run, in plan coordinates; it hides what lies past it. */
export interface SceneWall {
  readonly solids: readonly Solid[];
  readonly side: WallFace['side'];
  /** The station of its face where that is farthest from the run. */
  readonly farthest: number;
  /** Whether a point is past its face: in the house, or beside it where the wall is not. */
  past(point: Vec3): boolean;
}

/**
 * The walls of a run as they are seen: square to the run, going on to both sides and up and down as far as anyone
 * looks. They follow what was measured over the height of the run; above and below that they are taken as plumb.
 */
export function sceneWalls(run: RunLayout, frame: Frame): readonly SceneWall[] {
  return run.walls.map((face) => sceneWall(run, face, frame));
}

function sceneWall(run: RunLayout, face: WallFace, frame: Frame): SceneWall {
  const low = Math.min(...run.groundLine.map(({ z }) => z));
  const high = Math.max(run.postTop, low + 1);
  const measured = wallBetween(face, low, high);
  const line = [[wallAt(face, low), -FAR], ...measured, [wallAt(face, high), FAR]] as readonly (readonly [
    number,
    number,
  ])[];
  const deep = face.plumb - face.inward * FAR;
  const ring = ([x, z]: readonly [number, number]): Vec3[] => [
    [x, -FAR, z],
    [x, FAR, z],
    [deep, FAR, z],
    [deep, -FAR, z],
  ];
  const placed = (at: Vec3): Vec3 => {
    const [east, north] = toPlan(frame, at[0], at[1]);
    return [east, north, at[2]];
  };
  const solids = line.slice(1).map((to, i) => {
    const from = line[i] ?? to;
    return movedSolid({ vertices: [...ring(from), ...ring(to)] }, placed);
  });
  const [zero, one] = [placed([0, 0, 0]), placed([1, 0, 0])];
  const past = (point: Vec3): boolean => {
    const x = (point[0] - zero[0]) * (one[0] - zero[0]) + (point[1] - zero[1]) * (one[1] - zero[1]);
    return face.inward * (x - wallAt(face, Math.min(Math.max(point[2], low), high))) < 0;
  };
  const stations = measured.map(([x]) => face.inward * x);
  return { solids, side: face.side, farthest: face.inward * Math.min(...stations), past };
}
