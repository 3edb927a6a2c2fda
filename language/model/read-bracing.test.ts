import { expect, it } from 'vitest';
import { inches } from '../units/index.ts';
import { jobOf, RUN, runOf, STOCK } from './testing/job-of.ts';

const BOARDS = `board batten { width 3-1/2"; thickness 3/4" }\nboard peg { width 1-1/2"; thickness 1-1/2" }`;
const run = (text: string) => jobOf(`${STOCK}\n${BOARDS}\nrun bank {${RUN} ${text} }`);

it('takes what is usual where nothing is said', async () => {
  const job = await run('temporary bracing batten');
  expect(job.problems).toEqual([]);
  const { bracing } = runOf(job);
  expect(bracing?.board.value.name).toBe('batten');
  expect(bracing?.stake.value.name).toBe('batten');
  expect(bracing?.low).toMatchObject({ value: inches(6), origin: { why: 'default' } });
  expect(bracing?.stakeLength).toMatchObject({ value: inches(24), origin: { why: 'default' } });
  expect([bracing?.up, bracing?.out, bracing?.high, bracing?.again]).toEqual([
    undefined,
    undefined,
    undefined,
    false,
  ]);
});

it('reads its parts in any order', async () => {
  const job = await run(
    `temporary bracing batten, bay by bay, stakes peg 30", strips at 8" and 5', 4' up, 3' 6" out`,
  );
  expect(job.problems).toEqual([]);
  const { bracing } = runOf(job);
  expect(bracing?.stake.value.name).toBe('peg');
  expect(bracing?.stakeLength.value).toBe(inches(30));
  expect([bracing?.low.value, bracing?.high?.value]).toEqual([inches(8), inches(60)]);
  expect([bracing?.up?.value, bracing?.out?.value]).toEqual([inches(48), inches(42)]);
  expect(bracing?.again).toBe(true);
});

it.each([
  ['temporary bracing batten, stakes peg, stakes batten', 'stated-twice'],
  ['temporary bracing batten; temporary bracing peg', 'stated-twice'],
  [`temporary bracing batten, strips at 5' and 6"`, 'impossible-size'],
  [`temporary bracing batten, stakes peg 9"`, 'impossible-size'],
  [`temporary bracing batten, 4 up`, 'unit-missing'],
])('tells what is wrong with %s', async (text, code) => {
  expect((await run(text)).problems.map((problem) => problem.code)).toEqual([code]);
});

it('asks for a board, and not for a post', async () => {
  const job = await run('temporary bracing p4');
  expect(job.problems.map(({ code }) => code)).toEqual(['wrong-kind']);
  expect(runOf(job).bracing).toBeUndefined();
});
