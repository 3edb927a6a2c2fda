import { URI } from 'langium';
import { expect, it } from 'vitest';
import { changeToEdit, createSlatCoreServices, syntaxFindings, type TextChange } from './index.ts';

const { shared } = createSlatCoreServices();
const uri = 'file:///a.slat';
const parse = (text: string) => shared.workspace.LangiumDocumentFactory.fromString(text, URI.parse(uri));

function changed(text: string, change: Omit<TextChange, 'uri'>): string | undefined {
  const document = parse(text);
  const edit = changeToEdit(document, { uri, ...change });
  if (!edit) return undefined;
  const { textDocument } = document;
  const [from, to] = [textDocument.offsetAt(edit.range.start), textDocument.offsetAt(edit.range.end)];
  return text.slice(0, from) + edit.newText + text.slice(to);
}

const append = (text: string, path: string, added: string) =>
  changed(text, { path, place: 'append', text: added });

it('replaces a statement, a value or a reference', () => {
  const text = "run r {\n  length 24' over posts // paced\n  posts a, 4 bays\n}";
  const replace = (path: string, by: string) => changed(text, { path, place: 'replace', text: by });
  expect(replace('Run:r/RunLength', "length 20'")).toBe(text.replace("length 24' over posts", "length 20'"));
  expect(replace('Run:r/RunLength.value', "20'")).toBe(text.replace("24'", "20'"));
  expect(replace('Run:r/PostsStatement.stock', '"b c"')).toBe(text.replace('posts a', 'posts "b c"'));
  expect(replace('Run:r/PostsStatement.spacing', '5 bays')).toBe(text.replace('4 bays', '5 bays'));
  expect(replace('Run:r/HeightStatement', "height 6'")).toBeUndefined();
  expect(replace('', '')).toBeUndefined();
});

it.each([
  ['a block of lines', "run r {\n  length 24'\n}\n", 'run r {\n  length 24\'\n  end gap 1/8"\n}\n'],
  ['its own indentation', "run r {\n\tlength 24'\n\t}", 'run r {\n\tlength 24\'\n\tend gap 1/8"\n\t}'],
  [
    'a comment at the end',
    "run r {\n  length 24' // paced\n}",
    'run r {\n  length 24\' // paced\n  end gap 1/8"\n}',
  ],
  ['an empty block of lines', 'run r {\n}', 'run r {\n  end gap 1/8"\n}'],
  ['an empty block', 'run r {}', 'run r { end gap 1/8" }'],
  ['an empty block with a space', 'run r { }', 'run r { end gap 1/8" }'],
  ['a block on one line', "run r { length 24' }", 'run r { length 24\'; end gap 1/8" }'],
  [
    'a brace behind the last statement',
    "run r {\n  length 24' }",
    'run r {\n  length 24\'\n  end gap 1/8"\n}',
  ],
  ['a missing brace', "run r {\n  length 24'\n", 'run r {\n  length 24\'\n  end gap 1/8"\n'],
  ['other line ends', "run r {\r\n  length 24'\r\n}", 'run r {\r\n  length 24\'\r\n  end gap 1/8"\r\n}'],
])('appends a statement to %s', (_title, text, expected) => {
  const result = append(text, 'Run:r', 'end gap 1/8"');
  expect(result).toBe(expected);
  const closed = syntaxFindings(parse(result ?? '')).filter(({ message }) => !message.includes('not closed'));
  expect(closed).toEqual([]);
});

it('gives a material without braces its braces', () => {
  expect(append('material larch\n', 'Material:larch', 'kind wood')).toBe('material larch { kind wood }\n');
});

it('appends an element to the file', () => {
  expect(append('material a', '', 'material b')).toBe('material a\n\nmaterial b\n');
  expect(append('material a\n', '', 'rail r {\n  width 2"\n}')).toBe(
    'material a\n\nrail r {\n  width 2"\n}\n',
  );
  expect(append('', '', 'material b')).toBe('material b\n');
});

it('does nothing where the block is gone', () => {
  expect(append('run r {\n}', 'Run:s', 'flip over')).toBeUndefined();
});
