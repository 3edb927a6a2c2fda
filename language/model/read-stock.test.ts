import { expect, it } from 'vitest';
import { inches } from '../units/index.ts';
import { jobOf, problemsOf, RUN, runOf, STOCK } from './testing/job-of.ts';

it('reads stock with sizes, material, span and lengths, shortest first', async () => {
  const { stock } = await jobOf(STOCK);
  expect(stock.map(({ kind, name }) => `${kind} ${name}`)).toEqual([
    'board wide',
    'rip strip',
    'post p4',
    'rail two-by',
    'cleat stop',
  ]);
  expect(stock[0]).toMatchObject({
    width: { value: inches(5.5), origin: { path: 'Board:wide/WidthStatement.value' } },
    thickness: { value: inches(0.75) },
    material: { name: 'cedar', kind: { value: 'wood' } },
    spanLimit: { value: inches(72) },
    lengths: [{ value: inches(96) }, { value: inches(144) }],
  });
  expect(stock[2]).toMatchObject({
    along: { value: inches(3.5) },
    through: { value: inches(3.5) },
    lengths: [],
  });
});

it('makes a rip of its board, narrower', async () => {
  const [board, rip] = (await jobOf(STOCK)).stock;
  if (board?.kind !== 'board' || rip?.kind !== 'rip') throw new Error('board and rip expected');
  expect(rip.width).toEqual({
    value: inches(1.5),
    origin: { uri: 'file:///site/job.slat', path: 'Rip:strip.width', why: 'stated' },
  });
  expect(rip.parent).toBe(board);
  expect(rip.thickness).toEqual(board.thickness);
  expect(rip.lengths).toEqual(board.lengths);
});

it('rips a rip again, but nothing from itself', async () => {
  const twice = `${STOCK}\nrip fillet from strip to 3/4"`;
  expect((await jobOf(twice)).stock.find(({ name }) => name === 'fillet')).toMatchObject({
    parent: { name: 'strip', parent: { name: 'wide' } },
  });
  const round = 'rip a from b to 1"\nrip b from a to 1"\nrip c from a to 1"';
  const job = await jobOf(round);
  expect(job.problems).toMatchObject([
    { code: 'circular', origin: { path: 'Rip:a' }, args: { name: 'a', kind: 'rip' } },
    { code: 'circular', origin: { path: 'Rip:b' } },
  ]);
  expect(job.stock).toEqual([]);
});

it('tells a rip that is not narrower than its board', async () => {
  const [problem] = (await jobOf(`${STOCK}\nrip broad from wide to 5-1/2"`)).problems;
  expect(problem).toMatchObject({
    code: 'impossible-size',
    origin: { path: 'Rip:broad.width' },
    args: { what: 'width', size: '5-1/2"', reason: 'not-narrower', limit: '5-1/2"' },
    related: [{ origin: { path: 'Board:wide' }, note: 'board' }],
  });
});

it('tells a rip from a post', async () => {
  const [problem] = (await jobOf(`${STOCK}\nrip odd from p4 to 1"`)).problems;
  expect(problem).toMatchObject({
    code: 'wrong-kind',
    origin: { path: 'Rip:odd.parent' },
    args: { name: 'p4', kind: 'post', needed: 'board, rip, rail or cleat', place: 'rip' },
  });
});

it('tells sizes that are missing at the name of the block', async () => {
  const job = await jobOf('board b { }\npost p { along 90 mm }');
  expect(job.problems.map(({ code, origin, args }) => [code, origin.path, args])).toEqual([
    ['missing-statement', 'Board:b.name', { what: 'width', block: 'board', name: 'b', candidates: '' }],
    ['missing-statement', 'Board:b.name', { what: 'thickness', block: 'board', name: 'b', candidates: '' }],
    ['missing-statement', 'Post:p.name', { what: 'through', block: 'post', name: 'p', candidates: '' }],
  ]);
  expect(job.stock).toEqual([]);
});

it('tells a statement that is not of its kind of stock', async () => {
  const job = await jobOf(
    'post p { along 3"; through 3"; width 3" }\nboard b { width 3"; thickness 1"; along 3" }\ncleat c { width 1"; thickness 1"; span at most 3\' }',
  );
  expect(job.problems).toMatchObject([
    {
      code: 'wrong-statement',
      origin: { path: 'Post:p/WidthStatement' },
      args: { what: 'width', block: 'post' },
    },
    { origin: { path: 'Board:b/AlongStatement' }, args: { what: 'along', block: 'board' } },
    { origin: { path: 'Cleat:c/SpanLimit' }, args: { what: 'span', block: 'cleat' } },
  ]);
  expect(job.stock).toHaveLength(3);
});

it('takes the first of two statements and tells the second', async () => {
  const job = await jobOf('board b { width 3"; thickness 1"; width 4" }');
  expect(job.problems).toEqual([
    {
      code: 'stated-twice',
      origin: { uri: job.uri, path: 'Board:b/WidthStatement~2', why: 'stated' },
      args: { what: 'width', block: 'board' },
      related: [{ origin: { uri: job.uri, path: 'Board:b/WidthStatement', why: 'stated' }, note: 'width' }],
    },
  ]);
  expect(job.stock).toMatchObject([{ width: { value: inches(3) } }]);
});

it('tells too many lengths', async () => {
  const lengths = Array.from({ length: 201 }, () => '3 m').join(', ');
  const job = await jobOf(`board b { width 90 mm; thickness 20 mm; lengths ${lengths} }`);
  expect(job.problems).toMatchObject([
    {
      code: 'absurd-count',
      origin: { path: 'Board:b/LengthsStatement' },
      args: { what: 'lengths', count: '201', reason: 'too-many', least: 1, most: 200 },
    },
  ]);
});

it('tells a material word that is none, and takes wood', async () => {
  const job = await jobOf(
    'material m { kind aluminium }\nmaterial n { kind wod }\nmaterial o { kind xyzzy }',
  );
  const known = 'wood, composite, pvc, aluminum, steel';
  expect(job.problems.map(({ code, origin, args }) => [code, origin.path, args])).toEqual([
    [
      'unknown-word',
      'Material:m/KindStatement.kind',
      { word: 'aluminium', place: 'kind', suggestion: 'aluminum', known },
    ],
    [
      'unknown-word',
      'Material:n/KindStatement.kind',
      { word: 'wod', place: 'kind', suggestion: 'wood', known },
    ],
    [
      'unknown-word',
      'Material:o/KindStatement.kind',
      { word: 'xyzzy', place: 'kind', suggestion: '', known },
    ],
  ]);
  const plain = await jobOf('material oak\nboard b { width 3"; thickness 1"; made of oak }');
  expect(plain.stock[0]?.material?.kind).toEqual({
    value: 'wood',
    origin: { uri: plain.uri, path: 'Material:oak', why: 'default' },
  });
});

it('takes stock from a used file, with origins there', async () => {
  const job = await jobOf(`use "lib/stock.slat"\nrun bank {${RUN}}`, { 'lib/stock.slat': STOCK });
  const { post } = runOf(job);
  expect(post.origin).toMatchObject({ uri: job.uri, path: 'Run:bank/PostsStatement.stock' });
  expect(post.value.along.origin.uri).toBe('file:///site/lib/stock.slat');
  expect(job.stock).toEqual([]);
});

it('tells stock that is broken in its own file where it is used, and not what is wrong with it', async () => {
  const lib = STOCK.replace('post p4 { along 3-1/2"', 'post p4 { along 3-1/2');
  const job = await jobOf(`use "stock.slat"\nrun bank {${RUN}}`, { 'stock.slat': lib });
  expect(job.problems).toMatchObject([
    {
      code: 'used-broken',
      origin: { uri: job.uri, path: 'Run:bank/PostsStatement.stock' },
      args: { name: 'p4', kind: 'post' },
      related: [{ origin: { uri: 'file:///site/stock.slat', path: 'Post:p4' }, note: 'post' }],
    },
  ]);
  expect(job.runs).toMatchObject([{ broken: true }]);
});

it('leaves names that lead nowhere to linking', async () => {
  expect(
    await problemsOf('rip r from nothing to 1"\nboard b { width 3"; thickness 1"; made of air }'),
  ).toEqual([]);
});
