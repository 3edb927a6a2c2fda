import { createRequire } from 'node:module';
import { expect, it } from 'vitest';
import { type CutInstance, planCuts, searchCuts } from './index.ts';
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
  return leastOf(columns, pieces, stock);
}

type Columns = readonly { readonly stock: number; readonly counts: readonly number[] }[];

/** Undefined where there is no plan. */
function leastOf(
  columns: Columns,
  pieces: CutInstance['pieces'],
  stock: CutInstance['stock'],
): number | undefined {
  const sum = (times: (column: Columns[number]) => number) =>
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

it('agrees with it on small instances that are ripped as well, over every way to cut a board in three stages', () => {
  let proven = 0;
  for (let seed = 1; seed <= 80; seed++) {
    const instance = smallRipped(seed);
    const search = searchCuts(instance);
    for (let steps = 0; steps < 400 && !search.proven(); steps++) search.run(once());
    const found = search.plan();
    const least = leastRipped(instance);
    if ('kind' in found) {
      expect({ seed, least, kind: found.kind }).toMatchObject({ least: undefined });
      continue;
    }
    expectSound(instance, found);
    expect(least, `seed ${seed}`).toBeDefined();
    expect(found.bound, `seed ${seed}`).toBeLessThanOrEqual(least ?? 0);
    if (!found.proven) continue;
    proven++;
    expect({ seed, cost: found.cost }).toEqual({ seed, cost: least });
  }
  expect(proven).toBeGreaterThan(70);
});

/** Lets a search go one step. */
function once(): () => boolean {
  let steps = 0;
  return () => ++steps > 1;
}

function smallRipped(seed: number): CutInstance {
  const random = seeded(seed);
  const among = (low: number, high: number) => low + Math.floor(random() * (high - low + 1));
  const wide = among(8, 14);
  const widths = [wide, among(3, wide - 1), among(4, wide - 1)];
  const longest = among(20, 60);
  const pieces = Array.from({ length: among(2, 5) }, (_, i) => ({
    label: `p${i}`,
    length: among(Math.ceil(longest / 4), Math.floor(longest * 0.7)),
    width: widths[among(0, 2)] ?? wide,
    count: among(1, 4),
  }));
  const stock = Array.from({ length: among(1, 3) }, () => {
    const length = among(Math.ceil(longest * 0.7), longest);
    const price = Math.round(length * (1 + 0.3 * random()));
    return { length, width: wide, price };
  });
  const hand =
    among(0, 2) === 0
      ? [{ length: longest, width: widths[1] ?? wide, price: 0, available: among(1, 2) }]
      : [];
  return { kerf: among(0, 1), trim: among(0, 1), pieces, stock: [...stock, ...hand] };
}

/** Boards are crosscut into parts, parts ripped into strips, strips crosscut: each listed without looking for the best. */
function leastRipped({ kerf, trim = 0, pieces, stock }: CutInstance): number | undefined {
  const columns = stock.flatMap(({ length, width = 0, available }, j) => {
    if (available === 0) return [];
    const room = length - trim + kerf;
    const strips = new Map<string, { width: number; along: number; counts: number[] }>();
    const strip = (wide: number, at: number, along: number, counts: number[]): void => {
      const piece = pieces[at];
      if (!piece) {
        if (along > 0) strips.set(`${wide} ${counts}`, { width: wide, along, counts });
        return;
      }
      const each = piece.length + kerf;
      const most = piece.width === wide ? Math.min(piece.count, Math.floor((room - along) / each)) : 0;
      for (let many = 0; many <= most; many++) strip(wide, at + 1, along + many * each, [...counts, many]);
    };
    for (const wide of new Set(pieces.map((piece) => piece.width ?? 0)))
      if (wide <= width) strip(wide, 0, 0, []);
    const all = [...strips.values()];
    const within = (counts: readonly number[]) =>
      counts.every((count, i) => count <= (pieces[i]?.count ?? 0));
    const plus = (a: readonly number[], b: readonly number[]) => a.map((count, i) => count + (b[i] ?? 0));
    const parts = new Map<string, { along: number; counts: number[] }>();
    const part = (from: number, across: number, along: number, counts: number[]): void => {
      const key = counts.join();
      if (along > 0 && along < (parts.get(key)?.along ?? Infinity)) parts.set(key, { along, counts });
      for (let at = from; at < all.length; at++) {
        const one = all[at];
        if (!one || one.width + kerf > across) continue;
        const next = plus(counts, one.counts);
        if (within(next)) part(at, across - one.width - kerf, Math.max(along, one.along), next);
      }
    };
    const none = pieces.map(() => 0);
    part(0, width + kerf, 0, none);
    const shortest = new Map<string, number>([[none.join(), 0]]);
    const queue: number[][] = [none];
    for (let counts = queue.pop(); counts; counts = queue.pop()) {
      const used = shortest.get(counts.join()) ?? 0;
      for (const one of parts.values()) {
        const next = plus(counts, one.counts);
        const along = used + one.along;
        if (along > room || !within(next) || along >= (shortest.get(next.join()) ?? Infinity)) continue;
        shortest.set(next.join(), along);
        queue.push(next);
      }
    }
    return [...shortest.keys()].slice(1).map((key) => ({ stock: j, counts: key.split(',').map(Number) }));
  });
  if (!pieces.every((_, i) => columns.some(({ counts }) => (counts[i] ?? 0) > 0))) return undefined;
  return leastOf(columns, pieces, stock);
}
