import { AstUtils, type LangiumDocument, URI } from 'langium';
import { expect, it } from 'vitest';
import { createTestServices } from '../../tests/memory-files.ts';
import { nodePath } from './index.ts';

/** Each reference of a file as `path -> file#path`, or `-> ?`. */
async function links(files: Readonly<Record<string, string>>, opened: string): Promise<string[]> {
  const document = await createTestServices(files).open(opened);
  return linksOf(document);
}

function linksOf(document: LangiumDocument): string[] {
  const found: string[] = [];
  for (const node of AstUtils.streamAst(document.parseResult.value)) {
    for (const { reference } of AstUtils.streamReferences(node).toArray()) {
      const target = 'ref' in reference ? reference.ref : undefined;
      const file = target && URI.parse(AstUtils.getDocument(target).uri.toString()).path;
      found.push(`${nodePath(node)} -> ${target ? `${file}#${nodePath(target)}` : '?'}`);
    }
  }
  return found;
}

it('sees what the file uses, and what that uses, but not the other way', async () => {
  const files = {
    '/job/a.slat': 'use "lib/b.slat"\nrun r { posts p; fill q }',
    '/job/lib/b.slat': 'use "c.slat"\npattern q { repeat s; end on s }\nrip t from own to 1"',
    '/job/lib/c.slat': 'post p { along 3" }\nboard s { width 5" }',
    '/job/lib/unused.slat': 'board own { width 5" }',
  };
  expect(await links(files, '/job/a.slat')).toEqual([
    'Run:r/PostsStatement -> /job/lib/c.slat#Post:p',
    'Run:r/FillStatement -> /job/lib/b.slat#Pattern:q',
  ]);
  expect(await links(files, '/job/lib/b.slat')).toEqual([
    'Pattern:q/RepeatStatement/items -> /job/lib/c.slat#Board:s',
    'Pattern:q/EndRule -> /job/lib/c.slat#Board:s',
    'Rip:t -> ?',
  ]);
});

it('keeps the kinds of names apart', async () => {
  const text = `material x { kind wood }
board x { width 5"; made of x }
pattern x { repeat x }
run x { posts x; fill x }
gate x in x { frame x }`;
  expect(await links({ '/a.slat': text }, '/a.slat')).toEqual([
    'Board:x/MadeOfStatement -> /a.slat#Material:x',
    'Pattern:x/RepeatStatement/items -> /a.slat#Board:x',
    'Run:x/PostsStatement -> /a.slat#Board:x',
    'Run:x/FillStatement -> /a.slat#Pattern:x',
    'Gate:x -> /a.slat#Run:x',
    'Gate:x/FrameStatement -> /a.slat#Board:x',
  ]);
});

it('prefers a parameter to stock inside its pattern, and knows it nowhere else', async () => {
  const text = `board a { width 5" }
board b { width 2" }
pattern p(a = a, gap = 1", c = a) { repeat a, b; gap gap; end on c }
pattern q { repeat c; gap gap }
run r { fill p(a = b, gap = gap, d = b); fit change a to 3" }`;
  expect(await links({ '/a.slat': text }, '/a.slat')).toEqual([
    // A default sees stock and the parameters before it, never itself.
    'Pattern:p/Parameter:a.default -> /a.slat#Board:a',
    'Pattern:p/Parameter:c.default -> /a.slat#Pattern:p/Parameter:a',
    'Pattern:p/RepeatStatement/items -> /a.slat#Pattern:p/Parameter:a',
    'Pattern:p/RepeatStatement/items~2 -> /a.slat#Board:b',
    'Pattern:p/PatternGap.value -> /a.slat#Pattern:p/Parameter:gap',
    'Pattern:p/EndRule -> /a.slat#Pattern:p/Parameter:c',
    'Pattern:q/RepeatStatement/items -> ?',
    'Pattern:q/PatternGap.value -> ?',
    'Run:r/FillStatement -> /a.slat#Pattern:p',
    'Run:r/FillStatement/Argument:a -> /a.slat#Pattern:p/Parameter:a',
    'Run:r/FillStatement/Argument:a.value -> /a.slat#Board:b',
    'Run:r/FillStatement/Argument:gap -> /a.slat#Pattern:p/Parameter:gap',
    'Run:r/FillStatement/Argument:gap.value -> ?',
    'Run:r/FillStatement/Argument:d -> ?',
    'Run:r/FillStatement/Argument:d.value -> /a.slat#Board:b',
    'Run:r/Fit/remedies -> /a.slat#Board:a',
  ]);
});

it('takes the first of two with one name, the own file before those it uses', async () => {
  const files = {
    '/a.slat':
      'use "b.slat"\nuse "c.slat"\nrun r { posts p; cleats q; rails s }\npost p { along 1" }\npost p { along 2" }',
    '/b.slat': 'cleat q { width 1" }\npost p { along 3" }',
    '/c.slat': 'cleat q { width 2" }\nrail s { width 3" }',
  };
  expect(await links(files, '/a.slat')).toEqual([
    'Run:r/PostsStatement -> /a.slat#Post:p',
    'Run:r/CleatsStatement -> /b.slat#Cleat:q',
    'Run:r/RailsStatement -> /c.slat#Rail:s',
  ]);
});

it('links across names in quotes', async () => {
  const text = 'post "4 x 4" { along 3" }\nrun r { posts \u201C4 x 4\u201D }';
  expect(await links({ '/a.slat': text }, '/a.slat')).toEqual(['Run:r/PostsStatement -> /a.slat#Post:4 x 4']);
});
