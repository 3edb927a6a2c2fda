import { expect, it } from 'vitest';
import { jobOf, RUN, runOf, STOCK } from './testing/job-of.ts';

const run = (flip: string) => jobOf(`${STOCK}\nrun bank {${RUN} ${flip} }`);
const gate = (flip: string, side = 'right') =>
  jobOf(`${STOCK}\nrun bank {${RUN}}\ngate g in bank { opening 42" from 7'; hinges on ${side}; ${flip} }`);

it('leaves a pattern as it is where nothing is said', async () => {
  expect(runOf(await run('')).infill.flip).toEqual({
    upright: false,
    topEdge: 'left',
    over: false,
    endForEnd: false,
    origin: { uri: 'file:///site/job.slat', path: 'Run:bank', why: 'default' },
  });
});

it.each([
  ['flip upright', { upright: true, topEdge: 'left' }],
  ['flip upright, top edge to right', { upright: true, topEdge: 'right' }],
  ['flip top edge to right', { upright: true, topEdge: 'right' }],
  ['flip over, end for end', { upright: false, over: true, endForEnd: true }],
])('reads %s', async (text, flip) => {
  const found = runOf(await run(text)).infill.flip;
  expect(found).toMatchObject({ ...flip, origin: { path: 'Run:bank/FlipStatement', why: 'stated' } });
});

it.each([
  ['hinges', 'right', 'right'],
  ['hinges', 'left', 'left'],
  ['latch', 'right', 'left'],
  ['latch', 'left', 'right'],
])('turns the top edge to the %s of a gate hung on the %s', async (to, side, topEdge) => {
  const [g] = runOf(await gate(`flip upright, top edge to ${to}`, side)).gates;
  expect(g?.infill.flip).toMatchObject({ upright: true, topEdge });
});

it('tells hinges in a run, which has none', async () => {
  const job = await run('flip upright, top edge to hinges');
  expect(job.problems).toMatchObject([
    {
      code: 'wrong-statement',
      origin: { path: 'Run:bank/FlipStatement/turns~2' },
      args: { what: 'top edge to hinges', block: 'run' },
    },
  ]);
  expect(runOf(job).infill.flip.topEdge).toBe('left');
});

it('tells a turn made twice', async () => {
  expect((await run('flip over, over')).problems).toMatchObject([
    {
      code: 'stated-twice',
      origin: { path: 'Run:bank/FlipStatement/turns~2' },
      args: { what: 'over', block: 'flip' },
      related: [{ origin: { path: 'Run:bank/FlipStatement/turns' }, note: 'over' }],
    },
  ]);
});
