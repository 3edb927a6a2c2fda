import { expect, it } from 'vitest';
import { inches, mm } from '../units/index.ts';
import { jobOf, problemsOf, RUN, runOf, STOCK } from './testing/job-of.ts';

const withHeight = (height: string) =>
  `${STOCK}\nrun bank { length 24'; posts p4, at most 6' clear; fill beat; height ${height} }`;

it('reads a length to ticks and remembers the node that states it', async () => {
  const { length } = runOf(await jobOf(`${STOCK}\nrun bank {${RUN}}`));
  expect(length.value).toBe(inches(24 * 12));
  expect(length.origin).toEqual({
    uri: 'file:///site/job.slat',
    path: 'Run:bank/RunLength.value',
    why: 'stated',
  });
});

it('tells a bare number with all it may have meant, and guesses nothing', async () => {
  const job = await jobOf(withHeight('6'));
  expect(job.problems).toEqual([
    {
      code: 'unit-missing',
      origin: { uri: job.uri, path: 'Run:bank/HeightStatement.low', why: 'stated' },
      args: { what: 'height', spelling: '6', hint: '', hints: `6" | 6' | 6 mm` },
    },
  ]);
  expect(job.runs).toMatchObject([{ name: 'bank', broken: true }]);
});

it.each([
  ['7\' 14"', 'length-spelling', { problem: 'inches-over-foot', hint: `8' 2"` }],
  ['10 - 1/2"', 'length-spelling', { problem: 'spaced-minus', hint: '10-1/2"' }],
  ['4,200 mm', 'length-spelling', { problem: 'thousands-mark', hint: '4200 mm' }],
  ['72 in', 'length-unknown-unit', { hint: '72"' }],
  ['2 km', 'length-unknown-unit', {}],
  ['1/2', 'unit-missing', { hint: '1/2"' }],
])('tells what is wrong with the height %s', async (height, code, args) => {
  const [problem] = (await jobOf(withHeight(height))).problems;
  expect(problem).toMatchObject({ code, origin: { path: 'Run:bank/HeightStatement.low' } });
  expect(problem?.args).toMatchObject({ spelling: height, ...args });
});

it.each([
  ['0 mm', { reason: 'zero', limit: '' }],
  ['1001 m', { reason: 'too-long', limit: `3280' 10-1/16"` }],
  ['99999999 m', { reason: 'too-long', limit: `3280' 10-1/16"` }],
])('tells the impossible height %s', async (height, args) => {
  const [problem, ...others] = (await jobOf(withHeight(height))).problems;
  expect(problem).toMatchObject({
    code: 'impossible-size',
    origin: { path: 'Run:bank/HeightStatement.low' },
  });
  expect(problem?.args).toEqual({ what: 'height', size: height, ...args });
  expect(others).toEqual([]);
});

it('takes the longest size a job may have', async () => {
  const [stock] = (await jobOf('post p { along 1000 m; through 90 mm }')).stock;
  expect(stock).toMatchObject({ along: { value: mm(1_000_000) } });
});

it('reads a band, and tells one that runs backwards at its high end', async () => {
  const band = runOf(await jobOf(withHeight("5' 6\" to 6'"))).height;
  expect(band.value).toEqual({ low: inches(66), high: inches(72) });
  expect(band.origin.path).toBe('Run:bank/HeightStatement');
  const [problem] = (await jobOf(withHeight('6\' to 66"'))).problems;
  expect(problem).toMatchObject({
    code: 'impossible-size',
    origin: { path: 'Run:bank/HeightStatement.high' },
    args: { what: 'height', size: "6'", reason: 'low-over-high', limit: `5' 6"` },
  });
});

it('lets a gap be nothing at all', async () => {
  const job = await jobOf(`${STOCK}\nrun bank {${RUN} end gap 0 mm; bottom 0 mm }`);
  expect(runOf(job)).toMatchObject({
    bottom: { value: { low: 0, high: 0 } },
    infill: { endGap: { value: 0 } },
  });
});

it('tells nothing of a length that is not written yet', async () => {
  expect(await problemsOf(`${STOCK}\nrun bank {${RUN} end gap\n}`)).toEqual([]);
});
