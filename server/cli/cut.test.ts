import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { runCommandLine } from './run-command-line.ts';

const folder = mkdtempSync(join(tmpdir(), 'slatwright-cut-'));
afterAll(() => rmSync(folder, { recursive: true }));

async function run(text: string, ...words: readonly string[]) {
  writeFileSync(join(folder, 'list'), text);
  let [out, error] = ['', ''];
  const terminal = { out: (part: string) => (out += part), error: (part: string) => (error += part) };
  const code = await runCommandLine(['cut', 'list', ...words], folder, terminal);
  return { code, out, error };
}

/**
 * Six posts of 20 and six rails of 15 from 50s at 4 and 35s at 3, no kerf: 210 to cover; two 35s of 20 + 15 and so
 * on six times cost 18, while 50s of 20 + 15 + 15 (three) and 20 + 20 (one and a half) cost 18 as well; 20 + 15 + 15
 * three times and 35s for three 20s cost 12 + 9 = 21; by hand no less than 210 / 50 * 4 = 16.8 and so 17.
 */
const LIST = {
  unit: 'cm',
  kerf: 0,
  pieces: [
    { label: 'post', length: 20, count: 6 },
    { label: 'rail', length: 15, count: 6 },
  ],
  stock: [
    { length: 50, price: 4 },
    { length: 35, price: 3 },
  ],
};

it('answers in JSON with one entry a board, cut from just the pieces asked for', async () => {
  const { code, out } = await run(JSON.stringify(LIST), '--json');
  expect(code).toBe(0);
  const { cost, bound, proven, boards } = JSON.parse(out);
  expect(proven).toBe(true);
  expect(bound).toBe(cost);
  expect(cost).toBe(boards.reduce((sum: number, board: { price: number }) => sum + board.price, 0));
  const labels = boards.flatMap((board: { pieces: string[] }) => board.pieces).sort();
  expect(labels).toEqual([...Array(6).fill('post'), ...Array(6).fill('rail')]);
  for (const { length, pieces } of boards) {
    const used = pieces.reduce((sum: number, label: string) => sum + (label === 'post' ? 20 : 15), 0);
    expect(used).toBeLessThanOrEqual(length);
  }
});

it('takes the same list as CSV, kerf and limited stock with it', async () => {
  const csv =
    'kind,label,length,count,price\npiece,post,20,6,\n"piece","rail",15,6,\nstock,,50,,4\nstock,,35,2,"3"\nkerf,,0.5,,\n';
  const { code, out } = await run(csv, '--json');
  expect(code).toBe(0);
  const { boards } = JSON.parse(out);
  expect(boards.filter((board: { length: number }) => board.length === 35).length).toBeLessThanOrEqual(2);
});

it('keeps decimals of prices and lengths exact', async () => {
  const { out } = await run(
    JSON.stringify({
      kerf: 0.125,
      pieces: [{ label: 'a', length: 23.625, count: 4 }],
      stock: [{ length: 96, price: 7.35 }],
    }),
    '--json',
  );
  // Four of 23-5/8 and three kerfs of 1/8 take 94-7/8: they fit on one board of 96.
  expect(JSON.parse(out)).toMatchObject({ cost: 7.35, bound: 7.35, proven: true, boards: [{ length: 96 }] });
});

it('tells four 2 ft pieces do not come out of an 8 ft board with a kerf (the last is 3/8 short)', async () => {
  const list = {
    kerf: 0.125,
    pieces: [{ label: 'a', length: 24, count: 4 }],
    stock: [{ length: 96, price: 1 }],
  };
  expect(JSON.parse((await run(JSON.stringify(list), '--json')).out).cost).toBe(2);
});

it('buys least length when asked for least waste', async () => {
  const list = {
    kerf: 0,
    pieces: [{ label: 'a', length: 30, count: 2 }],
    stock: [
      { length: 100, price: 1 },
      { length: 60, price: 2 },
    ],
  };
  expect(JSON.parse((await run(JSON.stringify(list), '--json')).out)).toMatchObject({
    cost: 1,
    boards: [{ length: 100 }],
  });
  const { out } = await run(JSON.stringify(list), '--json', '--by', 'waste');
  expect(JSON.parse(out)).toMatchObject({ cost: 2, bound: 60, proven: true, boards: [{ length: 60 }] });
});

it('takes few settings of the saw when asked for, at the least cost or a little more', async () => {
  // See fewest-settings.test.ts for the hand calculation.
  const pieces = [
    { label: 'long', length: 60, count: 3 },
    { label: 'middle', length: 40, count: 2 },
    { label: 'short', length: 30, count: 1 },
  ];
  const list = JSON.stringify({ kerf: 0, pieces, stock: [{ length: 100, price: 1.5 }] });
  const { out } = await run(list, '--by', 'settings');
  expect(out).toContain('No plan has a lower cost: proven.');
  expect(out).toContain('4 settings of the saw, boards cut alike together: no plan for so much takes fewer.');
  const dearer = await run(list, '--by', 'settings', '--more', '70');
  expect(dearer.out).toContain('The lowest cost is 4.5: proven.');
  expect(JSON.parse((await run(list, '--by', 'settings', '--more', '70', '--json')).out)).toMatchObject({
    cost: 7.5,
    bound: 4.5,
    settings: 3,
    settingsBound: 3,
  });
  expect((await run(list, '--more', '5')).error).toContain('--more goes with --by settings.');
  expect((await run(list, '--by', 'settings', '--more', 'x')).error).toContain('write percent from 0 to 100');
  expect((await run(list, '--by', 'time')).error).toContain('write cost, waste or settings');
});

it('says in words what is bought, what is left, and that it is proven', async () => {
  const { out } = await run(JSON.stringify(LIST));
  expect(out).toMatch(/x 35: 1 post, 1 rail; offcut 0/);
  expect(out).toContain('No plan has a lower cost: proven.');
});

it.each([
  ['{', /no JSON/],
  ['a,b\n1,2', /neither JSON nor CSV/],
  [
    JSON.stringify({ ...LIST, pieces: [{ label: 'a', length: -1, count: 1 }] }),
    /length of piece 1 is -1; write a number/,
  ],
  [JSON.stringify({ ...LIST, stock: [{ length: 5 }] }), /price of stock 1 is undefined/],
  [JSON.stringify({ ...LIST, pieces: [{ label: 'a', length: 1, count: 1.5 }] }), /write a whole number/],
])('says what to write instead: %j', async (text, message) => {
  const { code, error } = await run(text);
  expect(code).toBe(2);
  expect(error).toMatch(message);
});

it('names pieces longer than any board, and says when boards run out', async () => {
  const long = await run(JSON.stringify({ ...LIST, pieces: [{ label: 'beam', length: 51, count: 1 }] }));
  expect(long).toMatchObject({ code: 1 });
  expect(long.error).toContain('beam: longer than any board gives (50 cm after trim).');
  const few = await run(JSON.stringify({ ...LIST, stock: [{ length: 50, price: 4, available: 2 }] }));
  expect(few).toMatchObject({ code: 1 });
  expect(few.error).toContain('do not give all pieces');
});

it('rips where widths are given, in JSON and in CSV alike', async () => {
  // Of a board 88 wide and 200 long, kerf 2: 90 whole, and 90 ripped into three of 24, three times 24 and twice 2 being 76.
  const csv = `kind,label,length,width,count,price
kerf,,2,,,
piece,slat,90,88,1,
piece,strip,90,24,3,
stock,,200,88,,7
`;
  const { code, out } = await run(csv, '--json');
  expect(code).toBe(0);
  const { cost, proven, boards } = JSON.parse(out);
  expect([cost, proven]).toEqual([7, true]);
  expect(boards[0].parts).toHaveLength(2);
  expect((await run(csv)).out).toContain('90 into 24 (1 strip) + 24 (1 strip) + 24 (1 strip)');
  const json = {
    kerf: 2,
    pieces: [{ label: 'wide', length: 90, width: 90, count: 1 }],
    stock: [{ length: 200, width: 88, price: 7 }],
  };
  expect((await run(JSON.stringify(json))).error).toContain('wider than any board (88)');
});
