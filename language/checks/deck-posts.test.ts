import { expect, it } from 'vitest';
import { inches } from '../units/index.ts';
import { checked, fixed, screen } from './testing/checked.ts';

const DECK = `deck terrace {
  surface up 24"
  boards 1"
  joists 1-1/2" by 7-1/4", 16" on center from 3/4"
  ground down 1"
}
run bank {`;

/** The sound screen on a deck: posts of 3-1/2" at 0, 57-1/2" and 115"; joists 1-1/2" wide every 16" from 0. */
const onDeck = (hold: string, ...changes: (readonly [string, string])[]) =>
  screen(['run bank {', `${DECK}\n  on terrace, posts ${hold}`], ...changes);

it('finds posts with no joist within reach (hand)', async () => {
  // Joist faces at 48" to 49-1/2" and 64" to 65-1/2": the middle post, 57-1/2" to 61", is 3" from the second.
  const near = await checked(onDeck('outside rim'));
  // The surface is 25" above the ground, over the 600 mm from which on some rules ask for a guard.
  expect(near.findings.map(({ code }) => code)).toEqual(['guard-unjudged', 'deck-post-connection']);
  // With joists 1/2" to the right the post is 3-1/2" from it, and the end post at 115" to 118-1/2" is 1" from that at 112-1/2" to 114".
  const moved = onDeck('outside rim', ['from 3/4"', 'from 1-1/4"']);
  const loose = await checked(moved, 'deck-post-unbacked');
  expect(loose.messages).toEqual([
    'Nothing is within 3" of post 2 to bolt to (the nearest is 3-1/2" off). Add blocking there, or divide the posts anew.',
  ]);
});

it('adds blocking beside the post, or lands posts on joists', async () => {
  const loose = await checked(onDeck('outside rim', ['from 3/4"', 'from 1-1/4"']), 'deck-post-unbacked');
  const fixes = loose.findings[0]?.fixes ?? [];
  expect(fixes.length).toBeGreaterThan(1);
  for (const fix of fixes) expect((await fixed(loose, fix)).messages.join()).not.toMatch(/Nothing is within/);
  // The side of the post is at 61"; half a joist of 1-1/2" beside it is its middle.
  expect(fixes[0]?.changes[0]?.text).toBe('blocking at 61-3/4"');
});

it('knows no joists to bolt to where they lie along the edge', async () => {
  const along = await checked(
    onDeck('outside rim', ['16" on center from 3/4"', 'along edge']),
    'deck-post-unbacked',
  );
  expect(along.findings[0]?.pieces).toHaveLength(3);
});

it('lets a job set the reach', async () => {
  const near = onDeck('outside rim', ['to 1/16" }', 'to 1/16"; threshold deck-post-unbacked 2-15/16" }']);
  expect((await checked(near, 'deck-post-unbacked')).findings).toHaveLength(1);
});

it('finds posts inside the frame that stand where a joist is (hand)', async () => {
  // The first post, 0 to 3-1/2", holds the joist from 0 to 1-1/2"; the others are clear of those beside them.
  const inside = await checked(onDeck('inside frame'), 'deck-post-in-joist');
  expect(inside.findings.map(({ args }) => args.posts)).toEqual(['post 1']);
});

it('makes posts as long as what holds them asks (hand)', async () => {
  const length = async (hold: string) => {
    const { open } = await checked(onDeck(hold));
    return open.run().pieces.find(({ role }) => role === 'post')?.cut.longPoint;
  };
  // 50" above the deck, 1" of boards, 7-1/4" of joist.
  expect(await length('outside rim')).toBe(inches(58.25));
  expect(await length('inside frame')).toBe(inches(58.25));
  // 50" above the deck, 25" down to the ground, and half of both in it.
  expect(await length('to footing')).toBe(inches(75 + 37.5));
  const footing = await checked(onDeck('to footing'));
  expect(footing.findings.map(({ code }) => code)).toEqual(['guard-unjudged']);
});

it('tells of statements that a run on a deck has no use for', async () => {
  const twice = await checked(
    onDeck('outside rim', ['posts stake, 2 bays', 'posts stake, 2 bays; ground up 1"; embed 2\'']),
  );
  expect(twice.findings.map(({ code }) => code)).toEqual([
    'wrong-statement',
    'wrong-statement',
    'guard-unjudged',
    'deck-post-connection',
  ]);
});

it('counts depth from the ground below for posts on their own footing, and none where the deck holds them', async () => {
  // 75" above the ground below, 20" in it: less than the third of the whole, 37-1/2".
  const shallow = await checked(
    onDeck('to footing', ['posts stake, 2 bays', 'posts stake, 2 bays; embed 20"']),
    'embed-shallow',
  );
  expect(shallow.messages.join()).toMatch(
    /^Posts stand 20" in the ground; one third of the whole post is 37-1\/2" /,
  );
  expect((await checked(onDeck('outside rim'), 'embed-shallow')).findings).toEqual([]);
});
