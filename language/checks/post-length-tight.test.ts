import { expect, it } from 'vitest';
import { checked, screen } from './testing/checked.ts';

// Posts of the sound screen are 50 above the ground; with 44 below they are 94, or 7' 10.
const found = (lengths: string, embed = '44"') =>
  checked(
    screen(
      ['through 3-1/2"; lengths 16\' }', `through 3-1/2"; lengths ${lengths} }`],
      ['  fill rows\n', `  fill rows\n  embed ${embed}\n`],
    ),
    'post-length-tight',
  );

it('asks for two inches more than a post is long', async () => {
  expect((await found("8'")).findings).toEqual([]);
  const { findings, messages } = await found("8', 10'", '45"');
  expect(findings.map(({ args, pieces }) => [args.posts, pieces?.length])).toEqual([['P1, P2, P3', 3]]);
  expect(messages[0]).toContain('are 95" long and bought in 96": only 1" is left');
  expect(messages[0]).toContain('Order 120" instead, or set them 1" less deep.');
  expect((await found("8'", '45"')).messages[0]).toContain('State a longer length');
});

it('leaves posts to others that are too long for any length, or whose lengths are not stated', async () => {
  expect((await found("8'", '60"')).findings).toEqual([]);
  const unstated = screen(['through 3-1/2"; lengths 16\' }', 'through 3-1/2" }']);
  expect((await checked(unstated, 'post-length-tight')).findings).toEqual([]);
});

it('names posts as they stand, and lengths that differ by the longest', async () => {
  const { messages } = await checked(
    `${screen(
      ['through 3-1/2"; lengths 16\' }', 'through 3-1/2"; lengths 8\' }'],
      ['118-1/2"', "20'"],
      ['2 bays', "at most 6' clear"],
      ['  fill rows\n', '  fill rows\n  embed 45"\n'],
    )}gate cart in bank { opening 40" from 75"; hinges on left; frame bar; embed 46" }\n`,
    'post-length-tight',
  );
  expect(messages).toHaveLength(1);
  expect(messages[0]).toMatch(
    /^P1, P2, P3, P4.* are up to 96" long and bought in 96": nothing is left for a deeper hole/,
  );
});

it('tells each length that posts are bought in by itself', async () => {
  const { findings } = await checked(
    `${screen(
      ['through 3-1/2"; lengths 16\' }', "through 3-1/2\"; lengths 8', 10' }"],
      ['118-1/2"', "20'"],
      ['2 bays', "at most 6' clear"],
      ['  fill rows\n', '  fill rows\n  embed 45"\n'],
    )}gate cart in bank { opening 40" from 75"; hinges on left; frame bar; embed 69" }\n`,
    'post-length-tight',
  );
  expect(findings.map(({ args }) => [args.length, args.sold, args.spare])).toEqual([
    ['95"', '96"', '1"'],
    ['119"', '120"', '1"'],
  ]);
});

it('says nothing of holes where posts are bolted to a deck', async () => {
  const deck = `deck terrace { surface up 0"; boards 1"; joists 1-1/2" by 9-1/4", 16" on center from 3/4"; rim 1-1/2", double; ground down 12" }\n`;
  const { messages } = await checked(
    screen(
      ['run bank {\n', `${deck}run bank {\n  on terrace, posts outside rim\n`],
      ['through 3-1/2"; lengths 16\' }', 'through 3-1/2"; lengths 61" }'],
    ),
    'post-length-tight',
  );
  expect(messages[0]).toContain(
    '60-1/4" long and bought in 61": only 3/4" is left for a bad end. State a longer length, or a lower height.',
  );
});
