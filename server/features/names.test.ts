import { expect, it } from 'vitest';
import type { TextEdit } from 'vscode-languageserver-types';
import { openTexts } from '../testing/index.ts';

const TEXTS = {
  'a.slat':
    'use "b.slat"\nboard plank { width 5"; thickness 1" }\npattern p { repeat pl<|>ank, wide; end on plank }\n',
  'b.slat':
    'board wide { width 7"; thickness 1" }\n// one\n// two\n// three\nrun r {\n  height 6\'\n  fill q\n}\n',
};

async function rename(newName: string): Promise<TextEdit[]> {
  const { slat, document, params } = await openTexts(TEXTS);
  const edit = await slat.lsp.RenameProvider?.rename(document, { ...params, newName });
  return edit?.changes?.[document.uri.toString()] ?? [];
}

it('renames every place once, bare where the name can stand so', async () => {
  expect((await rename('board-6')).map(({ newText }) => newText)).toEqual(['board-6', 'board-6', 'board-6']);
});

it('puts names in quotes where they need them', async () => {
  for (const name of ['5/4 plank', 'run', 'two words']) {
    expect((await rename(name))[0]?.newText).toBe(`"${name}"`);
  }
  // Words of the language that may be names stay bare; quotes typed along are not doubled.
  expect((await rename('width'))[0]?.newText).toBe('width');
  expect((await rename('"two words"'))[0]?.newText).toBe('"two words"');
});

it('refuses an empty name', async () => {
  await expect(rename(' ')).rejects.toThrow('at least one letter');
});

it('shows the whole of a quoted name as what is renamed', async () => {
  const text = 'board "two wo<|>rds" { width 5"; thickness 1" }\n';
  const { slat, document, params } = await openTexts({ 'a.slat': text });
  const range = await slat.lsp.RenameProvider?.prepareRename(document, params);
  expect(range).toEqual({ start: { line: 0, character: 6 }, end: { line: 0, character: 17 } });
});

it('finds definitions in used files, and the files themselves', async () => {
  const inName = { ...TEXTS, 'a.slat': TEXTS['a.slat'].replace('<|>', '').replace('wide;', 'wi<|>de;') };
  const first = await openTexts(inName);
  const [link] = (await first.slat.lsp.DefinitionProvider?.getDefinition(first.document, first.params)) ?? [];
  expect(link?.targetUri).toBe('file:///work/b.slat');
  const inUse = { ...TEXTS, 'a.slat': TEXTS['a.slat'].replace('<|>', '').replace('b.slat', 'b<|>.slat') };
  const second = await openTexts(inUse);
  const [file] =
    (await second.slat.lsp.DefinitionProvider?.getDefinition(second.document, second.params)) ?? [];
  expect(file?.targetUri).toBe('file:///work/b.slat');
});

it('lists what a file gives names to', async () => {
  const { slat, document } = await openTexts(TEXTS);
  const params = { textDocument: { uri: document.uri.toString() } };
  const found = await slat.lsp.DocumentSymbolProvider?.getSymbols(document, params);
  expect(found?.map(({ name, kind }) => [name, kind])).toEqual([
    ['plank', 23],
    ['p', 5],
  ]);
});
