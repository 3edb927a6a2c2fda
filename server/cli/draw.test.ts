import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { readSvg } from './testing/read-svg.ts';
import { folderWith, runHere, SHED } from './testing/run-here.ts';

const drawn = (folder: string, out = 'out') => readdirSync(join(folder, out)).sort();
const textOf = (folder: string, name: string) => readFileSync(join(folder, 'out', name), 'utf8');

it('writes a plan, each run and each gate from both sides, and a section, and names them', async () => {
  const folder = folderWith({ 'shed.slat': SHED });
  const { code, out, error } = await runHere(folder, 'draw', 'shed.slat', '--out', 'out');
  expect([code, error]).toEqual([0, '']);
  expect(drawn(folder)).toEqual([
    'side-back.svg',
    'side-door-leaf-back.svg',
    'side-door-leaf.svg',
    'side-plan.svg',
    'side-section.svg',
    'side.svg',
  ]);
  expect(out.split('\n').filter(Boolean)).toEqual([
    'out/side-plan.svg',
    'out/side.svg',
    'out/side-door-leaf.svg',
    'out/side-back.svg',
    'out/side-door-leaf-back.svg',
    'out/side-section.svg',
  ]);
});

it('writes well-formed pictures that stand alone', async () => {
  const folder = folderWith({ 'shed.slat': SHED });
  await runHere(folder, 'draw', 'shed.slat', '--out', 'out');
  for (const name of drawn(folder)) {
    const svg = textOf(folder, name);
    const elements = await readSvg(svg);
    const [root] = elements;
    expect(root?.name).toBe('svg');
    expect(svg).toMatch(/^<(\?xml|svg)/);
    expect(svg).toContain('xmlns="http://www.w3.org/2000/svg"');
    const box = root?.attributes.get('viewBox')?.split(' ').map(Number) ?? [];
    expect(box.length === 4 && box.every(Number.isFinite)).toBe(true);
    expect(elements.filter((one) => one.name === 'path').length).toBeGreaterThan(3);
    // Nothing is fetched and nothing runs.
    expect(svg.replace('http://www.w3.org/2000/svg', '')).not.toMatch(
      /https?:|href|url\(|@import|<script|\son\w+=/i,
    );
    expect(svg).not.toMatch(/NaN|Infinity|undefined/);
  }
  const texts = (await readSvg(textOf(folder, 'side.svg'))).filter(({ name }) => name === 'text');
  expect(texts.map(({ text }) => text)).toContain('218"');
});

it('takes names of any kind as text, and keeps files in the folder asked for', async () => {
  const nasty = '../../up<script>alert(1)</script>&amp;';
  const job = SHED.replaceAll('side', `"${nasty}"`).replace('gate door', 'gate "/etc/..//door"');
  const folder = folderWith({ 'shed.slat': job.replace('seen from path', 'seen from "<b>path</b> & co"') });
  const { code, out, error } = await runHere(folder, 'draw', 'shed.slat', '--out', 'out/deep');
  expect([code, error]).toEqual([0, '']);
  const names = drawn(folder, 'out/deep');
  expect(names).toHaveLength(6);
  for (const name of names) expect(name).toMatch(/^[\w-]+\.svg$/);
  expect(out.split('\n').filter(Boolean).sort()).toEqual(names.map((name) => `out/deep/${name}`).sort());
  expect(existsSync(join(folder, 'up'))).toBe(false);
  expect(readdirSync(folder).sort()).toEqual(['out', 'shed.slat']);
  for (const name of names) {
    const elements = await readSvg(readFileSync(join(folder, 'out/deep', name), 'utf8'));
    expect(elements.map((one) => one.name)).not.toContain('script');
    expect(elements.map((one) => one.name)).not.toContain('b');
  }
  const run = await readSvg(
    readFileSync(join(folder, 'out/deep', names.find((one) => !/door/.test(one)) ?? ''), 'utf8'),
  );
  expect(run.filter(({ name }) => name === 'text').some(({ text }) => text.includes(nasty))).toBe(true);
});

it('tells pictures of one name apart', async () => {
  const other = SHED.replaceAll('side', '"Si/de"').slice(SHED.indexOf('run '));
  const folder = folderWith({
    'a.slat': SHED.replaceAll('side', 'si-de'),
    'b.slat': `${SHED.slice(0, SHED.indexOf('run '))}${other}`,
  });
  const { code } = await runHere(folder, 'draw', 'a.slat', 'b.slat', '--out', 'out');
  expect(code).toBe(0);
  const names = drawn(folder).map((name) => name.toLowerCase());
  expect(names).toHaveLength(12);
  expect(new Set(names).size).toBe(12);
});

it('draws what can be worked out, says what cannot, and ends with 1', async () => {
  const folder = folderWith({ 'shed.slat': `${SHED}run broken { length 7 }\n` });
  const { code, out, error } = await runHere(folder, 'draw', 'shed.slat', '--out', 'out');
  expect(code).toBe(1);
  expect(out).toContain('out/side.svg\n');
  expect(error).toBe('shed.slat: run broken cannot be worked out; check says why.\n');
});

it('ends with 2 when it may not or cannot write', async () => {
  const folder = folderWith({ 'shed.slat': SHED, taken: 'a file' });
  expect((await runHere(folder, 'draw', 'shed.slat')).error).toContain('draw needs --out DIR');
  const { code, error } = await runHere(folder, 'draw', 'shed.slat', '--out', 'taken');
  expect(code).toBe(2);
  expect(error).toContain('taken cannot be written');
  expect((await runHere(folder, 'draw', 'shed.slat', '--out', 'out', '--json')).code).toBe(2);
});
