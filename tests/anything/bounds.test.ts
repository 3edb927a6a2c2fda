import { expect, it } from 'vitest';
import { exampleTexts, openJobs } from '../jobs/index.ts';
import { createTypist, LONGEST } from './put-through.ts';

const JOB = `job "Bounds" { measure mm to 1 mm }
board slat { width 90 mm; thickness 20 mm }
post stake { along 90 mm; through 90 mm }
rail bar { width 70 mm; thickness 45 mm }
cleat nib { width 20 mm; thickness 20 mm }
pattern rows { repeat slat; gap 10 mm; end anywhere; fit gaps 5 mm to 30 mm }
run line {
  length 8 m
  posts stake, at most 2 m clear
  height 1800 mm; bottom 50 mm
  slats on front face
  fill rows
}
gate door in line { opening 1 m from 2 m; hinges on left; frame bar; flip upright }
`;

const typist = createTypist('/examples/bounds.slat');
/** The first text is slow whatever it says. */
await typist.type(JOB);
await typist.type(JOB.replace('8 m', '9 m'));

it.each<[what: string, from: string, to: string, codes: readonly string[]]>([
  ['a length past all sense', 'length 8 m', "length 999999999'", ['impossible-size']],
  ['a length too large for a number', 'length 8 m', `length ${'9'.repeat(400)} m`, ['impossible-size']],
  ['the longest length there is, closely posted', 'length 8 m', 'length 1000 m', []],
  [
    'posts closer than they are thick',
    '2 m clear',
    '0.1 mm on center',
    ['spacing-too-small', 'absurd-count'],
  ],
  ['bays without number', 'at most 2 m clear', '999999999 bays', ['absurd-count']],
  ['as many bays as may be', 'at most 2 m clear', '1999 bays', ['absurd-count']],
  ['no gap', 'gap 10 mm', 'gap 0 mm', []],
  [
    'no gap and nothing to spread',
    'gap 10 mm; end anywhere; fit gaps 5 mm to 30 mm',
    'gap 0"; fit gaps 0" to 0"',
    [],
  ],
  ['slats as thin as can be', 'width 90 mm; thickness 20', 'width 0.1 mm; thickness 20', []],
  ['slats of no width', 'width 90 mm; thickness 20', 'width 0 mm; thickness 20', ['impossible-size']],
  ['a repeat without end', 'repeat slat', 'repeat 999999999 of slat', ['absurd-count']],
  ['a repeat as long as may be', 'repeat slat', 'repeat 200 of slat', []],
  ['a screen as high as may be', 'height 1800 mm', 'height 1000 m', ['absurd-count']],
  ['a band that moves from nothing to everything', 'bottom 50 mm', 'bottom 0.1 mm to 1700 mm', []],
  ['gaps from nothing to everything', 'gaps 5 mm to 30 mm', 'gaps 0 mm to 900 m', []],
  ['an opening past all sense', 'opening 1 m', 'opening 900 m', ['gate-too-wide']],
  ['a measure as fine as may be', 'mm to 1 mm', 'inches to 1/64"', []],
  ['a measure of nothing', 'mm to 1 mm', 'mm to 0 mm', ['impossible-size']],
])('takes %s', async (_what, from, to, codes) => {
  expect(JOB).toContain(from);
  const { findings, milliseconds } = await typist.type(JOB.replace(from, to));
  expect(milliseconds).toBeLessThan(LONGEST);
  expect(findings.length).toBeLessThan(100);
  const found = findings.map(({ code }) => code);
  if (codes.length > 0)
    expect(
      codes.some((code) => found.includes(code)),
      found.join(),
    ).toBe(true);
});

it.each([
  ['braces', '{'.repeat(20_000)],
  ['braces in runs', 'run a { '.repeat(5_000)],
  ['parentheses', `pattern p${'('.repeat(20_000)}`],
  ['an endless list', `pattern p { repeat ${Array.from({ length: 10_000 }, () => 'slat').join(', ')} }`],
  [
    'remedies without end',
    `pattern p { repeat slat; gap 1"; fit ${Array.from({ length: 2_000 }, () => 'rip last').join(', else ')} }`,
  ],
  ['one endless word', 'x'.repeat(200_000)],
  ['one endless number', `board b { width ${'1'.repeat(100_000)} mm }`],
  ['an endless comment that is not closed', `/* ${'* '.repeat(100_000)}`],
  ['an endless string that is not closed', `use "${'../'.repeat(50_000)}`],
  ['spaces', ' '.repeat(500_000)],
  ['empty lines', '\n'.repeat(100_000)],
  ['dashes and digits', '1-'.repeat(20_000)],
  ['feet and inches', `1' `.repeat(10_000)],
  ['half a fraction', '1/'.repeat(20_000)],
])(
  'reads %s within its time',
  async (_what, text) => {
    const { milliseconds } = await typist.type(`${text}\n${JOB}`);
    expect(milliseconds).toBeLessThan(LONGEST);
  },
  60_000,
);

it('follows a chain of a thousand files as far as its bound', async () => {
  const chain = Object.fromEntries(
    Array.from({ length: 1_000 }, (_, n) => [
      `/chain/n${n}.slat`,
      `use "n${n + 1}.slat"\nboard b${n} { width 90 mm; thickness 20 mm }`,
    ]),
  );
  const { open } = openJobs(chain);
  const before = performance.now();
  const { findings } = await open('/chain/n0.slat');
  expect(findings.map(({ code }) => code)).toEqual(['use-limit']);
  expect(findings[0]?.message).toContain('too long a chain');
  expect(performance.now() - before).toBeLessThan(5 * LONGEST);
});

it('tells of a ring of files once, and comes to an end', async () => {
  const size = 30;
  const ring = Object.fromEntries(
    Array.from({ length: size }, (_, n) => [
      `/ring/n${n}.slat`,
      `use "n${(n + 1) % size}.slat"\nboard b${n} { width 90 mm; thickness 20 mm }`,
    ]),
  );
  const { open } = openJobs(ring);
  expect((await open('/ring/n0.slat')).findings.map(({ code }) => code)).toEqual(['use-circular']);
  expect((await open('/ring/n17.slat')).findings.map(({ code }) => code)).toEqual(['use-circular']);
});

it('sees every board along a ring, from wherever it looks', async () => {
  const { open } = openJobs({
    '/ring/a.slat':
      'use "b.slat"\nboard first { width 90 mm; thickness 20 mm }\nrip strip from second to 40 mm',
    '/ring/b.slat':
      'use "a.slat"\nboard second { width 90 mm; thickness 20 mm }\nrip lath from first to 40 mm',
  });
  for (const path of ['/ring/a.slat', '/ring/b.slat'])
    expect((await open(path)).findings.map(({ code }) => code)).toEqual(['use-circular']);
});

it('divides the longest run at a deck between its joists, or leaves it', async () => {
  const text = exampleTexts['/examples/jetty-terrace.slat']?.replace('length 4 m', 'length 1000 m') ?? '';
  const before = performance.now();
  const { findings } = await openJobs({ '/edge.slat': text }).open('/edge.slat');
  expect(findings.map(({ code }) => code)).toContain('deck-post-unbacked');
  expect(performance.now() - before).toBeLessThan(10 * LONGEST);
});
