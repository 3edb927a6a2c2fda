import { groundLine, levelAt, type RunSpec, type WallProfile, type WallSide } from '../model/index.ts';
import type { Ticks } from '../units/index.ts';
import type { WallFace } from './layout.ts';

/** A point seen from the front: station, and height from the datum. */
export type WallPlace = readonly [x: number, z: number];

/**
 * The walls a run begins and ends at. They stand where they do whatever was measured of the run: off the end posts
 * as planned.
 *
 * @param stated the run as planned
 */
export function wallsOf(stated: RunSpec): readonly WallFace[] {
  const { walls } = stated;
  if (!walls) return [];
  const line = groundLine(stated);
  const length = stated.length.value;
  const sides: readonly WallSide[] = ['start', 'end'];
  return sides.flatMap((side): WallFace[] => {
    const spec = walls[side];
    if (!spec) return [];
    const first = side === 'start';
    return [
      {
        side,
        spec,
        plumb: first ? -spec.off.value : length + spec.off.value,
        inward: first ? 1 : -1,
        ground: levelAt(line, first ? 0 : length),
      },
    ];
  });
}

/** Station of the wall's face at a height from the datum. */
export function wallAt({ spec, plumb, inward, ground }: WallFace, z: number): number {
  return plumb + inward * towardAt(spec.profile, z - ground);
}

/** The wall's face from one height to a greater one, with every bend between; from below. */
export function wallBetween(face: WallFace, low: number, high: number): readonly WallPlace[] {
  const bends = bendsOf(face).filter((z) => z > low && z < high);
  return [low, ...bends, high].map((z): WallPlace => [wallAt(face, z), z]);
}

/** Heights from the datum at which the wall was measured, ascending; none of one that leans or is plumb. */
export function bendsOf({ spec: { profile }, ground }: WallFace): readonly number[] {
  return profile?.kind === 'points' ? profile.points.map(({ height }) => ground + height) : [];
}

/** How far the wall is off its plumb line toward the run, at a height above the ground there. */
function towardAt(profile: WallProfile | undefined, height: number): Ticks {
  if (!profile) return 0;
  if (profile.kind === 'leans') return (profile.by * height) / profile.over;
  const { points } = profile;
  const after = points.findIndex((point) => point.height >= height);
  const [right, left] = [points[after], points[after - 1]];
  if (!right) return points.at(-1)?.toward ?? 0;
  if (!left) return right.toward;
  return left.toward + ((right.toward - left.toward) * (height - left.height)) / (right.height - left.height);
}
