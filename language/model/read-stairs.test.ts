import { expect, it } from 'vitest';
import { inches } from '../units/index.ts';
import { jobOf, RUN, runOf, STOCK } from './testing/job-of.ts';

const deck = (text: string) =>
  jobOf(
    `${STOCK}\ndeck terrace { surface up 30"; joists 1-1/2" by 7-1/4"; ${text} }\nrun bank {${RUN} on terrace }`,
  );
const stairs = async (text: string) => runOf(await deck(text)).deck?.stairs;

it('takes how far stairs go down from the ground below, and steps no higher than 7-1/2"', async () => {
  // By hand: 30" are four steps of 7-1/2", 30-1/16" are five.
  expect(await stairs(`ground down 0"; stairs from 6' to 9'`)).toMatchObject([
    { from: inches(72), to: inches(108), down: inches(30), risers: 4, going: inches(10) },
  ]);
  expect(await stairs(`stairs from 6' to 9', down 30-1/16", going 11"`)).toMatchObject([
    { down: inches(30.0625), risers: 5, going: inches(11) },
  ]);
  expect(await stairs('ground down 0"')).toBeUndefined();
});

it('reads several', async () => {
  const job = await deck(`ground down 0"; stairs from 2' to 5'; stairs from 18' to 21'`);
  expect(job.problems).toEqual([]);
  expect(runOf(job).deck?.stairs).toHaveLength(2);
});

it.each([
  [`stairs from 9' to 6', down 30"`, 'impossible-size'],
  [`stairs from 6' to 9'`, 'missing-statement'],
  [`stairs from 6' to 9', down 900'`, 'impossible-size'],
  [`stairs from 6' to 9', down 30", going 12'`, 'impossible-size'],
  [`stairs from 6 to 9', down 30"`, 'unit-missing'],
])('tells what is wrong with %s', async (text, code) => {
  const job = await deck(text);
  expect(job.problems.map((problem) => problem.code)).toEqual([code]);
  expect(runOf(job).deck?.stairs).toBeUndefined();
});
