import { expect, it } from 'vitest';
import { openTexts } from '../testing/index.ts';

const STOCK = `
board plank { width 5-1/2"; thickness 3/4" }
board "wide board" { width 7-1/4"; thickness 3/4" }
post pole { along 3-1/2"; through 3-1/2" }
cleat batten { width 3/4"; thickness 3/4" }
rail beam { width 3-1/2"; thickness 1-1/2" }
pattern weave(space = 1/2") { repeat plank; gap space }
`;

async function complete(text: string) {
  const { slat, document, params } = await openTexts({ 'a.slat': text + STOCK, 'lib/b.slat': '' });
  const list = await slat.lsp.CompletionProvider?.getCompletion(document, params);
  return list?.items ?? [];
}

const labels = async (text: string) => (await complete(text)).map(({ label }) => label);

it('offers elements where a file begins one, with tab stops', async () => {
  const items = await complete('<|>\n');
  expect(items.map(({ label }) => label)).toEqual(
    expect.arrayContaining(['use', 'job', 'board', 'pattern', 'run', 'gate']),
  );
  const run = items.find(({ label }) => label === 'run');
  expect(run?.textEdit?.newText).toMatch(/length \$\{3:24'\} over posts/);
  expect(run?.insertTextFormat).toBe(2);
});

it('proposes lengths in the system of the job', async () => {
  const items = await complete('job { measure mm to 1 mm }\nrun a {\n  <|>\n}\n');
  expect(items.find(({ label }) => label === 'height')?.textEdit?.newText).toMatch(/^height \$\{1:1\.8 m\}$/);
});

it('offers in a block what the block may hold, and nothing else', async () => {
  const found = await labels('run a {\n  <|>\n}\n');
  expect(found).toEqual(expect.arrayContaining(['height', 'slats between posts', 'fill', 'flip upright']));
  expect(found).not.toContain('repeat');
  expect(found).not.toContain('run');
  expect(await labels('pattern p {\n  <|>\n}\n')).toEqual(
    expect.arrayContaining(['repeat', 'gap', 'edge gap', 'end on', 'end whole', 'fit gaps']),
  );
});

it('narrows to what is typed', async () => {
  const found = await labels('run a {\n  hei<|>\n}\n');
  expect(found[0]).toBe('height');
});

it('offers names that fit the place, in quotes where they need them', async () => {
  expect(await labels('run a {\n  posts <|>\n}\n')).toEqual(['pole']);
  const slats = await complete('pattern p {\n  repeat <|>\n}\n');
  const texts = slats.map((item) => item.textEdit?.newText);
  expect(texts).toEqual(expect.arrayContaining(['plank', '"wide board"']));
  expect(texts).not.toContain('pole');
  const cleats = await complete('run a {\n  cleats <|>\n}\n');
  expect(cleats.sort((a, b) => ((a.sortText ?? '') < (b.sortText ?? '') ? -1 : 1))[0]?.label).toBe('batten');
});

it('offers patterns to fill with, and parameters inside a pattern', async () => {
  expect(await labels('run a {\n  fill <|>\n}\n')).toEqual(['weave']);
  expect(await labels('pattern p(space = 1/2") {\n  gap <|>\n}\n')).toEqual(['space']);
});

it('offers runs to hang a gate in', async () => {
  expect(await labels('run a { }\ngate b in <|> { }\n')).toEqual(['a']);
});

it('offers both ways to go on after one word', async () => {
  expect(await labels('run a {\n  posts pole, <|>\n}\n')).toEqual(expect.arrayContaining(['at most', 'at']));
});

it('offers whole phrases', async () => {
  const found = await labels('run a {\n  fit <|>\n}\n');
  expect(found).toEqual(expect.arrayContaining(['move ends', 'gaps', 'short repeat', 'rip last']));
});

it('offers the words of small vocabularies', async () => {
  expect(await labels('job {\n  measure <|>\n}\n')).toEqual(['inches', 'feet', 'mm', 'cm', 'm']);
  expect(await labels('material m {\n  kind <|>\n}\n')).toContain('composite');
});

it('offers the files of the workspace to use', async () => {
  const [item] = await complete('use <|>\n');
  expect(item?.textEdit?.newText).toBe('"lib/b.slat"');
});

it('proposes no words of the language where a name is given', async () => {
  expect(await labels('board <|>\n')).toEqual([]);
});

it('is silent in comments', async () => {
  expect(await labels('// <|>\n')).toEqual([]);
  expect(await labels('/* <|> */\n')).toEqual([]);
});
