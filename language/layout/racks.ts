import { groundLine, highestGround, type Problem, type RunSpec } from '../model/index.ts';
import { ceilToStep, formatLength, type Ticks } from '../units/index.ts';
import type { Infills } from './fill-bays.ts';
import type { Stand } from './follow-ground.ts';
import { roomBetween } from './holds.ts';
import { groundAbove, type Incline, inclineThrough, raised, reachOfIncline } from './incline.ts';
import { type Racking, slopedOver } from './make-racked.ts';
import { middleOf, type PlacedBay, type PlacedPost } from './posts.ts';
import { geometryProblem } from './problems.ts';

/** Along a racked bay, by the bottom and the top of its infill: two lines alike but for their height. */
export interface Rack {
  readonly bottom: Incline;
  readonly top: Incline;
}

/**
 * Bays whose rails slope with the ground. At the middle of each post stands a mark, above the ground there; the
 * lines of a bay go straight from mark to mark, so that those of neighbors meet at the post between them. Where the
 * ground rises over the straight line within a bay, the marks at both its ends are raised by so much: nothing comes
 * nearer to the ground than the bottom stated.
 *
 * A gate's leaf stays square and level, with its top on the line at its higher post (common practice: a leaf out of
 * square binds, and swings into rising ground).
 */
export function rackedStands(
  spec: RunSpec,
  bays: readonly PlacedBay[],
  infills: Infills,
): ReadonlyMap<number, Stand> {
  const marks = marksOf(spec, bays);
  const { bottom, height } = infills.ends;
  const line = groundLine(spec);
  return new Map(
    bays.map((placed): [number, Stand] => {
      const { bay, left, right, gate } = placed;
      const ends = [left, right].map((post) => marks.get(post) ?? spec.ground.value);
      if (gate) {
        const ground = Math.max(...ends, highestGround(line, bay.from, bay.to));
        return [bay.number, { ground, z: [ground + bottom, ground + height] }];
      }
      const marked = inclineThrough([middleOf(left), middleOf(right)], [ends[0] ?? 0, ends[1] ?? 0]);
      const rack: Rack = { bottom: raised(marked, bottom), top: raised(marked, height) };
      const low = Math.floor(reachOfIncline(rack.bottom, bay.from, bay.to)[0]);
      const high = Math.ceil(reachOfIncline(rack.top, bay.from, bay.to)[1]);
      const ground = highestGround(line, left.mark.from, right.mark.to);
      return [bay.number, { ground, z: [low, high], rack, filled: infills.of(placed) }];
    }),
  );
}

/** Whether its bays are racked: asked for, and on ground that is not level. */
export function isRacked({ levels, slope }: Pick<RunSpec, 'levels' | 'slope'>): boolean {
  return levels !== undefined && slope?.value === 'racked';
}

/** The slope of a racked bay, by the mark at its left post. */
export function rackingOf({ bottom }: Rack): Racking {
  return { at: bottom.at, rise: bottom.rise };
}

/** Bays so steep that their rails leave slats no length. */
export function rackProblems(spec: RunSpec, stands: ReadonlyMap<number, Stand>): readonly Problem[] {
  const { rail, infill, measure } = spec;
  const racks = [...stands.values()].flatMap(({ rack }) => rack ?? []);
  const rise = Math.max(0, ...racks.map(({ bottom }) => Math.abs(bottom.rise)));
  const [first] = racks;
  if (!rail || !first) return [];
  const over = slopedOver(rise);
  const cleats = infill.mounting.value.kind === 'between' ? roomBetween(infill) : 1;
  const needs = Math.ceil((2 * rail.value.width.value + cleats) * over);
  const room = first.top.z - first.bottom.z;
  if (room >= needs) return [];
  const shown = (ticks: Ticks) => formatLength(ticks, measure);
  return [
    geometryProblem('too-low-for-rails', spec.height.origin, { height: shown(room), needs: shown(needs) }),
  ];
}

/** Height of the mark at each post, from the datum: the ground there, or as much higher as its bays need; a mark of the tape. */
function marksOf(spec: RunSpec, bays: readonly PlacedBay[]): ReadonlyMap<PlacedPost, Ticks> {
  const line = groundLine(spec);
  const at = (post: PlacedPost) => highestGround(line, middleOf(post), middleOf(post));
  const raises = new Map<PlacedPost, number>();
  for (const { bay, left, right, gate } of bays) {
    const straight = inclineThrough([middleOf(left), middleOf(right)], [at(left), at(right)]);
    const raise = gate ? 0 : Math.max(0, groundAbove(line, straight, bay.from, bay.to));
    for (const post of [left, right]) raises.set(post, Math.max(raise, raises.get(post) ?? 0));
  }
  // A millionth of a tick is what floats may lose, and no reason for another mark.
  const up = (z: number) => ceilToStep(z - 1e-6, spec.measure.step);
  return new Map([...raises].map(([post, raise]) => [post, up(at(post) + raise)]));
}
