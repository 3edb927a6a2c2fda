import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { runCommandLine } from './run-command-line.ts';

const folder = mkdtempSync(join(tmpdir(), 'slatwright-takeoff-'));
afterAll(() => rmSync(folder, { recursive: true }));

const JOB = `job "Bank" { saw kerf 1/8" }
board plank { width 3-1/2"; thickness 3/4"; lengths 8' $9.20 each, 16' $18 each }
post pole { along 3-1/2"; through 3-1/2"; lengths 8' $14 each }
pattern even(space = 1/2") { repeat plank; gap space; end anywhere }
run bank { length 16'; posts pole, 2 bays; height 4'; bottom 4"; embed 2'; fill even; slats on front face }
quote { labor $48 per hour; task fixing 6 minutes per slat; price screw $0.10 each; price finish $60 per gallon }
option tight { in pattern even: gap 1/8" }
option low {
  in run bank: height 3'
}
`;

async function run(...words: readonly string[]) {
  writeFileSync(join(folder, 'bank.slat'), JOB);
  let [out, error] = ['', ''];
  const terminal = { out: (part: string) => (out += part), error: (part: string) => (error += part) };
  const code = await runCommandLine(words, folder, terminal);
  return { code, out, error };
}

it('tells what to buy, how to cut it and what it costs', async () => {
  const { code, out } = await run('takeoff', 'bank.slat');
  expect(code).toBe(0);
  expect(out).toContain(`3 x pole, 3-1/2" x 3-1/2", 8'`);
  expect(out).toMatch(/22 pieces of plank: .* proven cheapest/);
  expect(out).toContain('labor $105.60 (2.2 hours)');
});

it('says how few settings the saw takes where that is asked for', async () => {
  const { out } = await run('takeoff', 'bank.slat', '--by', 'settings');
  // Slats of one length, one setting; posts too.
  expect(out).toMatch(/22 pieces of plank: .* waste, 1 settings?, proven fewest at the least cost/);
  const tickets = await run('takeoff', 'bank.slat', '--by', 'settings', '--out', 'few');
  expect(tickets.code).toBe(0);
  expect(readFileSync(join(folder, 'few', 'cut-plank.svg'), 'utf8')).toContain('1 setting of the stop');
});

it('answers in JSON with every board, and in CSV for the yard', async () => {
  const { takeoffs } = JSON.parse((await run('takeoff', 'bank.slat', '--json')).out);
  const [{ stock, price, currency, proven }] = takeoffs;
  expect([currency, proven, price.whole]).toEqual(['USD', true, true]);
  const planks = stock.find((one: { bought: string }) => one.bought === 'plank');
  const pieces = planks.boards.flatMap((board: { parts: { strips: { pieces: unknown[] }[] }[] }) =>
    board.parts.flatMap(({ strips }) => strips.flatMap((strip) => strip.pieces)),
  );
  expect(pieces).toHaveLength(planks.pieces);
  expect(planks.bound).toBe(planks.cost);
  const csv = (await run('takeoff', 'bank.slat', '--csv')).out;
  expect(csv.split('\r\n')[0]).toBe('stock,width,thickness,length,pieces,spare,ft,board ft');
});

it('writes a ticket for each stock, with every board, and labels for all pieces', async () => {
  await run('takeoff', 'bank.slat', '--out', 'tickets');
  const files = readdirSync(join(folder, 'tickets')).sort();
  expect(files).toEqual(['cut-plank.svg', 'cut-pole.svg', 'labels.svg']);
  const labels = readFileSync(join(folder, 'tickets', 'labels.svg'), 'utf8');
  expect(labels.match(/font-weight="600"/g)).toHaveLength(1 + 25);
});

it('lays options beside the job', async () => {
  const { code, out } = await run('options', 'bank.slat');
  expect(code).toBe(0);
  const [head = '', ...rows] = out.split('\n');
  expect(head.trim().split(/\s{2,}/)).toEqual(['as it stands', 'tight', 'low']);
  const row = (name: string) =>
    rows
      .find((line) => line.startsWith(name))
      ?.trim()
      .split(/\s{2,}/)
      .slice(1) ?? [];
  const open = row('open straight on').map((share) => Number.parseFloat(share));
  expect(open[1]).toBeLessThan(open[0] ?? 0);
  const boards = row('boards to buy').map(Number);
  expect(boards[2]).toBeLessThan(boards[0] ?? 0);
  expect(row('price').every((price) => /^\$[\d,]+\.\d\d$/.test(price))).toBe(true);
});
