import { expect, it } from 'vitest';
import { createTestServices } from '../../tests/memory-files.ts';
import { textFindings } from './index.ts';

async function findings(text: string) {
  const services = createTestServices({ '/a.slat': text });
  return textFindings(services.slat, await services.open('/a.slat'));
}

it('tells of an unknown name, its kind and near names', async () => {
  const text = 'board board-6 { width 5" }\npattern p {\n  repeat board-6, board-7\n}';
  expect(await findings(text)).toEqual([
    {
      code: 'unknown-name',
      message: 'No stock named "board-7" here; did you mean "board-6"?',
      range: { start: { line: 2, character: 18 }, end: { line: 2, character: 25 } },
      data: { code: 'unknown-name', kind: 'stock', name: 'board-7', suggestions: ['board-6'] },
    },
  ]);
});

it.each([
  ['run r { fill dunes }\npattern dune { }', 'No pattern named "dunes" here; did you mean "dune"?'],
  ['gate g in bnak { }\nrun bank { }', 'No run named "bnak" here; did you mean "bank"?'],
  ['board b { made of ceder }\nmaterial cedar', 'No material named "ceder" here; did you mean "cedar"?'],
  [
    'run r { fill p(spce = 1") }\npattern p(space = 1") { }',
    'No parameter named "spce" here; did you mean "space"?',
  ],
  ['run r { posts zzz }', 'No stock named "zzz" here.'],
  [
    'run r { posts a-3 }\npost a-1 {}\npost a-2 {}',
    'No stock named "a-3" here; did you mean "a-1" or "a-2"?',
  ],
  [
    'board b { width broad }',
    '"broad" is neither a length nor a parameter of a pattern here; write a length such as 5-1/2" or 140 mm.',
  ],
])('says of %j: %s', async (text, message) => {
  expect((await findings(text)).map((finding) => finding.message)).toEqual([message]);
});

it('lists errors of writing and of naming in the order of the text', async () => {
  const text = 'run r {\n  posts zzz\n  lenght 24\' $\n  fill "p\n}';
  expect((await findings(text)).map(({ code, range }) => `${code} ${range.start.line}`)).toEqual([
    'unknown-name 1',
    'syntax 2',
    'syntax 2',
    'syntax 3',
    'unknown-name 3',
  ]);
});

it('says nothing of a name that is only missing', async () => {
  expect((await findings('run r {\n  posts\n  fill\n}')).map(({ code }) => code)).toEqual([
    'syntax',
    'syntax',
  ]);
});
