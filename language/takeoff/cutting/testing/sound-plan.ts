import { expect } from 'vitest';
import type { CutBoard, CutInstance, CutPlan } from '../problem.ts';

/** Every piece cut once, no board overfilled, no more boards than there are, the cost what is bought, a bound below it. */
export function expectSound({ kerf, trim = 0, pieces, stock }: CutInstance, plan: CutPlan): void {
  const wanted = pieces.flatMap(({ label, count }) => Array.from({ length: count }, () => label)).sort();
  expect(plan.boards.flatMap((board) => board.pieces).sort()).toEqual(wanted);
  const lengths = new Map(pieces.map(({ label, length }) => [label, length]));
  const widths = new Map(pieces.map(({ label, width }) => [label, width]));
  const used = stock.map(() => 0);
  for (const board of plan.boards) {
    const spaceOf = (labels: readonly string[]) =>
      labels.reduce((sum, label) => sum + (lengths.get(label) ?? Number.NaN) + kerf, 0);
    if (board.parts) expectPartsSound(board, board.parts, stock[board.stock]?.width ?? 0);
    else expect(spaceOf(board.pieces)).toBeLessThanOrEqual(board.length - trim + kerf + 1e-9);
    expect(board).toMatchObject({
      length: stock[board.stock]?.length,
      price: stock[board.stock]?.price,
    });
    used[board.stock] = (used[board.stock] ?? 0) + 1;
  }
  for (const [j, { available = Infinity }] of stock.entries()) expect(used[j]).toBeLessThanOrEqual(available);
  expect(plan.cost).toBe(plan.boards.reduce((sum, { price }) => sum + price, 0));
  expect(plan.bound).toBeLessThanOrEqual(plan.cost);

  /** Parts lie end to end on the board, strips side by side in a part, pieces end to end in a strip. */
  function expectPartsSound(board: CutBoard, parts: NonNullable<CutBoard['parts']>, across: number): void {
    const ends = (list: readonly number[]) => list.reduce((sum, one) => sum + one + kerf, 0) - kerf;
    const along = ends(parts.map(({ length }) => length));
    expect(along + trim).toBeLessThanOrEqual(board.length + 1e-9);
    expect(board.offcut).toBeCloseTo(Math.max(0, board.length - trim - along - kerf), 6);
    expect(parts.flatMap((part) => part.strips.flatMap((strip) => strip.pieces))).toEqual(board.pieces);
    for (const { length, strips } of parts) {
      expect(ends(strips.map(({ width }) => width))).toBeLessThanOrEqual(across + 1e-9);
      for (const strip of strips) {
        for (const label of strip.pieces) expect(widths.get(label)).toBeCloseTo(strip.width, 9);
        const used = ends(strip.pieces.map((label) => lengths.get(label) ?? Number.NaN));
        expect(used).toBeLessThanOrEqual(length + 1e-9);
        expect(strip.offcut).toBeCloseTo(Math.max(0, length - used - kerf), 6);
      }
    }
  }
}
