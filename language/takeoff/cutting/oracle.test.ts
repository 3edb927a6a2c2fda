import { createRequire } from 'node:module';
import { expect, it } from 'vitest';
import { type CutInstance, planCuts } from './index.ts';
import { seeded } from './random.ts';
import { expectSound } from './testing/sound-plan.ts';

/** HiGHS, a general-purpose MILP solver (MIT): here over every full pattern of small instances, with no gap left. */
interface Highs {
  solve(program: string, options: object): { readonly Status: string; readonly ObjectiveValue: number };
}
const highs: Highs = await createRequire(import.meta.url)('highs')();

it('agrees with a general-purpose solver on small instances with kerf, trim, prices and limited stock', () => {
  for (let seed = 1; seed <= 120; seed++) {
    const instance = smallInstance(seed);
    const found = planCuts(instance);
    const least = leastCost(instance);
    if ('kind' in found) {
      expect(least, `seed ${seed}`).toBeUndefined();
      continue;
    }
    expectSound(instance, found);
    expect({ seed, ...found }).toMatchObject({ seed, cost: least, bound: least, proven: true });
  }
});

function smallInstance(seed: number): CutInstance {
  const random = seeded(seed);
  const among = (low: number, high: number) => low + Math.floor(random() * (high - low + 1));
  const longest = among(20, 400);
  const pieces = Array.from({ length: among(1, 6) }, (_, i) => ({
    label: `p${i}`,
    length: among(Math.ceil(longest / 6), Math.floor(longest * 0.8)),
    count: among(1, 7),
  }));
  const stock = Array.from({ length: among(1, 4) }, () => {
    const length = among(Math.ceil(longest / 2), longest);
    const price = among(0, 3) === 0 ? 0 : Math.round(length * (1 + 0.3 * random()));
    return { length, price, ...(price === 0 || among(0, 2) === 0 ? { available: among(0, 5) } : {}) };
  });
  return { kerf: among(0, 3), trim: among(0, 2), pieces, stock };
}

/** Undefined where there is no plan. */
function leastCost({ kerf, trim = 0, pieces, stock }: CutInstance): number | undefined {
  const columns: { stock: number; counts: number[] }[] = [];
  for (const [j, { length, available }] of stock.entries()) {
    if (available === 0) continue;
    const counts = pieces.map(() => 0);
    const fill = (item: number, room: number): void => {
      const piece = pieces[item];
      if (!piece) {
        if (counts.some((count) => count > 0)) columns.push({ stock: j, counts: [...counts] });
        return;
      }
      for (let many = Math.min(piece.count, Math.floor(room / (piece.length + kerf))); many >= 0; many--) {
        counts[item] = many;
        fill(item + 1, room - many * (piece.length + kerf));
      }
    };
    fill(0, length - trim + kerf);
  }
  if (!pieces.every((_, i) => columns.some(({ counts }) => (counts[i] ?? 0) > 0))) return undefined;
  const sum = (times: (column: (typeof columns)[number]) => number) =>
    columns
      .map((column, k) => (times(column) === 0 ? '' : `${times(column)} x${k}`))
      .filter(Boolean)
      .join(' + ');
  const costs = sum((column) => stock[column.stock]?.price ?? 0);
  const rows = [
    ...pieces.map(({ count }, i) => `${sum(({ counts }) => counts[i] ?? 0)} >= ${count}`),
    ...stock.flatMap(({ available }, j) => {
      const boards = sum((column) => (column.stock === j ? 1 : 0));
      return available === undefined || boards === '' ? [] : [`${boards} <= ${available}`];
    }),
  ];
  const program = `Minimize\n obj: ${costs || '0 x0'}\nSubject To\n${rows.map((row, i) => ` r${i}: ${row}\n`).join('')}General\n ${columns.map((_, k) => `x${k}`).join(' ')}\nEnd\n`;
  const { Status, ObjectiveValue } = highs.solve(program, { mip_rel_gap: 0, mip_abs_gap: 0 });
  if (Status === 'Infeasible') return undefined;
  expect(Status).toBe('Optimal');
  return Math.round(ObjectiveValue);
}
