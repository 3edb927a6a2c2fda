import { expect, it } from 'vitest';
import { postLine } from '../figures/index.ts';
import { inches } from '../units/index.ts';
import { checked, screen } from './testing/checked.ts';

const found = (measured: string, mounting = 'on front face') =>
  checked(
    `${screen(['slats on front face', `slats ${mounting}`])}measured bank { ${measured} }\n`,
    'post-off-line',
  );

// Three posts: one of them 1 off is 1/2 off the line midway; 1/2 off is a quarter.
it('tells a post over a quarter off the best line, and none that is less', async () => {
  expect((await found('post 2 off 1/2" toward front')).findings).toEqual([]);
  expect((await found('post 2 leans left 1/8" in 4\'')).findings).toEqual([]);
  const { findings, messages } = await found('post 2 off 1" toward front');
  expect(findings.map(({ at, pieces }) => [at.path, pieces])).toEqual([
    ['Measured:bank/MeasuredPost:2', ['bank/p2']],
  ]);
  // By hand: the line lies 1/2 in front; slats on the front lie another 1/2 before that, on post 2 itself.
  expect(messages[0]).toContain('Post 2 stands 1/2" toward the front');
  expect(messages[0]).toContain('Shims on the front, by post 1: 1", 2: 0", 3: 1".');
});

it('goes along a line that is askew at no cost', async () => {
  // By hand: middles of the posts at 1-3/4, 59-1/4 and 116-3/4, so that 1/2 and 1 are on a line with 0.
  const { open, findings } = await found('post 2 off 1/2" toward back; post 3 off 1" toward back');
  expect(findings).toEqual([]);
  expect(postLine(open.run())?.most).toBeCloseTo(0, 3);
});

it('packs both faces where slats lie on both, and none where they stand between', async () => {
  const both = postLine((await found('post 2 off 1" toward front', 'on both faces')).open.run());
  expect(both?.posts.map(({ shims }) => [shims.front, shims.back])).toEqual([
    [inches(1), 0],
    [0, inches(1)],
    [inches(1), 0],
  ]);
  const between = await found('post 2 off 1" toward front', 'between posts; cleats nib');
  expect(between.messages[0]).toContain('Set cleats and rails to that line');
});

it('leaves out posts that are no more where they were planned', async () => {
  const { open, findings } = await found('post 2 planned at 5\', off 1" toward front');
  expect(findings).toEqual([]);
  expect(open.run().problems.map(({ code, args }) => [code, args.what, args.others])).toEqual([
    ['measured-elsewhere', 'post', ''],
  ]);
});
