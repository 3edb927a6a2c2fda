import type { GateSpec, MeasuredBay, Problem, RunSpec } from '../model/index.ts';
import type { Ticks } from '../units/index.ts';
import { type Edge, straightEdge } from './edge.ts';
import type { Stand } from './follow-ground.ts';
import type { Range } from './infill.ts';
import type { Bay, PostLean } from './layout.ts';
import { type MeasuresNow, measuresNow } from './measures-now.ts';
import type { PlacedBay, PlacedPost, PlacedPosts } from './posts.ts';

/** A run as it stands: its spec with the length and the openings that were measured, and its posts. */
export interface AsBuilt {
  readonly spec: RunSpec;
  readonly placed: PlacedPosts;
  /** Measures that are of no bay there is now. */
  readonly problems: readonly Problem[];
}

/**
 * Moves posts to where they stand. Marks are chained from the first post: the next begins where the one before
 * ends and the clear at the middle height is over; a bay that is not measured keeps its planned clear, so that
 * the last post moves.
 *
 * What a bay is wider at the top than at the bottom is how much more its right post leans than its left one. So
 * measured bays that follow one another settle how their posts lean but for one lean common to all, which is
 * taken from those whose lean is stated, on the average, or else to be nothing on the average; for one bay alone
 * that shares its difference half and half. Other posts lean as stated, or are plumb.
 *
 * @param stands bays over the ground as planned: at the top, middle and bottom of these they were measured
 * @param z bottom and top of the run's infill; marks are those at its middle
 */
export function asBuilt(
  spec: RunSpec,
  placed: PlacedPosts,
  stands: ReadonlyMap<number, Stand>,
  z: Range,
): AsBuilt {
  const now = measuresNow(spec, placed, stands);
  const applied = now.bays;
  const heights = (number: number): Edge['z'] => {
    const [low, high] = stands.get(number)?.z ?? z;
    return [low, (low + high) / 2, high];
  };
  const slopes = slopesOf(now, placed, heights);
  const level = (z[0] + z[1]) / 2;
  const after = new Map(placed.bays.map((bay) => [bay.left, bay]));

  const posts: PlacedPost[] = [];
  const bays: PlacedBay[] = [];
  for (const [index, planned] of placed.posts.entries()) {
    const before = placed.posts[index - 1];
    const left = posts.at(-1);
    const bay = before && after.get(before);
    const slope = slopes[index] ?? 0;
    const beside = slopes[index - 1] ?? 0;
    const measured = bay && applied.get(bay.bay.number);
    const tall = bay && heights(bay.bay.number);
    const clear =
      bay && tall && (measured || slope !== beside)
        ? (measured?.middle ?? bay.bay.clear) + (beside - slope) * (tall[1] - level)
        : bay?.bay.clear;
    const from = left ? left.mark.to + Math.round(clear ?? 0) : planned.mark.from;
    const moved = movedTo(planned, from, slope, level, bowOf(placed, planned, applied));
    const { off } = now.posts.get(planned.mark.number) ?? {};
    const post = off && !planned.corner?.borrowed ? { ...moved, off } : moved;
    posts.push(post);
    if (left && bay && tall)
      bays.push(builtBay(bay, left, post, measured && bendOf(measured), tall, [beside, slope]));
  }
  const last = posts.at(-1)?.mark.to ?? spec.length.value;
  const gates = spec.gates.map((gate) => builtGate(gate, bays));
  const length = { value: last, origin: last === spec.length.value ? spec.length.origin : measuredAt(spec) };
  const built = { ...spec, length, gates };
  const hung = bays.map((bay) => {
    const gate = bay.gate && gates.find(({ name }) => name === bay.gate?.name);
    return gate ? { ...bay, gate } : bay;
  });
  return { spec: built, placed: { ...placed, posts, bays: hung }, problems: now.problems };
}

/** The rectangle of a bay between its posts, wherever they lean. */
export function roomOf({ inner, from, to }: Bay): Range {
  return inner ?? [from, to];
}

function measuredAt({ length, measured }: RunSpec): RunSpec['length']['origin'] {
  return measured ? { ...measured.origin, why: 'derived' } : length.origin;
}

/** How much each post leans, along the run for one tick up. */
function slopesOf(
  { bays: applied, posts: stated }: MeasuresNow,
  { posts, bays }: PlacedPosts,
  heights: (number: number) => Edge['z'],
): readonly number[] {
  const after = new Map(bays.map((bay) => [bay.left, bay]));
  const slopes: number[] = [];
  let group: { post: PlacedPost; more: number }[] = [];
  const leanOf = ({ mark, corner }: PlacedPost) =>
    corner?.borrowed ? undefined : stated.get(mark.number)?.slope;
  const settle = () => {
    // A post that another run makes is plumb here.
    const fixed = group.filter(({ post }) => post.corner?.borrowed);
    const known = group.filter(({ post }) => leanOf(post) !== undefined);
    const [by] = [fixed, known, group].filter((some) => some.length > 0);
    const sum = (by ?? []).reduce((all, { post, more }) => all + more - (leanOf(post) ?? 0), 0);
    const common = sum / (by?.length ?? 1);
    for (const { more } of group) slopes.push(more - common);
  };
  for (const [index, post] of posts.entries()) {
    const before = posts[index - 1];
    const bay = before && after.get(before);
    const measured = bay && applied.get(bay.bay.number);
    const last = group.at(-1);
    if (last && bay && measured?.ends) {
      const { top, bottom } = measured.ends;
      const [low, , high] = heights(bay.bay.number);
      group.push({ post, more: last.more + (top - bottom) / (high - low) });
    } else if (last && !bay) group.push({ post, more: last.more });
    else {
      if (group.length > 0) settle();
      group = [{ post, more: 0 }];
    }
  }
  if (group.length > 0) settle();
  return slopes;
}

/** How much wider a bay is at the middle than halfway between its top and its bottom, the other way round. */
const bendOf = ({ ends, middle }: MeasuredBay): number => (ends ? (ends.top + ends.bottom) / 2 - middle : 0);

function bowOf({ bays }: PlacedPosts, post: PlacedPost, applied: ReadonlyMap<number, MeasuredBay>): number {
  const bends = bays
    .filter(({ left, right }) => left === post || right === post)
    .flatMap(({ bay }) => applied.get(bay.number) ?? [])
    .map((measured) => Math.abs(bendOf(measured)));
  return Math.max(0, ...bends) / 2;
}

function movedTo(post: PlacedPost, from: Ticks, slope: number, level: number, bow: number): PlacedPost {
  const { mark, corner } = post;
  const along = mark.to - mark.from;
  const by = from - mark.from;
  const lean: PostLean | undefined =
    slope === 0 && bow === 0
      ? undefined
      : {
          slope,
          pivot: [from + along / 2, level],
          // Turned, its width along the run is a little more than square to it.
          slack: bow + along * (Math.hypot(1, slope) - 1),
        };
  const end = corner?.end && { ...corner.end, at: corner.end.at + by };
  return {
    ...post,
    mark: { ...mark, from, to: from + along },
    ...(corner ? { corner: { ...corner, ...(end ? { end } : {}) } } : {}),
    ...(lean ? { lean } : {}),
  };
}

function builtBay(
  planned: PlacedBay,
  left: PlacedPost,
  right: PlacedPost,
  bend: number | undefined,
  z: Edge['z'],
  [leftSlope, rightSlope]: readonly [number, number],
): PlacedBay {
  const [from, to] = [left.mark.to, right.mark.from];
  const bay: Bay = { ...planned.bay, from, to, clear: to - from };
  const by = (bend ?? 0) / 2;
  if (leftSlope === 0 && rightSlope === 0 && by === 0) return { ...planned, bay, left, right };
  const level = left.lean?.pivot[1] ?? right.lean?.pivot[1] ?? z[1];
  const bent = ({ x }: Edge, more: number): Edge => ({ z, x: [x[0] + more, x[1], x[2] + more] });
  const faces = {
    left: bent(straightEdge(z, [from, level], leftSlope), -by),
    right: bent(straightEdge(z, [to, level], rightSlope), by),
  };
  const inner = [Math.ceil(Math.max(...faces.left.x)), Math.floor(Math.min(...faces.right.x))] as const;
  return { ...planned, bay: { ...bay, inner }, left, right, faces };
}

/** A leaf is made for the smallest opening. */
function builtGate(gate: GateSpec, bays: readonly PlacedBay[]): GateSpec {
  const own = bays.find((bay) => bay.gate?.name === gate.name);
  if (!own) return gate;
  const [from, to] = roomOf(own.bay);
  const opening = { ...gate.opening, value: to - from };
  return { ...gate, opening, station: { ...gate.station, value: from } };
}
