import { expect, it } from 'vitest';
import { inches, mm } from '../units/index.ts';
import { JOB_URI, jobOf, problemsOf, RUN, runOf, STOCK } from './testing/job-of.ts';

it('works for an empty file and for a library without a job', async () => {
  const job = await jobOf('');
  expect(job).toEqual({
    uri: JOB_URI,
    origin: { uri: JOB_URI, path: '', why: 'stated' },
    measure: {
      value: { unit: 'feet', step: inches(1 / 16) },
      origin: { uri: JOB_URI, path: '', why: 'default' },
    },
    measuredStock: [],
    paperwork: { approvals: [] },
    privacy: {},
    site: {},
    thresholds: [],
    accepted: [],
    sightTriangles: [],
    viewers: [],
    places: [],
    hides: [],
    options: [],
    rules: [],
    saw: {},
    quote: {
      tasks: [],
      prices: [],
      extras: [],
      overhead: undefined,
      markup: undefined,
      margin: undefined,
      tax: undefined,
    },
    onHand: [],
    stock: [],
    runs: [],
    problems: [],
  });
  expect(await jobOf(STOCK)).toMatchObject({ runs: [], problems: [] });
});

it('reads the demand to be alike from both sides, and slats on both faces', async () => {
  const job = await jobOf(`job { alike from both sides }\n${STOCK}`);
  expect(job).toMatchObject({ alike: { path: 'Job/AlikeDemand', why: 'stated' }, problems: [] });
  for (const kind of ['both', 'alternate'] as const) {
    const { problems, runs } = await jobOf(`${STOCK}\nrun bank {${RUN}slats on ${kind} faces\n}`);
    expect(problems).toEqual([]);
    expect(runs).toMatchObject([
      { infill: { mounting: { value: { kind }, origin: { path: 'Run:bank/SlatsStatement' } } } },
    ]);
  }
});

it('reads the job block', async () => {
  const job = await jobOf(
    'job "Orchard bank" { measure inches to 1/32"; see-through at most 12.5 %; gap at most 5/8" }',
  );
  expect(job).toMatchObject({
    name: 'Orchard bank',
    origin: { path: 'Job' },
    measure: {
      value: { unit: 'inches', step: inches(1 / 32) },
      origin: { path: 'Job/MeasureStatement', why: 'stated' },
    },
    privacy: {
      seeThrough: { value: 0.125, origin: { path: 'Job/SeeThroughLimit' } },
      gap: { value: inches(5 / 8), origin: { path: 'Job/GapLimit.limit' } },
    },
    problems: [],
  });
});

it.each([
  ['board b { width 90 mm; thickness 2 cm }', 'mm', 'derived'],
  ['pattern p(a = 5 mm) { }', 'mm', 'derived'],
  ['board b { width 90 mm; thickness 3/4" }', 'feet', 'default'],
  ['board b { width 90; thickness 7 }', 'feet', 'default'],
])('takes the measure of %s from its lengths', async (text, unit, why) => {
  expect((await jobOf(text)).measure).toMatchObject({ value: { unit }, origin: { why } });
});

it.each([
  ['inches', 'inches', inches(1 / 16)],
  ['feet', 'feet', inches(1 / 16)],
  ['mm', 'mm', mm(1)],
  ['cm', 'cm', mm(1)],
  ['m', 'm', mm(1)],
  ['mm to 5 mm', 'mm', mm(5)],
])('reads measure %s', async (text, unit, step) => {
  expect((await jobOf(`job { measure ${text} }`)).measure.value).toEqual({ unit, step });
});

it.each([
  ['furlongs', ''],
  ['ft', 'feet'],
  ['Inches', 'inches'],
  ['inchs', 'inches'],
  ['metric', 'mm'],
])('tells the measure %s, which is none', async (word, suggestion) => {
  const { problems, measure } = await jobOf(`job { measure ${word} }`);
  expect(problems).toEqual([
    {
      code: 'unknown-word',
      origin: { uri: JOB_URI, path: 'Job/MeasureStatement.unit', why: 'stated' },
      args: { word, place: 'measure', suggestion, known: 'inches, feet, mm, cm, m' },
    },
  ]);
  expect(measure.origin.why).toBe('default');
});

it.each([
  ['measure mm to 0 mm', 'impossible-size Job/MeasureStatement.step'],
  ['measure mm to 2 m', 'impossible-size Job/MeasureStatement.step'],
  ['measure mm to 5', 'unit-missing Job/MeasureStatement.step'],
  ['see-through at most 101 %', 'impossible-size Job/SeeThroughLimit.percent'],
  ['see-through at most 0 %', undefined],
  ['gap at most 5', 'unit-missing Job/GapLimit.limit'],
  ['measure mm; measure inches', 'stated-twice Job/MeasureStatement~2'],
])('tells what is wrong with %s', async (statement, problem) => {
  expect(await problemsOf(`job {\n${statement}\n}`)).toEqual(problem ? [problem] : []);
});

it('says what a share over the whole is held against', async () => {
  const [problem] = (await jobOf('job { see-through at most 120 % }')).problems;
  expect(problem?.args).toEqual({ what: 'see-through', size: '120 %', reason: 'over-100', limit: '100 %' });
});

it('tells a second job', async () => {
  expect((await jobOf('job a { }\njob b { }')).problems).toMatchObject([
    {
      code: 'stated-twice',
      origin: { path: 'Job~2' },
      args: { what: 'job', block: 'file' },
      related: [{ origin: { path: 'Job' } }],
    },
  ]);
});

it('tells names given twice to one kind of thing', async () => {
  const text = `material a\nmaterial a\npost a { along 3"; through 3" }\nboard a { width 3"; thickness 1" }`;
  expect((await jobOf(text)).problems).toEqual([
    {
      code: 'duplicate-name',
      origin: { uri: JOB_URI, path: 'Material:a~2.name', why: 'stated' },
      args: { name: 'a', kind: 'material', elsewhere: 0 },
      related: [{ origin: { uri: JOB_URI, path: 'Material:a', why: 'stated' }, note: 'material' }],
    },
    {
      code: 'duplicate-name',
      origin: { uri: JOB_URI, path: 'Board:a.name', why: 'stated' },
      args: { name: 'a', kind: 'stock', elsewhere: 0 },
      related: [{ origin: { uri: JOB_URI, path: 'Post:a', why: 'stated' }, note: 'stock' }],
    },
  ]);
  expect(await problemsOf(`${STOCK}\npattern p(x = 1", x = 2") { repeat wide; gap x }`)).toEqual([
    'duplicate-name Pattern:p/Parameter:x~2.name',
  ]);
});

it('tells a name that a used file has already', async () => {
  const job = await jobOf('use "stock.slat"\nboard wide { width 3"; thickness 1" }', { 'stock.slat': STOCK });
  expect(job.problems).toMatchObject([
    {
      code: 'duplicate-name',
      origin: { path: 'Board:wide.name' },
      args: { name: 'wide', kind: 'stock', elsewhere: 1 },
      related: [{ origin: { uri: 'file:///site/stock.slat', path: 'Board:wide' }, note: 'stock' }],
    },
  ]);
});

it('keeps the first of two runs or gates of one name', async () => {
  const gate = (station: string) => `gate g in bank { opening 36" from ${station}; hinges on left }`;
  const job = await jobOf(
    `${STOCK}\nrun bank {${RUN}}\nrun bank {${RUN} height 5' }\n${gate("4'")}\n${gate("12'")}\nrun foot {${RUN}}`,
  );
  expect(job.problems.map(({ code, origin }) => `${code} ${origin.path}`)).toContain(
    'duplicate-name Run:bank~2.name',
  );
  expect(job.problems.map(({ code, origin }) => `${code} ${origin.path}`)).toContain(
    'duplicate-name Gate:g~2.name',
  );
  expect(job.runs.map(({ name }) => name)).toEqual(['bank', 'foot']);
  expect(runOf(job).gates.map(({ station }) => station.value)).toEqual([inches(48)]);
});

it('tells an empty name', async () => {
  const job = await jobOf(`${STOCK}\nrun "" {${RUN}}\nboard " " { width 3"; thickness 1" }`);
  expect(job.problems).toMatchObject([
    { code: 'missing-statement', args: { what: 'name', block: 'run' } },
    { code: 'missing-statement', args: { what: 'name', block: 'board' } },
  ]);
  expect(job.runs).toEqual([]);
});
