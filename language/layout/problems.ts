import type { Bridge, Origin, Problem } from '../model/index.ts';
import type { BridgeTrouble } from './bridge-joint.ts';
import type { CornerTrouble } from './corner.ts';
import type { LinesTrouble } from './lines-as.ts';

/**
 * Impossible geometry, by code. Every argument is ready to be shown: lengths are formatted in the job's
 * measure, counts are numbers, names are as stated.
 */
export interface GeometryArgs {
  /** A size that is zero, negative or no length at all. */
  'no-size': { what: string };
  /** The top of the slats is not above their bottom. */
  'no-height': { height: string; bottom: string };
  /** A post begins at `station` before the one next to it ends at `until`. */
  'posts-overlap': { station: string; until: string };
  /** The opening with its two posts takes more than `room`, the run's whole length. */
  'gate-too-wide': { gate: string; opening: string; room: string };
  /** The opening with its posts, `from` to `to`, reaches past an end of the run. */
  'gate-outside': { gate: string; from: string; to: string; length: string };
  /** The opening of `second` begins before that of `first` ends at `until`. */
  'gates-overlap': { first: string; second: string; until: string };
  /** A post is stated in the middle of an opening. */
  'post-in-opening': { station: string; gate: string };
  /** A level of the ground is stated past an end of the run. */
  'ground-outside': { station: string; length: string };
  /** A post stands where no hole may be, and nothing keeps it clear; `reason` may be empty. */
  'post-in-obstacle': {
    station: string;
    until: string;
    from: string;
    to: string;
    reason: string;
    why: 'stated' | 'none-fits';
  };
  /** A post is stated after one farther along. */
  'stations-order': { station: string; before: string };
  /** A post is stated past an end of the run. */
  'station-outside': { station: string; length: string };
  /** `posts` more posts do not go between `from` and `to`. */
  'no-room': { posts: number; from: string; to: string };
  /** The spacing asked for is less than a post takes itself. */
  'spacing-too-small': { limit: string };
  'too-few-bays': { asked: number; least: number };
  'too-few-posts': { asked: number; least: number };
  'too-many-posts': { most: number };
  /** `count` is at least so many; of a gate, with all that comes before it. */
  'too-many-pieces': { count: number; most: number };
  /** The slats' ends and what holds them need `needs` of a bay. */
  'bay-too-narrow': { bay: number; clear: string; needs: string };
  /** Under the slats of these bays there is no room for a kick board of the least width. */
  'kick-no-room': { bays: string; count: number; least: string };
  /** Rails leave upright slats no length. */
  'too-low-for-rails': { height: string; needs: string };
  'rails-missing': { run: string };
  'cleats-missing': { name: string };
  /** Slats are so thick, or `holder` so thin, that a cleat beside them touches nothing. */
  'cleats-miss': { holder: string; thickness: string; slat: string };
  /** A gap at the slat's end is as wide as what should hold that end. */
  'end-gap-too-wide': { gap: string; holder: string; width: string };
  /** A slat does not go into its groove, or into the channel named by `in`; `hint` is a width that does, or empty. */
  'slat-too-thick': { slat: string; room: string; in: string; hint: string };
  /** A groove, or one from each of two sides, takes all of what it is cut into. */
  'groove-too-deep': { holder: string; depth: string; room: string; sides: 1 | 2; hint: string };
  /** A groove leaves nothing in front of it or behind it. */
  'groove-too-wide': { holder: string; thickness: string; width: string };
  /** A tube has no wood to cut a groove into. */
  'groove-in-tube': { holder: string; hint: string };
  /** Grooves and channels of rails that slope are not reckoned. */
  'pockets-racked': { run: string };
  /** Upright slats do not run through posts. */
  'split-upright': { run: string; hint: string };
  /** Slats by turns on both faces are of one board; this pattern has several. */
  'alternate-boards': { pattern: string; boards: string };
  /** Slats on both faces of posts of which one is deeper or shallower than the rest. */
  'post-depths': { post: string; depth: string; usual: string };
  /** The frame's stiles and rails leave no inside. */
  'leaf-too-small': { gate: string; width: string; height: string; needsWidth: string; needsHeight: string };
  /** A middle rail of a leaf that cannot be where it is stated; `rail` says which. */
  'rail-misplaced': { gate: string; rail: string; why: 'outside' | 'meets' | 'no-course' | 'between' };
  /** The brace or the cable does not go in behind the slats, or between those of both faces; `held` by what. */
  'brace-no-room': {
    gate: string;
    by: 'brace' | 'cable';
    held: 'cleats' | 'grooves' | 'channels' | 'faces';
    needs: string;
    room: string;
  };
  /** The brace is as wide as a space inside the frame, or the cable as thick. */
  'brace-too-wide': { gate: string; by: 'brace' | 'cable'; width: string };
  /** Slats of two runs do not meet as the corner is stated; `why` says for what reason. */
  'corner-slats': {
    first: string;
    second: string;
    corner: string;
    why: CornerTrouble;
  };
  /**
   * The offset between two runs is not closed as asked; `needs` and `room` are lengths, empty where none is told, `write`
   * what would do in its place, empty where nothing is known. `board` is that of a filler.
   */
  'bridge-impossible': {
    first: string;
    second: string;
    by: Bridge['kind'];
    board: string;
    why: BridgeTrouble['why'];
    needs: string;
    room: string;
    write: string;
  };
  /** Slat lines of `other` cannot be gone on with in `run`. */
  'lines-elsewhere': {
    run: string;
    other: string;
    why: LinesTrouble;
  };
  /** Stiffeners and what stands at the posts take more than the bay. */
  'stiffeners-no-room': { bay: number; clear: string; needs: string };
  /** A batten wider than the gate post it is on would be in the way of the leaf. */
  'batten-too-wide': { batten: string; width: string; post: number; along: string };
  /** Slats or rails stand where a collar goes round the post. */
  'collar-no-room': { end: 'bottom' | 'top'; post: number; room: string; needs: string };
  /**
   * A measured bay or post, or cut slats, that are none of the plan's now, of which there are `count`. Of a bay or a
   * post: `planned` as it was then (empty where not stated), `now` (empty where there is none of that number), and the
   * numbers of those that are as planned then (may be empty).
   */
  'measured-elsewhere': {
    what: 'bay' | 'post' | 'cut';
    number: number;
    count: number;
    planned: string;
    now: string;
    others: string;
  };
  /** Strips or a brace of the bracing do not go between ground and post tops, at a bay or a post. */
  'bracing-no-room': { what: 'strips' | 'brace'; at: string; room: string; needs: string };
  /** Two pieces are in one place. */
  'pieces-overlap': { first: string; second: string };
}

export type GeometryCode = keyof GeometryArgs;

/** A problem of geometry, where it is stated and with all that its message needs. */
export function geometryProblem<C extends GeometryCode>(
  code: C,
  origin: Origin,
  args: GeometryArgs[C],
  related?: Problem['related'],
): Problem {
  return { code, origin, args, ...(related ? { related } : {}) };
}

/** More posts than this are a slip of the pen, not a screen. */
export const MOST_POSTS = 2_000;

/** More pieces than this in one run are not laid out. */
export const MOST_PIECES = 50_000;
