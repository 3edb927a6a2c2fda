import { expect, it } from 'vitest';
import { openJob } from '../../tests/jobs/index.ts';
import { inches } from '../units/index.ts';

const RUN = `board slat { width 3-1/2"; thickness 3/4" }
post stake { along 3-1/2"; through 3-1/2" }
pattern rows { repeat slat; gap 1/2"; end anywhere }
run bank { length 10'; posts stake, 2 bays; height 4'; slats on front face; fill rows }
`;

const measured = async (text: string) => {
  const { job } = await openJob(RUN + text);
  const [run] = job.runs;
  return { job, measured: run && 'measured' in run ? run.measured : undefined };
};

it('reads a bay at three heights, at two or at one', async () => {
  const read = await measured(
    'measured bank { bay 1 planned 5\', top 61", middle 60-1/2", bottom 60"; bay 2 clear 59" }',
  );
  expect(read.measured?.bays).toMatchObject([
    {
      number: 1,
      planned: { value: inches(60) },
      middle: inches(60.5),
      ends: { top: inches(61), bottom: inches(60) },
    },
    { number: 2, middle: inches(59) },
  ]);
  expect(read.measured?.bays[1]?.ends).toBeUndefined();
  const { measured: two } = await measured('measured bank { bay 1 top 61", bottom 60" }');
  expect(two?.bays[0]?.middle).toBe(inches(60.5));
});

it('names places by run and bay, wherever they stand in the text', async () => {
  const first = await measured('measured bank { bay 2 clear 59" }');
  const second = await measured('measured bank { bay 1 clear 58"; bay 2 clear 59" }');
  expect(first.measured?.bays[0]?.origin.path).toBe('Measured:bank/MeasuredBay:2');
  expect(second.measured?.bays[1]).toEqual(first.measured?.bays[0]);
});

it('reads how posts lean and what is cut', async () => {
  const { measured: read, job } = await measured(
    `measured bank { post 2 leans left 1/4" in 4'; cut bay 1; cut bay 2 courses 3 to 1 at 5'; cut bay 2 course 4 }`,
  );
  expect(job.problems).toEqual([]);
  expect(read?.posts).toMatchObject([{ number: 2, slope: -0.25 / 48 }]);
  expect(read?.cuts).toMatchObject([
    { bay: 1 },
    { bay: 2, courses: { first: 1, last: 3 }, length: { value: inches(60) } },
    { bay: 2, courses: { first: 4, last: 4 } },
  ]);
});

it('takes no post that lies down', async () => {
  const { job, measured: read } = await measured(`measured bank { post 2 leans left 2' in 4' }`);
  expect(job.problems.map(({ code }) => code)).toEqual(['impossible-size']);
  expect(read).toBeUndefined();
});

it('tells a bay or a block stated twice, and a bay without a number of its own', async () => {
  const { job } = await measured(
    'measured bank { bay 1 clear 59"; bay 1 clear 58"; bay 0 clear 1" }\nmeasured bank { bay 2 clear 1" }',
  );
  expect(job.problems.map(({ code, args }) => [code, args.what])).toEqual([
    ['stated-twice', 'bay 1'],
    ['absurd-count', 'bay'],
    ['stated-twice', 'measured bank'],
  ]);
});

it('tells ends between which there would be more slats than are laid out, and goes on without them', async () => {
  // By hand: three bays of 36,000" at a pitch of 4" are 27,000 slats, and of 24,000" 18,000; 20,000 are the most.
  const three = async (text: string) => {
    const { job } = await openJob(RUN.replace('2 bays', '3 bays') + text);
    const [run] = job.runs;
    return {
      codes: job.problems.map(({ code }) => code),
      read: run && 'measured' in run ? run.measured : undefined,
    };
  };
  const high = await three(`measured bank { bay 2 clear 37"; height 3000' }`);
  expect(high.codes).toEqual(['absurd-count']);
  expect(high.read?.height).toBeUndefined();
  expect(high.read?.bays).toHaveLength(1);
  const low = await three(`measured bank { bay 2 clear 37"; height 2000' }`);
  expect(low.codes).toEqual([]);
  expect(low.read?.height?.value).toBe(inches(24_000));
});

it('tells bays along which there would be more upright slats than are laid out, and goes on without them', async () => {
  // By hand: three bays of 27,000" at a pitch of 4" are 20,250 slats, and of 26,000" 19,500; 20,000 are the most.
  const upright = RUN.replace('slats on front face', 'flip upright; rails bar; slats on front face');
  const three = async (clear: string) => {
    const bays = [1, 2, 3].map((number) => `bay ${number} clear ${clear}`).join('; ');
    const bar = 'rail bar { width 3-1/2"; thickness 1-1/2" }\n';
    const { job } = await openJob(
      `${bar}${upright.replace('2 bays', '3 bays')}measured bank { ${bays}; height 47" }`,
    );
    const [run] = job.runs;
    const read = run && 'measured' in run ? run.measured : undefined;
    return { codes: job.problems.map(({ code }) => code), bays: read?.bays.length };
  };
  expect(await three('27000"')).toEqual({ codes: ['absurd-count'], bays: 0 });
  expect(await three('26000"')).toEqual({ codes: [], bays: 3 });
});
