import { expect, it } from 'vitest';
import { inches } from '../units/index.ts';
import { jobOf, RUN, runOf, STOCK } from './testing/job-of.ts';

const run = (more: string) => jobOf(`${STOCK}\nrun bank {${RUN}\n${more}\n}`);

it('reads remedies in the order written', async () => {
  const { fit } = runOf(
    await run(
      `fit move ends, else gaps 3/8" to 3/4", else short repeat, else rip last, not under 2", else rip last, else change strip to 1-3/4", else trim with wide at top, else trim`,
    ),
  ).infill;
  expect(fit.origin).toMatchObject({ path: 'Run:bank/Fit', why: 'stated' });
  expect(fit.remedies.map(({ value }) => value)).toMatchObject([
    { kind: 'move-ends' },
    { kind: 'gaps', low: inches(3 / 8), high: inches(3 / 4) },
    { kind: 'short-repeat' },
    { kind: 'rip-last', least: inches(2) },
    { kind: 'rip-last' },
    { kind: 'change-width', slat: 'strip', width: inches(1.75) },
    { kind: 'trim', edge: 'top', board: { name: 'wide' } },
    { kind: 'trim', edge: 'bottom' },
  ]);
  expect(fit.remedies[1]?.origin.path).toBe('Run:bank/Fit/remedies~2');
});

it("takes the run's fit, else the pattern's, else none", async () => {
  const none = runOf(await run('')).infill.fit;
  expect(none).toEqual({
    remedies: [],
    origin: { uri: 'file:///site/job.slat', path: 'Run:bank', why: 'default' },
  });
  const text = `${STOCK.replace('end on slat', 'end on slat\n fit rip last')}\nrun bank {${RUN}`;
  expect(runOf(await jobOf(`${text}}`)).infill.fit).toMatchObject({
    remedies: [{ value: { kind: 'rip-last' } }],
    origin: { path: 'Pattern:beat/Fit' },
  });
  expect(runOf(await jobOf(`${text} fit trim }`)).infill.fit).toMatchObject({
    remedies: [{ value: { kind: 'trim' } }],
    origin: { path: 'Run:bank/Fit' },
  });
});

it.each([
  [
    'gaps 3/4" to 3/8"',
    'impossible-size',
    'Run:bank/Fit/remedies.high',
    { what: 'gaps', size: '3/4"', reason: 'low-over-high', limit: '3/8"' },
  ],
  ['gaps 3 to 5/8"', 'unit-missing', 'Run:bank/Fit/remedies.low', { what: 'gaps', spelling: '3' }],
  ['rip last, not under 2', 'unit-missing', 'Run:bank/Fit/remedies.least', { what: 'rip last' }],
  [
    'change stop to 1/2"',
    'not-in-repeat',
    'Run:bank/Fit/remedies',
    { slat: 'stop', pattern: 'beat', place: 'change' },
  ],
  [
    'change p4 to 1"',
    'wrong-kind',
    'Run:bank/Fit/remedies.slat',
    { name: 'p4', kind: 'post', place: 'change' },
  ],
  [
    'change strip to 6"',
    'impossible-size',
    'Run:bank/Fit/remedies.width',
    { what: 'width', size: '6"', reason: 'not-narrower', limit: '5-1/2"' },
  ],
  ['trim with p4', 'wrong-kind', 'Run:bank/Fit/remedies.board', { name: 'p4', place: 'trim' }],
])('tells what is wrong with %s and leaves it out', async (remedy, code, path, args) => {
  const job = await run(`fit ${remedy}, else short repeat`);
  expect(job.problems).toMatchObject([{ code, origin: { path }, args }]);
  expect(runOf(job).infill.fit.remedies.map(({ value }) => value.kind)).toEqual(['short-repeat']);
});
