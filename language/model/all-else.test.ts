import { expect, it } from 'vitest';
import { feet, inches } from '../units/index.ts';
import type { RunSpec } from './job.ts';
import { jobOf, problemsOf, RUN, STOCK } from './testing/job-of.ts';

const runsOf = async (text: string) => {
  const { runs, problems } = await jobOf(`${STOCK}\n${text}`);
  expect(problems).toEqual([]);
  return runs as readonly RunSpec[];
};

it('takes what a run does not state from another, and leaves it where it is stated', async () => {
  const [, foot] = await runsOf(
    `run bank {${RUN}bottom 3"; placed at 1', 2'}\nrun foot { all else as bank; height 5' }`,
  );
  expect(foot).toMatchObject({
    length: { value: feet(24), origin: { path: 'Run:bank/RunLength.value' } },
    height: { value: { high: feet(5) }, origin: { path: 'Run:foot/HeightStatement' } },
    bottom: { value: { low: inches(3) } },
  });
  // Where it stands is its own.
  expect(foot).not.toHaveProperty('placement');
});

it('goes on to what that one leaves to a third', async () => {
  const runs = await runsOf(
    `run bank {${RUN}}\nrun foot { all else as bank; height 5' }\nrun rear { all else as foot; length 12' }`,
  );
  expect(runs[2]).toMatchObject({ length: { value: feet(12) }, height: { value: { high: feet(5) } } });
});

it('tells a run that leaves what it lacks to itself', async () => {
  const text = `${STOCK}\nrun bank {${RUN}all else as foot}\nrun foot {${RUN}all else as bank}`;
  expect(await problemsOf(text)).toEqual(['circular Run:foot/AllElse.run', 'circular Run:bank/AllElse.run']);
});
