import { expect, it } from 'vitest';
import { folderWith, runHere, SHED } from './testing/run-here.ts';

const NO_UNIT = `// Two boards more.\nboard spare { width 4; thickness 1" }\n${SHED}`;

it('says that nothing was found, and ends with 0', async () => {
  const folder = folderWith({ 'shed.slat': SHED });
  expect(await runHere(folder, 'check', 'shed.slat')).toEqual({
    code: 0,
    out: '1 file: 0 errors, 0 warnings, 0 for information\n',
    error: '',
  });
});

it('tells a finding as file:line:column severity code message, and ends with 1', async () => {
  const folder = folderWith({ 'jobs/shed.slat': NO_UNIT });
  const { code, out } = await runHere(folder, 'check', 'jobs/shed.slat');
  expect(code).toBe(1);
  const [first, ...rest] = out.split('\n');
  expect(first).toMatch(/^jobs\/shed\.slat:2:21 error unit-missing 4 of what\? /);
  expect(rest).toEqual(['1 file: 1 error, 0 warnings, 0 for information', '']);
});

it('ends with 0 when there are warnings only', async () => {
  const folder = folderWith({ 'shed.slat': SHED.replace('1/16" }', '1/16"; gap at most 1/8" }') });
  const { code, out } = await runHere(folder, 'check', 'shed.slat');
  expect(code).toBe(0);
  expect(out).toMatch(/^shed\.slat:13:3 warning gap-too-wide /m);
});

it('writes JSON with ranges as editors count them, and what each finding rests on', async () => {
  const folder = folderWith({ 'shed.slat': NO_UNIT, 'other.slat': SHED });
  const { code, out } = await runHere(folder, 'check', 'shed.slat', 'other.slat', '--json');
  expect(code).toBe(1);
  expect(JSON.parse(out)).toEqual([
    {
      file: 'shed.slat',
      code: 'unit-missing',
      severity: 'error',
      message: expect.stringContaining('4 of what?'),
      range: { start: { line: 1, character: 20 }, end: { line: 1, character: 21 } },
      basis: { kind: 'language', source: expect.any(String) },
    },
  ]);
  const clean = await runHere(folder, 'check', 'other.slat', '--json');
  expect([clean.code, JSON.parse(clean.out)]).toEqual([0, []]);
});

it('checks every job of a folder, in the order of their names', async () => {
  const folder = folderWith({ 'jobs/b.slat': NO_UNIT, 'jobs/a.slat': NO_UNIT, 'jobs/notes.txt': 'gap 7' });
  const { out } = await runHere(folder, 'check', 'jobs');
  expect(out.match(/^\S+\.slat:\d+:\d+/gm)).toEqual(['jobs/a.slat:2:21', 'jobs/b.slat:2:21']);
});

it.each([
  ['there is no such file', ['check', 'gone.slat']],
  ['is not a .slat file', ['check', 'notes.txt']],
  ['There is no .slat file in empty', ['check', 'empty']],
  ['needs a file', ['check']],
  ['is no command', ['chekc', 'shed.slat']],
  ["Unknown option '--jsn'", ['check', '--jsn', 'shed.slat']],
  ['--csv belongs to pieces', ['check', '--csv', 'shed.slat']],
  ['--out belongs to draw', ['check', '--out', 'x', 'shed.slat']],
])('ends with 2 and says why: %s', async (why, words) => {
  const folder = folderWith({ 'shed.slat': SHED, 'notes.txt': '', 'empty/notes.txt': '' });
  const { code, out, error } = await runHere(folder, ...words);
  expect([code, out]).toEqual([2, '']);
  expect(error).toContain(why);
});

it('tells how it is used: asked for with 0, without a word with 2', async () => {
  const folder = folderWith({});
  for (const words of [['help'], ['--help'], ['-h']]) {
    const { code, out } = await runHere(folder, ...words);
    expect([code, out.split('\n')[0]]).toEqual([0, 'slatwright: slatted screens from text']);
  }
  expect((await runHere(folder)).code).toBe(2);
});
