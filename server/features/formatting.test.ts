import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { TextDocument } from 'langium';
import { describe, expect, it } from 'vitest';
import { openTexts } from '../testing/index.ts';

const OPTIONS = { tabSize: 2, insertSpaces: true };

async function format(text: string): Promise<string> {
  const { slat, document, params } = await openTexts({ 'a.slat': text });
  const edits = await slat.lsp.Formatter?.formatDocument(document, { ...params, options: OPTIONS });
  return TextDocument.applyEdits(document.textDocument, edits ?? []);
}

const UGLY = `use   "b.slat"
  job "x"{
measure inches   to 1/16"
     }


// about boards
board plank{width 5-1/2";thickness 3/4"  // dressed
 lengths 8' ,12'
,16'}
pattern p ( a=plank ,
gap2 = 1/2" ) {
  repeat a,   2 of  a
  fit   gaps 3/8" to 5/8" ,
  else rip last   /* or not */
}
run west { height 6' bottom 2" above ground

posts  pole , at most 6' clear }`;

it('lays out a text', async () => {
  expect(await format(UGLY)).toBe(`use "b.slat"
job "x" {
  measure inches to 1/16"
}

// about boards
board plank { width 5-1/2"; thickness 3/4"  // dressed
  lengths 8', 12'
    , 16' }
pattern p(a = plank,
  gap2 = 1/2") {
  repeat a, 2 of a
  fit gaps 3/8" to 5/8",
    else rip last   /* or not */
}
run west { height 6'    bottom 2" above ground

  posts pole, at most 6' clear }
`);
});

it('finds nothing more to do afterwards', async () => {
  const once = await format(UGLY);
  expect(await format(once)).toBe(once);
});

it('keeps line ends as they are written', async () => {
  expect(await format("run a {\r\nheight 6'\r\n}\r\n")).toBe("run a {\r\n  height 6'\r\n}\r\n");
});

it('keeps semicolons and comments where they are', async () => {
  const text = 'run a {;; height 6\';\n  // one\n\n\n  /* two\n   three */ bottom 2"; }\n';
  expect(await format(text)).toBe('run a {;; height 6\';\n  // one\n\n  /* two\n   three */ bottom 2"; }\n');
});

it('leaves the insides of lengths and texts alone', async () => {
  const text = 'job "two  spaces" {\n  gap at most 1\'  3"\n}\n';
  expect(await format(text)).toBe(text);
});

it('lays out nothing where there is something it cannot read', async () => {
  const text = "run a {\nheight   6' §\n}\n";
  expect(await format(text)).toBe(text);
});

it('lays out half-typed text without losing a letter', async () => {
  const half = UGLY.slice(0, 300);
  const letters = (text: string) => text.replace(/\s/g, '');
  expect(letters(await format(half))).toBe(letters(half));
});

describe('examples', () => {
  const files = readdirSync('examples', { recursive: true, encoding: 'utf8' });
  it.each(files.filter((file) => file.endsWith('.slat')))('are laid out already: %s', async (file) => {
    const text = readFileSync(join('examples', file), 'utf8');
    expect(await format(text)).toBe(text);
  });
});
