import { type Leaf, levelFace, type PostMark, type RunLayout } from '../layout/index.ts';
import { faceToward } from '../model/index.ts';
import type { Ticks } from '../units/index.ts';
import { DECK_SHOWN } from './deck-marks.ts';
import type { At, PlanAxes } from './plan-axes.ts';
import { stairsReach } from './stair-marks.ts';

/** A side of a run on the plan: 1 is its back, -1 its front. */
type Side = 1 | -1;

/**
 * The side that a run's dimensions stand on: outside the sharper turn, where nothing else of the runs is. A run that
 * none is joined to has them at its front, or at its back where gates open to the front alone
 * or stairs go down there.
 */
export function outward(run: RunLayout): Side {
  const { start, end, bridge, bridged } = run.joints;
  const [before, after] = [start?.turn ?? 0, end?.turn ?? 0];
  const turn = Math.abs(before) > Math.abs(after) ? before : after;
  if (turn !== 0) return turn < 0 ? 1 : -1;
  if (start || end || bridge || bridged || run.spec.placement?.kind === 'on') return -1;
  // Past the foot of stairs, so that numbers of posts are beside these.
  if (run.spec.deck?.stairs) return 1;
  const swings = run.leaves.flatMap((leaf) => opensToward(run, leaf) ?? []);
  return swings.length > 0 && swings.every((side) => side === -1) ? 1 : -1;
}

/**
 * The side a leaf opens to: that which the run is seen from when that is the name it opens to, the other for any other
 * name; undefined where none is stated.
 */
export function opensToward(run: RunLayout, leaf: Leaf): Side | undefined {
  const to = leaf.spec.opensTo?.value;
  if (to === undefined) return undefined;
  return faceToward(run.spec.seenFrom.value, to) === 'front' ? -1 : 1;
}

/** How far slats, posts and what is shown of a deck stand off the middle of the run, on one side. */
export function reachOf(run: RunLayout, out: Side): Ticks {
  const slats = run.spec.infill.pattern.repeat.map(({ value }) => value.thickness.value);
  const { value: post } = run.spec.post;
  const split = run.spec.infill.mounting.value.kind === 'split';
  const through = split ? post.through.value + Math.max(0, ...slats) / 2 : post.through.value / 2;
  const face = levelFace(run.spec.infill);
  const lies = face === 'both' || face === (out === 1 ? 'back' : 'front');
  const screen = through + (lies ? Math.max(0, ...slats) : 0);
  const { deck } = run.spec;
  // Steps and the words at their foot are kept clear of, too.
  if (out === 1) return Math.max(screen, stairsReach(run.spec));
  if (!deck) return screen;
  // Joists are shown from the rim on, which is before the posts or, inside the frame, behind them.
  const inner = post.through.value / 2;
  return Math.max(
    screen,
    DECK_SHOWN + (deck.hold.value === 'inside-frame' ? 0 - inner : inner + deck.rim.value),
  );
}

/** The side of a run without dimensions: its direction on the sheet, and how far the run reaches there. */
export function besideDimensions(
  run: RunLayout,
  axes: PlanAxes,
): { readonly side: At; readonly edge: number } {
  const inward = inwardOf(run);
  return { side: [axes.back[0] * inward, axes.back[1] * inward], edge: inward * reachOf(run, inward) };
}

const inwardOf = (run: RunLayout): Side => (outward(run) === 1 ? -1 : 1);

/** A run that turns more than this goes through a number that stands square off its corner post, in degrees. */
const TURNS = 50;
/** In letters: beside a bridge or another run, and beside a leaf that stands open. */
const BESIDE_RUN = 1.2;
const BESIDE_LEAF = 0.9;

/**
 * How far the number of a post stands along the run from its middle, in letters: beside what goes off on its side, a
 * bridge, the next run or an open leaf, and not on it.
 */
export function numbersAside(run: RunLayout): (post: PostMark) => number {
  const inward = inwardOf(run);
  const { end, bridge, bridged } = run.joints;
  const open = run.leaves
    .filter((leaf) => opensToward(run, leaf) === inward)
    .map(({ bay }) => run.bays.find(({ number }) => number === bay));
  return (post) => {
    if (post === run.posts.at(-1)) {
      if (bridged?.way === inward) return -BESIDE_RUN;
      if (end && Math.abs(end.turn) > TURNS && (end.turn < 0 ? -1 : 1) === inward) return -BESIDE_RUN;
    }
    const way = bridge && !bridge.trouble ? Math.sign(bridge.at[1]) : 0;
    if (post === run.posts[0] && way === -inward) return BESIDE_RUN;
    const [before, after] = [
      open.some((bay) => bay?.to === post.from),
      open.some((bay) => bay?.from === post.to),
    ];
    return (before ? BESIDE_LEAF : 0) - (after ? BESIDE_LEAF : 0);
  };
}

/** A name stands within the arc of a leaf that is so much wider than it. */
const ROOMY = 1.25;

/**
 * How far out the name of a gate stands so as to be clear of its leaves where they stand open on its side: nothing
 * where they do not, or where it goes in under the arc of a single one; else past them.
 */
export function pastLeaves(run: RunLayout, { bay }: Leaf, name: Ticks): Ticks {
  const leaves = run.leaves.filter((one) => one.bay === bay);
  if (leaves.every((leaf) => opensToward(run, leaf) !== inwardOf(run))) return 0;
  const widest = Math.max(...leaves.map(({ width }) => width));
  return leaves.length === 1 && widest > ROOMY * name ? 0 : widest;
}
