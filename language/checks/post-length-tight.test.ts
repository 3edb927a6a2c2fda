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
