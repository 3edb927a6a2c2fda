import { expect, it } from 'vitest';
import { type CutInstance, type CutPlan, planCuts, searchCuts } from './index.ts';
import { seeded } from './random.ts';
import { expectSound } from './testing/sound-plan.ts';

function plan(instance: CutInstance): CutPlan {
  const found = planCuts(instance);
  if ('kind' in found) throw new Error(found.kind);
  expectSound(instance, found);
  return found;
}

const piecesOf = (rows: readonly (readonly [length: number, count: number])[]) =>
  rows.map(([length, count]) => ({ label: String(length), length, count }));

it('cuts the paper machine example from 73 rolls', () => {
  // Wikipedia, "Cutting stock problem": master rolls of 5600 mm, 13 widths; 73 rolls are the published optimum.
  const pieces = piecesOf([
    [1380, 22],
    [1520, 25],
    [1560, 12],
    [1710, 14],
    [1820, 18],
    [1880, 18],
    [1930, 20],
    [2000, 10],
    [2050, 12],
    [2100, 14],
    [2140, 16],
    [2150, 18],
    [2200, 20],
  ]);
  expect(plan({ kerf: 0, pieces, stock: [{ length: 5600, price: 1 }] })).toMatchObject({
    cost: 73,
    bound: 73,
    proven: true,
  });
});

it('cuts the textbook 100-inch rolls from no fewer than the program with fractions asks', () => {
  // Chvatal, Linear Programming (1983), p. 195: 45, 36, 31, 14 in; the program with fractions comes to 452.25.
  const pieces = piecesOf([
    [45, 97],
    [36, 610],
    [31, 395],
    [14, 211],
  ]);
  expect(plan({ kerf: 0, pieces, stock: [{ length: 100, price: 1 }] })).toMatchObject({
    cost: 453,
    proven: true,
  });
});

it('counts a cut between any two pieces, and none behind the last', () => {
  // Three 30s and two cuts of 2 make 94 exactly; of 93 only two fit.
  const pieces = piecesOf([[30, 6]]);
  expect(plan({ kerf: 2, pieces, stock: [{ length: 94, price: 5 }] }).cost).toBe(10);
  expect(plan({ kerf: 2, pieces, stock: [{ length: 93, price: 5 }] }).cost).toBe(15);
  expect(plan({ kerf: 2, trim: 1, pieces, stock: [{ length: 94, price: 5 }] }).cost).toBe(15);
});

it('finds plans without waste where they exist', () => {
  for (let seed = 1; seed <= 12; seed++) {
    const random = seeded(seed);
    // Boards cut into three or four pieces each with nothing left: no plan has fewer boards.
    const boards = 10 + Math.floor(random() * 20);
    const lengths: number[] = [];
    for (let board = 0; board < boards; board++) {
      const [a, b] = [250 + Math.floor(random() * 120), 260 + Math.floor(random() * 110)];
      lengths.push(a, b, 1000 - a - b);
    }
    const pieces = lengths.map((length, i) => ({ label: `p${i}`, length, count: 1 }));
    expect(plan({ kerf: 0, pieces, stock: [{ length: 1000, price: 7 }] })).toMatchObject({
      cost: boards * 7,
      proven: true,
    });
  }
});

it('uses what lies in the yard first where it pays, and no more than there is', () => {
  const pieces = piecesOf([[40, 5]]);
  const stock = [
    { length: 100, price: 900 },
    { length: 45, price: 0, available: 2 },
  ];
  const found = plan({ kerf: 1, pieces, stock });
  expect(found.cost).toBe(1800);
  expect(plan({ kerf: 1, pieces: piecesOf([[40, 4]]), stock }).cost).toBe(900);
});

it('names pieces that are too long, and those that limited stock has no place for', () => {
  const pieces = piecesOf([
    [120, 1],
    [40, 3],
  ]);
  expect(planCuts({ kerf: 0, pieces, stock: [{ length: 100, price: 1 }] })).toMatchObject({
    kind: 'too-long',
    labels: ['120'],
  });
  expect(
    planCuts({ kerf: 0, pieces: piecesOf([[40, 3]]), stock: [{ length: 100, price: 1, available: 1 }] }),
  ).toEqual({ kind: 'too-few-boards', lacking: [{ label: '40', count: 1 }] });
});

it('plans as many pieces as are told one by one, without a limit of its own on the list', () => {
  const pieces = Array.from({ length: 100_000 }, (_, i) => ({
    label: `p${i}`,
    length: 20 + (i % 2),
    count: 1,
  }));
  const began = performance.now();
  const found = searchCuts({ kerf: 0, pieces, stock: [{ length: 100, price: 1 }] }).plan();
  // By hand: 5 of 20 or 4 of 21 a board, and what is left of one length with what is left of the other.
  expect(found).toMatchObject({ boards: { length: 22_500 } });
  expect(performance.now() - began).toBeLessThan(20_000);
});

it('tells of a gap, never of a proof, when it is stopped early', () => {
  const random = seeded(5);
  const pieces = Array.from({ length: 60 }, (_, i) => ({
    label: `p${i}`,
    length: 2000 + Math.floor(random() * 5000),
    count: 1 + Math.floor(random() * 3),
  }));
  const instance = { kerf: 3, pieces, stock: [{ length: 12_000, price: 100 }] };
  const search = searchCuts(instance);
  const first = search.plan() as CutPlan;
  expectSound(instance, first);
  search.run(() => false);
  const last = search.plan() as CutPlan;
  expect(last.proven).toBe(true);
  expect(first.bound).toBeLessThanOrEqual(last.cost);
  expect(first.cost).toBeGreaterThanOrEqual(last.cost);
});

it('proves 2000 pieces of 40 lengths over 5 stock lengths', () => {
  const random = seeded(11);
  const pieces = Array.from({ length: 40 }, (_, i) => ({
    label: `p${i}`,
    length: 3000 + Math.floor(random() * 27_000),
    count: 50,
  }));
  const stock = [24_000, 30_000, 36_000, 42_000, 48_000].map((length) => ({
    length,
    price: Math.round(length * (0.028 + random() * 0.003)),
  }));
  const began = performance.now();
  const search = searchCuts({ kerf: 32, pieces, stock });
  search.run(() => search.proven() || performance.now() - began > 45_000);
  expect(search.plan()).toMatchObject({ proven: true });
});
