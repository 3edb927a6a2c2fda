import { AstUtils, URI } from 'langium';
import { expect, it } from 'vitest';
import { TEXTS } from '../../tests/recovery/texts.ts';
import {
  createSlatCoreServices,
  nodePath,
  pathHeadRange,
  pathRange,
  propertyPath,
  resolvePath,
} from './index.ts';

const { shared } = createSlatCoreServices();
const parse = (text: string) => shared.workspace.LangiumDocumentFactory.fromString(text, URI.file('/a.slat'));
const pathsIn = (text: string) => AstUtils.streamAst(parse(text).parseResult.value).map(nodePath).toArray();

const SMALL = `job "Yard" { measure inches to 1/16" }
board "a/b.c~d:e%f" { width 5" }
pattern dune(slat = a, space = 1") { repeat slat, 2 of slat; gap space; gap 2" }
run bank { length 24'; fill dune(space = 2") }
board twice { width 1" }
board twice { width 2" }
`;

it('names nodes by kinds and names', () => {
  expect(pathsIn(SMALL)).toEqual(
    expect.arrayContaining([
      '',
      'Job',
      'Job/MeasureStatement.step',
      'Board:a%2fb%2ec%7ed%3ae%25f/WidthStatement.value',
      'Pattern:dune/Parameter:space.default',
      'Pattern:dune/RepeatStatement/items',
      'Pattern:dune/RepeatStatement/items~2',
      'Pattern:dune/PatternGap',
      'Pattern:dune/PatternGap~2.value',
      'Run:bank/RunLength.value',
      'Run:bank/FillStatement/Argument:space.value',
      'Board:twice~2/WidthStatement',
    ]),
  );
});

it.each([{ name: 'small', text: SMALL }, ...TEXTS])('leads back to every node of $name', ({ text }) => {
  const root = parse(text).parseResult.value;
  const nodes = AstUtils.streamAst(root).toArray();
  expect(nodes.length).toBeGreaterThan(20);
  for (const node of nodes) expect(resolvePath(root, nodePath(node))).toBe(node);
  expect(new Set(nodes.map(nodePath)).size).toBe(nodes.length);
});

it.each(TEXTS)('keeps every path of $name when lines, elements and statements are added', ({ text }) => {
  const more = `// above\nboard extra { width 1" }\n${text}`.replace(/^run (.*)\{$/gm, "run $1{\n  embed 3'");
  expect(more).not.toBe(text);
  const after = new Set(pathsIn(more));
  const before = pathsIn(text).filter((path) => !path.includes('EmbedStatement'));
  expect(before.filter((path) => !after.has(path))).toEqual([]);
});

it('survives half-typed nodes and nonsense', () => {
  const root = parse('run {\n}\nboard {\n width\n}\nuse').parseResult.value;
  for (const node of AstUtils.streamAst(root)) expect(resolvePath(root, nodePath(node))).toBe(node);
  for (const path of [
    'Run:no',
    'x~y~z',
    '...',
    '/',
    'Run~0',
    'Run~-1',
    '.$type',
    '.elements',
    '.constructor',
  ]) {
    expect(resolvePath(root, path) === undefined || path === '/' || path === '...').toBe(true);
  }
});

it('finds where a path stands, or what is left of it', () => {
  const document = parse(SMALL);
  const at = (path: string) => document.textDocument.getText(pathRange(document, path));
  expect(at('Run:bank/RunLength')).toBe("length 24'");
  expect(at('Run:bank/RunLength.value')).toBe("24'");
  expect(at('Run:bank/FillStatement.pattern')).toBe('dune');
  expect(at('Job/MeasureStatement.unit')).toBe('inches');
  expect(at('Run:bank/RunLength.no')).toBe("length 24'");
  expect(at('Run:bank/HeightStatement.low.text')).toMatch(/^run bank \{/);
  expect(pathRange(document, 'Run:gone/RunLength')).toEqual(pathRange(document, ''));
  expect(pathRange(document, '')).toEqual({
    start: { line: 0, character: 0 },
    end: { line: 0, character: 0 },
  });
});

it('underlines only the head of a block when asked to', () => {
  const document = parse(SMALL);
  const at = (path: string) => document.textDocument.getText(pathHeadRange(document, path));
  expect(at('Run:bank')).toBe('run bank');
  expect(at('Pattern:dune')).toBe('pattern dune(slat = a, space = 1")');
  expect(at('Run:bank/RunLength')).toBe("length 24'");
});

it('names properties too', () => {
  const root = parse(SMALL).parseResult.value;
  const run = resolvePath(root, 'Run:bank');
  expect(run && propertyPath(run, 'name')).toBe('Run:bank.name');
});
