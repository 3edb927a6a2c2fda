import { expect, it } from 'vitest';
import { inches, mm } from '../units/index.ts';
import { jobOf, problemsOf, RUN, runOf, STOCK } from './testing/job-of.ts';

/** A run filled with a pattern of these statements. */
const filled = (pattern: string, args = '') =>
  `${STOCK}\n${pattern}\nrun bank { length 24'; posts p4, 4 bays; height 6'; fill p${args} }`;

it('writes a repeat out in full, each item with the place that names it', async () => {
  const { pattern } = runOf(await jobOf(`${STOCK}\nrun bank {${RUN}}`)).infill;
  expect(pattern.repeat.map(({ value, origin }) => [value.name, origin.path])).toEqual([
    ['wide', 'Pattern:beat/RepeatStatement/items'],
    ['strip', 'Pattern:beat/RepeatStatement/items~2'],
    ['strip', 'Pattern:beat/RepeatStatement/items~2'],
  ]);
  expect(pattern.gap).toMatchObject({
    value: inches(0.5),
    origin: { path: 'Pattern:beat/Parameter:space.default' },
  });
  expect(pattern.end).toMatchObject({
    value: { kind: 'on', slat: 'wide' },
    origin: { path: 'Pattern:beat/EndRule' },
  });
});

it('fills parameters with arguments', async () => {
  const job = await jobOf(`${STOCK}\nrun bank {${RUN.replace('beat', 'beat(slat = strip, space = 3/4")')}}`);
  const { pattern, fill } = runOf(job).infill;
  expect(pattern.repeat.map(({ value }) => value.name)).toEqual(['strip', 'strip', 'strip']);
  expect(pattern.gap).toMatchObject({
    value: inches(0.75),
    origin: { path: 'Run:bank/FillStatement/Argument:space.value', why: 'stated' },
  });
  expect(pattern.end.value).toEqual({ kind: 'on', slat: 'strip' });
  expect(fill.path).toBe('Run:bank/FillStatement');
});

it('follows a parameter that is the default of another', async () => {
  const pattern = 'pattern p(a = 1", b = a) {\n repeat wide\n gap b\n edge gap a\n}';
  const { infill } = runOf(await jobOf(filled(pattern, '(a = 3/4")')));
  expect(infill.pattern.gap.value).toBe(inches(0.75));
  expect(infill.pattern.edgeGap.value).toBe(inches(0.75));
});

it('takes the habits of the trade for what a pattern does not say', async () => {
  const imperial = runOf(await jobOf(filled('pattern p { repeat wide }'))).infill.pattern;
  const home = { uri: 'file:///site/job.slat', path: 'Pattern:p', why: 'default' };
  expect(imperial.gap).toEqual({ value: inches(0.5), origin: home });
  expect(imperial.edgeGap).toEqual({ value: 0, origin: home });
  expect(imperial.end).toEqual({ value: { kind: 'whole' }, origin: home });
  const metric = runOf(await jobOf(`job { measure mm }\n${filled('pattern p { repeat wide }')}`)).infill
    .pattern;
  expect(metric.gap.value).toBe(mm(12));
});

it('makes a half edge gap follow the gap', async () => {
  const { pattern } = runOf(
    await jobOf(filled('pattern p { repeat wide; gap 5/8"; edge gap half; end anywhere }')),
  ).infill;
  expect(pattern).toMatchObject({
    edgeGap: { value: inches(5 / 16), origin: { path: 'Pattern:p/EdgeGap' } },
    edgeHalf: true,
    end: { value: { kind: 'anywhere' } },
  });
});

it('tells a pattern without a repeat', async () => {
  const job = await jobOf(filled('pattern p { gap 1/2" }'));
  expect(job.problems).toMatchObject([
    {
      code: 'missing-statement',
      origin: { path: 'Pattern:p.name' },
      args: { what: 'repeat', block: 'pattern', name: 'p', candidates: '' },
    },
  ]);
  expect(job.runs).toMatchObject([{ broken: true }]);
});

it.each([
  ['0 of strip', { count: '0', reason: 'too-few' }, 'Pattern:p/RepeatStatement/items.count'],
  ['2.5 of strip', { count: '2.5', reason: 'not-whole' }, 'Pattern:p/RepeatStatement/items.count'],
  ['201 of strip', { count: '201', reason: 'too-many' }, 'Pattern:p/RepeatStatement/items.count'],
  ['9999999999999999999999 of strip', { reason: 'too-many' }, 'Pattern:p/RepeatStatement/items.count'],
  ['150 of strip, 51 of wide', { count: '201', reason: 'too-many' }, 'Pattern:p/RepeatStatement'],
])('bounds the repeat %s', async (repeat, args, path) => {
  const job = await jobOf(filled(`pattern p { repeat ${repeat} }`));
  expect(job.problems).toMatchObject([
    { code: 'absurd-count', origin: { path }, args: { what: 'slats', least: 1, most: 200, ...args } },
  ]);
  expect(job.runs).toMatchObject([{ broken: true }]);
});

it('takes 200 slats in a repeat', async () => {
  const job = await jobOf(filled('pattern p { repeat 200 of strip }'));
  expect(runOf(job).infill.pattern.repeat).toHaveLength(200);
});

it('tells a post among slats', async () => {
  const job = await jobOf(filled('pattern p { repeat wide, p4 }'));
  expect(job.problems).toMatchObject([
    {
      code: 'wrong-kind',
      origin: { path: 'Pattern:p/RepeatStatement/items~2.slat' },
      args: { name: 'p4', kind: 'post', needed: 'board, rip, rail or cleat', place: 'repeat' },
      related: [{ origin: { path: 'Post:p4' }, note: 'post' }],
    },
  ]);
});

it('tells an argument of the wrong kind at the argument', async () => {
  const pattern = 'pattern p(slat = wide, space = 1/2") { repeat slat; gap space }';
  expect((await jobOf(filled(pattern, '(slat = 3/4")'))).problems).toMatchObject([
    {
      code: 'wrong-kind',
      origin: { path: 'Run:bank/FillStatement/Argument:slat.value' },
      args: { name: '3/4"', kind: 'length', needed: 'board, rip, rail or cleat', place: 'repeat' },
    },
  ]);
  expect((await jobOf(filled(pattern, '(space = wide)'))).problems).toMatchObject([
    {
      code: 'wrong-kind',
      origin: { path: 'Run:bank/FillStatement/Argument:space.value' },
      args: { name: 'wide', kind: 'board', needed: 'length', place: 'gap' },
      related: [{ origin: { path: 'Pattern:p/PatternGap.value' }, note: 'gap' }],
    },
  ]);
  expect(await problemsOf(filled(pattern, '(slat = p4)'))).toEqual([
    'wrong-kind Run:bank/FillStatement/Argument:slat.value',
  ]);
});

it('tells an argument without a unit, and one given twice', async () => {
  const pattern = 'pattern p(space = 1/2") { repeat wide; gap space }';
  expect(await problemsOf(filled(pattern, '(space = 5)'))).toEqual([
    'unit-missing Run:bank/FillStatement/Argument:space.value',
  ]);
  const twice = await jobOf(filled(pattern, '(space = 1/4", space = 3/4")'));
  expect(twice.problems).toMatchObject([
    {
      code: 'stated-twice',
      origin: { path: 'Run:bank/FillStatement/Argument:space~2' },
      args: { what: 'space', block: 'fill' },
    },
  ]);
  expect(runOf(twice).infill.pattern.gap.value).toBe(inches(0.25));
});

it('tells an end on a slat that is not repeated', async () => {
  expect((await jobOf(filled('pattern p { repeat wide; end on strip }'))).problems).toMatchObject([
    {
      code: 'not-in-repeat',
      origin: { path: 'Pattern:p/EndRule' },
      args: { slat: 'strip', pattern: 'p', place: 'end on' },
    },
  ]);
  const lib = `${STOCK}\npattern q(slat = wide) { repeat slat; end on wide }`;
  const job = `use "lib.slat"\nrun bank { length 24'; posts p4, 4 bays; height 6'; fill q(slat = strip) }`;
  expect(await problemsOf(job, { 'lib.slat': lib })).toEqual(['not-in-repeat Run:bank/FillStatement']);
});

it('tells a broken pattern of a used file where it is used', async () => {
  const lib = `${STOCK}\npattern q { repeat wide; gap 5 }`;
  const job = await jobOf(`use "lib.slat"\nrun bank { length 24'; posts p4, 4 bays; height 6'; fill q }`, {
    'lib.slat': lib,
  });
  expect(job.problems).toMatchObject([
    {
      code: 'used-broken',
      origin: { path: 'Run:bank/FillStatement.pattern' },
      args: { name: 'q', kind: 'pattern' },
      related: [{ origin: { uri: 'file:///site/lib.slat', path: 'Pattern:q' } }],
    },
  ]);
});

it('tells what is wrong with a pattern that nothing uses, once', async () => {
  expect(await problemsOf(`${STOCK}\npattern p { repeat wide; gap 5 }`)).toEqual([
    'unit-missing Pattern:p/PatternGap.value',
  ]);
  const twice = `${filled('pattern p { repeat wide; gap 5 }')}\nrun two { length 9'; posts p4, 2 bays; height 6'; fill p }`;
  expect(await problemsOf(twice)).toEqual(['unit-missing Pattern:p/PatternGap.value']);
});
