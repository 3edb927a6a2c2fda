import { expect, it } from 'vitest';
import { openJob } from '../../tests/jobs/index.ts';
import { inches } from '../units/index.ts';
import { asPlanned, type FlatStock } from './index.ts';

const RUN = `board slat { width 5-1/2"; thickness 3/4" }
rip strip from slat to 1-3/4"
post stake { along 3-1/2"; through 3-1/2" }
pattern rows { repeat slat, strip; gap 1/2"; end anywhere }
run bank { length 10'; posts stake, 2 bays; height 4'; slats on front face; fill rows }
`;

async function read(text: string, files: Readonly<Record<string, string>> = {}) {
  const { job } = await openJob(text, files);
  const [run] = job.runs;
  const slats = run && 'infill' in run ? run.infill.pattern.repeat.map(({ value }) => value) : [];
  return { job, slats, told: job.problems.map(({ code, args, origin }) => [code, args.what, origin.path]) };
}

it('takes the mean of widths and the greatest thickness, and keeps what was planned', async () => {
  const { slats, told } = await read(
    `${RUN}measured board slat { width 5-7/16", 5-3/8", 5-7/16"; thickness 11/16", 23/32" }`,
  );
  expect(told).toEqual([]);
  // By hand: (5.4375 + 5.375 + 5.4375) / 3 = 5.416666..., to a whole tick.
  expect(slats[0]?.width.value).toBe(Math.round((inches(5.4375) * 2 + inches(5.375)) / 3));
  expect(slats[0]?.thickness.value).toBe(inches(23 / 32));
  expect(slats[0]?.measured).toMatchObject({
    widths: [inches(5.4375), inches(5.375), inches(5.4375)],
    planned: { width: { value: inches(5.5) }, thickness: { value: inches(0.75) } },
  });
  // A rip is sawn to its width; its thickness and its board are those that came.
  expect(slats[1]).toMatchObject({
    width: { value: inches(1.75) },
    thickness: { value: inches(23 / 32) },
    parent: { width: { value: slats[0]?.width.value } },
  });
  const before = slats.map((slat) => asPlanned(slat as FlatStock));
  expect(before[0]).toMatchObject({ width: { value: inches(5.5) }, thickness: { value: inches(0.75) } });
  expect(before[1]).toMatchObject({ thickness: { value: inches(0.75) }, parent: before[0] });
  expect(before[0]).not.toHaveProperty('measured');
});

it('measures stock of a library, in the file that measures it', async () => {
  const [head = '', ...rest] = RUN.split('\n');
  const text = `use "stock.slat"\n${rest.join('\n')}measured board slat { width 5-3/8" }`;
  const { job, slats } = await read(text, { '/examples/stock.slat': head });
  expect(slats[0]?.width.value).toBe(inches(5.375));
  expect(job.measuredStock.map(({ name }) => name)).toEqual(['slat']);
});

it('tells a second block, a second width and what is no board', async () => {
  const { told, slats } = await read(
    `${RUN}measured board slat { width 5-3/8"; width 5" }\nmeasured board slat { width 5" }\nmeasured board stake { width 3" }`,
  );
  expect(told).toEqual([
    ['stated-twice', 'width', 'MeasuredBoard:slat/MeasuredWidth~2'],
    ['stated-twice', 'measured board slat', 'MeasuredBoard:slat~2'],
    ['wrong-kind', undefined, 'MeasuredBoard:stake.stock'],
  ]);
  expect(slats[0]?.width.value).toBe(inches(5.375));
});

it('tells, where it was measured, that a rip no longer comes out of its board', async () => {
  const { told, job } = await read(`${RUN}measured board slat { width 1-5/8" }`);
  expect(told).toContainEqual(['impossible-size', 'width of strip', 'MeasuredBoard:slat']);
  expect(job.runs[0]).toMatchObject({ broken: true });
});

it('reads a measured height and posts off the line, and both of one post', async () => {
  const { job, told } = await read(
    `${RUN}measured bank { height 47-1/2"; post 2 planned at 5', off 1/2" toward front; post 2 leans left 1/8" in 4'; post 3 off 1/4" toward back; post 2 off 1" toward back }`,
  );
  expect(told).toEqual([['stated-twice', 'post 2', 'Measured:bank/MeasuredPost:2~3']]);
  const [run] = job.runs;
  expect(run && 'measured' in run && run.measured).toMatchObject({
    height: { value: inches(47.5) },
    posts: [
      { number: 2, planned: { value: inches(60) }, off: { value: -inches(0.5) }, slope: -0.125 / 48 },
      { number: 3, off: { value: inches(0.25) } },
    ],
  });
});
