import type { NoHole } from '../model/index.ts';
import type { Ticks } from '../units/index.ts';
import type { Range } from './infill.ts';
import type { PostChoice } from './layout.ts';

/** A stretch between two fixed posts that is to be divided clear of obstacles. */
export interface Clearing {
  /** What is free between the fixed posts. */
  readonly room: Range;
  readonly along: Ticks;
  readonly step: Ticks;
  /** Greatest clear width of a bay inside, and of one beside a fixed post on the left or the right. */
  readonly most: (bay: number, bays: number) => Ticks;
  /** Bays of the ordinary division. */
  readonly bays: number;
  /** The number of bays is asked for: other numbers come after it. */
  readonly counted: boolean;
  readonly noHoles: readonly NoHole[];
  /** Where the ordinary division puts posts for a number of bays; undefined when there is no room for them. */
  readonly equally: (bays: number) => readonly Ticks[] | undefined;
}

/** Whether a post that begins at `from` would stand, with any of its width, where no hole may be. */
export function hits(from: Ticks, along: Ticks, noHole: Pick<NoHole, 'from' | 'to'>): boolean {
  return from < noHole.to && from + along > noHole.from;
}

/** More bays than the ordinary division, up to this share of it and two, are tried. */
const MORE_BAYS = 2;
/**
 * Obstacles and bays looked at in all before the search is left with what it has, so that it ends on any text: a
 * kilometer by millimeters, with an obstacle between every two joists, would take hours.
 */
const MOST_LOOKED_AT = 20_000_000;

/**
 * All choices that keep posts clear, best first: fewest different bays, then fewest posts, then the smallest
 * largest bay. Of each kind and number of bays the one with the smallest largest bay. Kinds: equal bays; one wider
 * bay over the obstacle and the rest equal; a mirrored pair about it (two like bays that meet at a post and
 * hold the obstacle, or that stand on either side of the bay over it) and the rest equal.
 */
export function clearChoices(clearing: Clearing): readonly PostChoice[] {
  const found: PostChoice[] = [];
  const put = (choice: PostChoice | undefined) => {
    if (!choice || found.some((one) => one.posts.join() === choice.posts.join())) return;
    found.push(choice);
  };
  const last = MORE_BAYS * clearing.bays + 2;
  for (let bays = clearing.bays; bays <= last; bays++) put(equal(clearing, bays));
  let left = MOST_LOOKED_AT;
  const looked = (bays: number): boolean => {
    left -= clearing.noHoles.length + bays;
    return left > 0;
  };
  for (let bays = clearing.bays; bays <= clearing.bays + 2; bays++) {
    put(best(wides(clearing, bays, looked)));
    put(best(pairs(clearing, bays, looked)));
  }
  const rank = ({ kind, clears, widest }: PostChoice) => [
    clearing.counted && clears.length !== clearing.bays ? 1 : 0,
    kind === 'equal' ? 1 : 2,
    clears.length,
    widest,
  ];
  return found.sort((a, b) => {
    const [one, other] = [rank(a), rank(b)];
    const at = one.findIndex((value, i) => value !== other[i]);
    return at < 0 ? 0 : (one[at] ?? 0) - (other[at] ?? 0);
  });
}

function equal(clearing: Clearing, bays: number): PostChoice | undefined {
  const posts = clearing.equally(bays);
  // Equal bays keep to the limit before marks are rounded, as in the ordinary division.
  return posts && isClear(clearing, posts) ? choiceOf(clearing, 'equal', posts) : undefined;
}

/** The room that bays share when a number of posts stands in it. */
const shared = ({ room, along }: Clearing, bays: number): Ticks => room[1] - room[0] - (bays - 1) * along;

/** Bays before and after the wide one are equal and on whole marks; the wide one takes the rest. */
function* wides(clearing: Clearing, bays: number, looked: (bays: number) => boolean): Generator<PostChoice> {
  const { room, along, step, noHoles } = clearing;
  const total = shared(clearing, bays);
  for (const noHole of noHoles) {
    for (let wide = 0; wide < bays && bays > 1; wide++) {
      const after = bays - 1 - wide;
      const limits = [
        (total - 1) / bays,
        wide > 0 ? (noHole.from - room[0]) / wide - along : Infinity,
        after > 0 ? (room[1] - noHole.to) / after - along : Infinity,
      ];
      const least = (total - clearing.most(wide, bays)) / (bays - 1);
      for (let each = down(Math.min(...limits), step); each >= least && each > 0; each -= step) {
        if (!looked(bays)) return;
        const clears = Array.from({ length: bays }, (_, i) =>
          i === wide ? total - each * (bays - 1) : each,
        );
        const choice = tried(clearing, 'wide', clears, [wide]);
        if (!choice) continue;
        yield choice;
        break;
      }
    }
  }
}

/** The other bays are equal and on whole marks; the pair shares the rest, alike to the mark. */
function* pairs(clearing: Clearing, bays: number, looked: (bays: number) => boolean): Generator<PostChoice> {
  const { room, along, step, noHoles } = clearing;
  const total = shared(clearing, bays);
  if (bays < 3) return;
  const middle = total / bays;
  for (const apart of [1, 2]) {
    for (let first = 0; first + apart < bays; first++) {
      for (const direction of [-1, 1]) {
        const start = direction < 0 ? down(middle, step) : down(middle, step) + step;
        for (let moved = 0; ; moved++) {
          if (!looked(bays)) return;
          const each = start + direction * moved * step;
          if (each <= 0) break;
          const pair = total - each * (bays - 2);
          if (pair <= 0 || pair / 2 > clearing.most(first, bays)) break;
          if (direction > 0 && each > clearing.most(1, bays) && each > clearing.most(0, bays)) break;
          const low = down(pair / 2, step);
          // The obstacle is within the pair, or in the bay between its two.
          const from = room[0] + first * (each + along) + (apart === 2 ? low : 0);
          const to = from + (apart === 2 ? each + 2 * along : pair + along);
          if (low <= 0 || low === each || !noHoles.some((one) => isWithin(one, [from, to], room))) continue;
          const clears = Array.from({ length: bays }, (_, i) =>
            i === first ? low : i === first + apart ? pair - low : each,
          );
          const choice = tried(clearing, 'pair', clears, [first, first + apart]);
          if (!choice) continue;
          yield choice;
          break;
        }
      }
    }
  }
}

/** Whether what lies of an obstacle in the room lies in a part of it. */
function isWithin({ from, to }: NoHole, part: Range, room: Range): boolean {
  return part[0] <= Math.max(from, room[0]) && Math.min(to, room[1]) <= part[1];
}

function tried(
  clearing: Clearing,
  kind: PostChoice['kind'],
  clears: readonly Ticks[],
  unlike: readonly number[],
): PostChoice | undefined {
  if (clears.some((clear, bay) => clear > clearing.most(bay, clears.length))) return undefined;
  const posts: Ticks[] = [];
  let at = clearing.room[0];
  for (const clear of clears.slice(0, -1)) {
    posts.push(at + clear);
    at += clear + clearing.along;
  }
  return isClear(clearing, posts) ? choiceOf(clearing, kind, posts, unlike) : undefined;
}

function isClear({ noHoles, along }: Clearing, posts: readonly Ticks[]): boolean {
  return posts.every((post) => !noHoles.some((noHole) => hits(post, along, noHole)));
}

function choiceOf(
  { room, along }: Clearing,
  kind: PostChoice['kind'],
  posts: readonly Ticks[],
  unlike: readonly number[] = [],
): PostChoice {
  const faces = [room[0] - along, ...posts];
  const clears = faces.map((face, i) => (posts[i] ?? room[1]) - face - along);
  return { kind, posts, clears, unlike, widest: Math.max(...clears) };
}

/** Of those found, the one with the smallest largest bay. */
function best(choices: Iterable<PostChoice>): PostChoice | undefined {
  let found: PostChoice | undefined;
  for (const choice of choices) if (!found || choice.widest < found.widest) found = choice;
  return found;
}

const down = (value: number, step: Ticks): Ticks => Math.floor(value / step) * step;
