import type { DeckSpec, NoHole, RunSpec, TextChange } from '../model/index.ts';
import { spellLength, type Ticks } from '../units/index.ts';
import type { Range } from './infill.ts';
import type { Joints } from './joints.ts';
import type { PostChoice, PostMark } from './layout.ts';
import { placePosts } from './posts.ts';

/** A joist or a piece of blocking, as it lies along the edge. */
export interface DeckMember {
  readonly kind: 'joist' | 'blocking';
  readonly x: Range;
}

/** What posts can be bolted to, in the order of stations. */
export function deckMembers({ joist, joists, blocking }: DeckSpec): readonly DeckMember[] {
  const at =
    (kind: DeckMember['kind']) =>
    (middle: Ticks): DeckMember => {
      const low = middle - Math.floor(joist.thickness / 2);
      return { kind, x: [low, low + joist.thickness] };
    };
  return [...joists.map(at('joist')), ...blocking.map(at('blocking'))].sort((a, b) => a.x[0] - b.x[0]);
}

/** The member nearest to a post, and how far its face is off; 0 where they lie over one another. */
export function nearestMember(
  members: readonly DeckMember[],
  { from, to }: Pick<PostMark, 'from' | 'to'>,
): { readonly member: DeckMember; readonly off: Ticks } | undefined {
  let found: { member: DeckMember; off: Ticks } | undefined;
  for (const member of members) {
    const off = Math.max(0, member.x[0] - to, from - member.x[1]);
    if (!found || off < found.off) found = { member, off };
  }
  return found;
}

/** A division of the run, and the edit that builds it. */
export interface DeckDivision {
  readonly choice: PostChoice;
  readonly changes: readonly TextChange[];
}

/**
 * Divisions of the run in which every post between its ends has a member within reach, best first. Where
 * none is within reach no hole may be, so that they are sought as round obstacles. Runs with gates or stated
 * stations have none.
 */
export function deckDivisions(spec: RunSpec, joints: Joints, reach: Ticks): readonly DeckDivision[] {
  const { deck, spacing, gates, measure } = spec;
  if (!deck || gates.length > 0 || spacing.value.kind === 'stations' || spacing.origin.why !== 'stated')
    return [];
  const members = deckMembers(deck);
  const along = spec.post.value.along.value;
  const noHoles = [
    ...(spec.noHoles ?? []),
    ...betweenMembers(deck, members, spec.length.value, along, reach),
  ];
  const placed = placePosts({ ...spec, noHoles }, joints);
  if (!('posts' in placed) || placed.moves.length !== 1) return [];
  const [move] = placed.moves;
  if (!move) return [];
  const { uri, path } = spacing.origin;
  const holds = (from: Ticks) =>
    (nearestMember(members, { from, to: from + along })?.off ?? Infinity) <= reach;
  return [move.chosen, ...move.others.map(({ choice }) => choice)]
    .filter(({ posts }) => posts.length > 0 && posts.every(holds))
    .map((choice) => {
      const text =
        choice.kind === 'equal'
          ? `${choice.clears.length} bays`
          : `at ${choice.posts.map((post) => spellLength(post, measure)).join(', ')}`;
      return { choice, changes: [{ uri, path, place: 'replace', text }] };
    });
}

/** Stretches such that a post that keeps clear of all of them has a member within reach. */
function betweenMembers(
  { origin }: DeckSpec,
  members: readonly DeckMember[],
  length: Ticks,
  along: Ticks,
  reach: Ticks,
): readonly NoHole[] {
  const ends = [...members.map(({ x }) => x), [2 * length, 2 * length] as const];
  let until = -length;
  const found: NoHole[] = [];
  for (const [low, high] of ends) {
    // A post is clear of it when it begins at `from - along` or before, or at `to` or after.
    const [from, to] = [until + reach + along, low - reach - along];
    if (to > from - along) found.push({ from, to, origin });
    until = Math.max(until, high);
  }
  return found;
}
