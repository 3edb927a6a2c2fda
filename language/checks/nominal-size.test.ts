import { expect, it } from 'vitest';
import { checked, fixed, screen } from './testing/checked.ts';

const found = (stock: string) => checked(`${stock}\n${screen()}`, 'nominal-size');

it('tells what a board called six inches measures dressed', async () => {
  // American Softwood Lumber Standard PS 20, dressed dry sizes: nominal 6 is 5-1/2 wide.
  const { findings, messages } = await found('board six { width 6"; thickness 1" }');
  expect(findings.map(({ args, at }) => ({ ...args, path: at.path }))).toEqual([
    { stock: 'six', side: 'wide', stated: '6"', actual: '5-1/2"', path: 'Board:six/WidthStatement.value' },
  ]);
  expect(messages[0]).toContain('six is stated as 6" wide');
});

it('writes the dressed size, after which nothing is found', async () => {
  const before = await found('board six { width 6"; thickness 1" }');
  const [fix, ...others] = before.findings[0]?.fixes ?? [];
  expect([fix?.title, fix?.preferred, others]).toEqual(['Write 5-1/2"', true, []]);
  const after = await fixed(before, fix);
  expect(after.messages).toEqual([]);
  expect(after.open.document.textDocument.getText()).toContain('board six { width 5-1/2"; thickness 1" }');
});

it('tells of both sides of a post', async () => {
  const { findings } = await found('post four { along 4"; through 6" }');
  expect(findings.map(({ args }) => [args.side, args.stated, args.actual])).toEqual([
    ['along', '4"', '3-1/2"'],
    ['through', '6"', '5-1/2"'],
  ]);
});

it.each([
  'board near { width 5-15/16"; thickness 1" }',
  'board dressed { width 5-1/2"; thickness 3/4" }',
  'rip sawn from slat to 2"',
  'cleat square { width 2"; thickness 2" }',
  'material steel { kind steel }\npost tube { along 4"; through 4"; made of steel }',
])('takes %s as it is stated', async (stock) => {
  expect((await found(stock)).findings).toEqual([]);
});
