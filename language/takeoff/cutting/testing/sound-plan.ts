import { expect } from 'vitest';
import type { CutInstance, CutPlan } from '../problem.ts';

/** Every piece cut once, no board overfilled, no more boards than there are, the cost what is bought, a bound below it. */
export function expectSound({ kerf, trim = 0, pieces, stock }: CutInstance, plan: CutPlan): void {
  const wanted = pieces.flatMap(({ label, count }) => Array.from({ length: count }, () => label)).sort();
  expect(plan.boards.flatMap((board) => board.pieces).sort()).toEqual(wanted);
  const lengths = new Map(pieces.map(({ label, length }) => [label, length]));
  const used = stock.map(() => 0);
  for (const board of plan.boards) {
    const space = board.pieces.reduce((sum, label) => sum + (lengths.get(label) ?? Number.NaN) + kerf, 0);
    expect(space).toBeLessThanOrEqual(board.length - trim + kerf + 1e-9);
    expect(board).toMatchObject({
      length: stock[board.stock]?.length,
      price: stock[board.stock]?.price,
    });
    used[board.stock] = (used[board.stock] ?? 0) + 1;
  }
  for (const [j, { available = Infinity }] of stock.entries()) expect(used[j]).toBeLessThanOrEqual(available);
  expect(plan.cost).toBe(plan.boards.reduce((sum, { price }) => sum + price, 0));
  expect(plan.bound).toBeLessThanOrEqual(plan.cost);
}
