import { expect, it } from 'vitest';
import { feet, inches } from '../units/index.ts';
import { jobOf, problemsOf, RUN, STOCK } from './testing/job-of.ts';

const two = (placement: string, first = '') =>
  `${STOCK}\nrun bank {${RUN}${first}}\nrun foot {${RUN}${placement}}`;

async function placementOf(statements: string, first?: string) {
  const job = await jobOf(two(statements, first));
  expect(job.problems).toEqual([]);
  const foot = job.runs[1];
  return foot && !('broken' in foot) ? foot.placement : undefined;
}

it('reads a point and a bearing, east where none is stated', async () => {
  expect(await placementOf(`placed at 3', 4' bearing 45 degrees`)).toMatchObject({
    kind: 'at',
    east: { value: feet(3), origin: { path: 'Run:foot/PlacedStatement.east' } },
    north: { value: feet(4) },
    bearing: { value: 45, origin: { path: 'Run:foot/PlacedStatement.bearing', why: 'stated' } },
  });
  expect(await placementOf(`placed at 0', 0'`)).toMatchObject({
    bearing: { value: 90, origin: { path: 'Run:foot', why: 'default' } },
  });
});

it.each([
  ['after bank', 0],
  ['after bank, turns left', 90],
  ['after bank, turns right', -90],
  ['after bank, turns left, inside angle 135°', 45],
  ['after bank, turns right, inside angle 180°', 0],
  // 3-4-5 is square, and two sides of 7 and 8 with 13 across make 120 degrees.
  [`after bank, turns right, inside angle of 3', 4', 5'`, -90],
  [`after bank, turns left, inside angle of 7', 8', 13'`, 60],
])('reads %s as a turn of %s', async (text, turn) => {
  const placement = await placementOf(text);
  expect(placement).toMatchObject({ kind: 'after', run: 'bank', turn: { value: turn } });
  expect(placement).toMatchObject({ corner: { value: 'post', origin: { why: 'default' } } });
});

it('reads a space between runs that go straight on', async () => {
  expect(await placementOf(`after bank, 3/4" on`)).toMatchObject({
    kind: 'on',
    run: 'bank',
    gap: { value: inches(3 / 4) },
  });
});

it('reads how runs meet', async () => {
  expect(await placementOf('after bank, turns left\ncorner miter')).toMatchObject({
    corner: { value: 'miter', origin: { path: 'Run:foot/CornerStatement', why: 'stated' } },
  });
});

it.each([
  ['after foot', '', ['placement-circular Run:foot/AfterStatement']],
  [
    'after bank',
    'after foot',
    ['placement-circular Run:bank/AfterStatement', 'placement-circular Run:foot/AfterStatement'],
  ],
  [`after bank, 3/4" on; corner lap`, '', ['placement-unclear Run:foot/CornerStatement']],
  [`after foot, 3/4" on`, '', ['placement-circular Run:foot/AfterStatement']],
  ['corner lap', '', ['placement-unclear Run:foot/CornerStatement']],
  [`placed at 0', 0'; after bank`, '', ['placement-unclear Run:foot/AfterStatement']],
  ['after bank, turns left, inside angle 20°', '', ['placement-unclear Run:foot/AfterStatement.angle']],
  [
    `after bank, turns left, inside angle of 1', 1', 3'`,
    '',
    ['placement-unclear Run:foot/AfterStatement.of'],
  ],
  [`placed at 0', 0' bearing 361°`, '', ['placement-unclear Run:foot/PlacedStatement.bearing']],
])('tells what is unclear about %s', async (placement, first, problems) => {
  expect(await problemsOf(two(placement, first))).toEqual(problems);
});

it('tells a run of another file, and lets it stand for itself', async () => {
  const used = { 'a.slat': `${STOCK}\nrun far {${RUN}}` };
  const job = await jobOf(`use "a.slat"\nrun foot {${RUN}after far}`, used);
  expect(job.problems).toMatchObject([
    { code: 'placement-unclear', args: { reason: 'other-file', other: 'far' } },
  ]);
  expect(job.runs[0]).not.toHaveProperty('placement');
});
