import { expect, it } from 'vitest';
import { feet, inches, mm } from '../units/index.ts';
import { jobOf, problemsOf, RUN, runOf, STOCK } from './testing/job-of.ts';

const run = (statements: string, stock = STOCK) => jobOf(`${stock}\nrun bank {\n${statements}\n}`);
const without = (word: string) => RUN.replace(new RegExp(`^${word}.*$`, 'm'), '');

it('fills what a run does not state with the habits of the trade', async () => {
  const job = await run(RUN);
  expect(job.problems).toEqual([]);
  const bank = runOf(job);
  const home = { uri: job.uri, path: 'Run:bank', why: 'default' };
  expect(bank.seenFrom).toEqual({ value: 'front', origin: home });
  expect(bank.bottom).toEqual({ value: { low: inches(2), high: inches(2) }, origin: home });
  expect(bank.tops).toEqual({ value: 0, origin: home });
  expect(bank.ground).toEqual({ value: 0, origin: home });
  expect(bank.infill.endGap).toEqual({ value: inches(1 / 8), origin: home });
  expect(bank.infill.mounting).toEqual({ value: { kind: 'between' }, origin: home });
  expect(bank.embed).toBeUndefined();
  expect(bank.rail).toBeUndefined();
  expect(bank.measure).toEqual(job.measure.value);
});

it('takes the round figures of metric trade in a metric job', async () => {
  const job = await jobOf(
    `job { measure mm }\n${STOCK}\nrun bank { length 6 m; posts p4; height 1.8 m; fill beat }`,
  );
  expect(runOf(job)).toMatchObject({
    bottom: { value: { low: mm(50), high: mm(50) } },
    spacing: { value: { kind: 'at-most', limit: mm(1_800), measured: 'clear' }, origin: { why: 'default' } },
    infill: { endGap: { value: mm(3) } },
  });
});

it('reads everything a run may state', async () => {
  const job = await run(
    `seen from yard\nlength 24' over posts\nposts p4, 4 bays\nembed 3'\ntops 1" above slats\nheight 6'\n` +
      `bottom 2" to 4" above ground\nground down 7"\nslats on back face\nend gap 1/4"\nfill beat`,
  );
  expect(job.problems).toEqual([]);
  expect(runOf(job)).toMatchObject({
    seenFrom: { value: 'yard', origin: { path: 'Run:bank/SeenFrom', why: 'stated' } },
    embed: { value: feet(3), origin: { path: 'Run:bank/EmbedStatement.value' } },
    tops: { value: inches(1), origin: { path: 'Run:bank/PostTops.value' } },
    bottom: { value: { low: inches(2), high: inches(4) }, origin: { path: 'Run:bank/BottomStatement' } },
    ground: { value: -inches(7), origin: { path: 'Run:bank/GroundStatement.value' } },
    infill: {
      mounting: { value: { kind: 'face', face: 'back' }, origin: { path: 'Run:bank/SlatsStatement' } },
      endGap: { value: inches(1 / 4), origin: { path: 'Run:bank/EndGap.value' } },
    },
  });
  expect(runOf(await run(`${RUN}\nground up 7"`)).ground.value).toBe(inches(7));
});

it.each([
  ["at most 6' clear", { kind: 'at-most', limit: feet(6), measured: 'clear' }],
  ["at most 6'", { kind: 'at-most', limit: feet(6), measured: 'clear' }],
  ["at most 6' on center", { kind: 'at-most', limit: feet(6), measured: 'on-center' }],
  ['4 bays', { kind: 'bays', count: 4 }],
  ['5 posts', { kind: 'posts', count: 5 }],
])('reads posts spaced %s', async (text, spacing) => {
  const found = runOf(await run(RUN.replace("at most 6' clear", text))).spacing;
  expect(found).toMatchObject({ value: spacing, origin: { path: 'Run:bank/PostsStatement.spacing' } });
});

it('reads stations in the order written', async () => {
  const { value } = runOf(await run(RUN.replace("at most 6' clear", "at 7', 4' 6\", 0 mm"))).spacing;
  if (value.kind !== 'stations') throw new Error(value.kind);
  expect(value.stations.map((each) => each.value)).toEqual([feet(7), inches(54), 0]);
  expect(value.stations[1]?.origin.path).toBe('Run:bank/PostsStatement.spacing/stations~2');
});

it.each(['length', 'posts', 'height', 'fill'])('tells a run without %s at its name', async (what) => {
  const job = await run(without(what));
  expect(job.problems).toEqual([
    {
      code: 'missing-statement',
      origin: { uri: job.uri, path: 'Run:bank.name', why: 'stated' },
      args: { what, block: 'run', name: 'bank', candidates: '' },
    },
  ]);
  expect(job.runs).toEqual([
    { name: 'bank', origin: { uri: job.uri, path: 'Run:bank', why: 'stated' }, broken: true },
  ]);
});

it('tells a second statement of a kind and takes the first', async () => {
  const job = await run(`${RUN}\nheight 5'`);
  expect(job.problems).toMatchObject([
    {
      code: 'stated-twice',
      origin: { path: 'Run:bank/HeightStatement~2' },
      args: { what: 'height', block: 'run' },
      related: [{ origin: { path: 'Run:bank/HeightStatement' }, note: 'height' }],
    },
  ]);
  expect(runOf(job).height.value.high).toBe(feet(6));
});

it.each([
  ['0 bays', 'too-few', 1, 1999],
  ['1 posts', 'too-few', 2, 2000],
  ['2.5 bays', 'not-whole', 1, 1999],
  ['2000 bays', 'too-many', 1, 1999],
])('bounds posts spaced %s', async (text, reason, least, most) => {
  const job = await run(RUN.replace("at most 6' clear", text));
  const [count, what] = text.split(' ');
  expect(job.problems).toMatchObject([
    {
      code: 'absurd-count',
      origin: { path: 'Run:bank/PostsStatement.spacing.count' },
      args: { what, count, reason, least, most },
    },
  ]);
  expect(job.runs).toMatchObject([{ broken: true }]);
});

it('bounds the bays a limit makes, and the stations listed', async () => {
  const close = await run(RUN.replace("at most 6' clear", 'at most 0.1 mm on center'));
  expect(close.problems).toMatchObject([
    {
      code: 'absurd-count',
      origin: { path: 'Run:bank/PostsStatement.spacing' },
      args: { what: 'bays', count: '73152', reason: 'too-many', most: 1999 },
      related: [{ origin: { path: 'Run:bank/RunLength.value' }, note: "24'" }],
    },
  ]);
  const many = Array.from({ length: 2001 }, (_, n) => `${n} mm`).join(',\n');
  expect((await run(RUN.replace("at most 6' clear", `at ${many}`))).problems).toMatchObject([
    { code: 'absurd-count', origin: { path: 'Run:bank/PostsStatement.spacing' }, args: { count: '2001' } },
  ]);
});

it('bounds the slats of a run', async () => {
  const job = await run(`length 1000 m\nposts p4, 1999 bays\nheight 6'\nfill beat`);
  expect(job.problems).toMatchObject([
    {
      code: 'absurd-count',
      origin: { path: 'Run:bank.name' },
      args: { what: 'slats', reason: 'too-many', least: 1, most: 20000 },
    },
  ]);
  // 70 in high, mean pitch (5.5 + 1.5 + 1.5) / 3 + 0.5 in, 1999 bays.
  expect(job.problems[0]?.args.count).toBe(String(Math.ceil((70 / (8.5 / 3 + 0.5)) * 1999)));
  expect(job.runs).toMatchObject([{ broken: true }]);
});

it('tells posts of a board', async () => {
  const job = await run(RUN.replace('p4', 'wide'));
  expect(job.problems).toMatchObject([
    {
      code: 'wrong-kind',
      origin: { path: 'Run:bank/PostsStatement.stock' },
      args: { name: 'wide', kind: 'board', needed: 'post', place: 'posts' },
      related: [{ origin: { path: 'Board:wide' } }],
    },
  ]);
});

it('tells cleats and rails of a post', async () => {
  expect(await problemsOf(`${STOCK}\nrun bank {${RUN} cleats p4; rails p4 }`)).toEqual([
    'wrong-kind Run:bank/CleatsStatement.stock',
    'wrong-kind Run:bank/RailsStatement.stock',
  ]);
});

it('takes the only cleats there are, also from a used file', async () => {
  const own = runOf(await run(RUN)).infill.cleat;
  expect(own).toMatchObject({ value: { name: 'stop' }, origin: { path: 'Cleat:stop', why: 'derived' } });
  const job = await jobOf(`use "a.slat"\nrun bank {${RUN}}`, { 'a.slat': 'use "b.slat"', 'b.slat': STOCK });
  expect(runOf(job).infill.cleat).toMatchObject({
    value: { name: 'stop' },
    origin: { uri: 'file:///site/b.slat', path: 'Cleat:stop', why: 'derived' },
  });
  const stated = runOf(await run(`${RUN}\ncleats strip`)).infill.cleat;
  expect(stated).toMatchObject({
    value: { name: 'strip' },
    origin: { path: 'Run:bank/CleatsStatement.stock' },
  });
});

it('asks which cleats where there are several or none, and only where they are needed', async () => {
  const two = `${STOCK}\ncleat batten { width 1"; thickness 1" }`;
  expect((await run(RUN, two)).problems).toMatchObject([
    {
      code: 'missing-statement',
      origin: { path: 'Run:bank.name' },
      args: { what: 'cleats', block: 'run', name: 'bank', candidates: 'stop, batten' },
    },
  ]);
  const none = STOCK.replace(/^cleat.*$/m, '');
  const job = await run(RUN, none);
  expect(job.problems).toMatchObject([{ args: { what: 'cleats', candidates: '' } }]);
  expect(job.runs).toMatchObject([{ broken: true }]);
  const onFace = await run(`${RUN}\nslats on front face`, none);
  expect(onFace.problems).toEqual([]);
  expect(runOf(onFace).infill.cleat).toBeUndefined();
});

it('finds rails for upright slats in the same way', async () => {
  const only = runOf(await run(`${RUN}\nflip upright`)).rail;
  expect(only).toMatchObject({ value: { name: 'two-by' }, origin: { path: 'Rail:two-by', why: 'derived' } });
  const none = await run(`${RUN}\nflip upright`, STOCK.replace(/^rail.*$/m, ''));
  expect(none.problems).toMatchObject([
    { code: 'missing-statement', origin: { path: 'Run:bank.name' }, args: { what: 'rails', candidates: '' } },
  ]);
  expect(none.runs).toMatchObject([{ broken: true }]);
});

it('tells slats between what a run does not have', async () => {
  const job = await run(`${RUN}\nslats between frame`);
  expect(job.problems).toMatchObject([
    {
      code: 'wrong-statement',
      origin: { path: 'Run:bank/SlatsStatement' },
      args: { what: 'slats between frame', block: 'run' },
    },
  ]);
  expect(await problemsOf(`${STOCK}\nrun bank {${RUN} slats between posts // or frame\n}`)).toEqual([]);
});

it('is broken without a word when a name leads nowhere', async () => {
  for (const [from, to] of [
    ['posts p4', 'posts nowhere'],
    ['fill beat', 'fill nowhere'],
    ['fill beat', 'fill beat(slat = nowhere)'],
  ] as const) {
    const job = await run(RUN.replace(from, to));
    expect(job.problems).toEqual([]);
    expect(job.runs).toMatchObject([{ broken: true }]);
  }
});
