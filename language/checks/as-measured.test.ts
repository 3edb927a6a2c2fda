import { expect, it } from 'vitest';
import { checked, SOUND } from './testing/checked.ts';

const found = (measured: string, code: string) => checked(`${SOUND}measured bank { ${measured} }\n`, code);

// The posts of the sound screen are 50 high above the ground: 3/8 over that is 0.36 in 48.
it('takes a lean of 3/8" over the height of a post, and no more', async () => {
  expect((await found('post 2 leans left 0.36" in 48"', 'post-leans')).findings).toEqual([]);
  const { findings, messages } = await found('post 2 leans left 1/2" in 48"', 'post-leans');
  expect(findings.map(({ args, pieces, at }) => [args.post, args.side, pieces, at.path])).toEqual([
    [2, 'left', ['bank/p2'], 'Measured:bank/MeasuredPost:2'],
  ]);
  // 1/2 times 50/48 is 0.5208, to the next sixteenth 1/2.
  expect(messages[0]).toContain('Post 2 leans left by 1/2" over its 50"');
});

it('tells a lean that follows from a bay, at the bay', async () => {
  // 47-1/2 between top and bottom: each of the two posts leans by half of 1 there, 0.526 over 50.
  const { findings } = await found('bay 1 top 54-1/2", bottom 53-1/2"; bay 2 clear 54"', 'post-leans');
  expect(findings.map(({ args, at }) => [args.post, args.side, at.path])).toEqual([
    [1, 'left', 'Measured:bank/MeasuredBay:1'],
    [2, 'right', 'Measured:bank/MeasuredBay:1'],
  ]);
});

it('asks for the other bays once slats are cut or some bays are measured', async () => {
  expect((await found('bay 1 clear 54"; bay 2 clear 54"; cut bay 1', 'not-measured')).findings).toEqual([]);
  expect((await found('post 1 leans left 1/8" in 4\'', 'not-measured')).findings).toEqual([]);
  const one = await found('bay 1 clear 54"', 'not-measured');
  expect(one.findings.map(({ args, at }) => [args.bays, at.path])).toEqual([['2', 'Measured:bank']]);
  const cut = await found('cut bay 1', 'not-measured');
  expect(cut.findings.map(({ args, at }) => [args.bays, at.path])).toEqual([
    ['1, 2', 'Measured:bank/CutSlats:1'],
  ]);
});

it('tells posts and slats that are not there', async () => {
  const { messages } = await found(
    'post 9 leans left 1/8" in 4\'; cut bay 7; cut bay 1 courses 10 to 40',
    'measured-elsewhere',
  );
  expect(messages).toEqual([
    expect.stringContaining('Post 9 was measured, and the run has 3 posts now'),
    expect.stringContaining('Slats of bay 7 are said to be cut, and there are none'),
    expect.stringContaining('Bay 1 has 12 courses now'),
  ]);
});
