import { createRequire } from 'node:module';
import { expect, it } from 'vitest';
import { type CutInstance, type CutPlan, planCuts, searchCuts } from './index.ts';
import { seeded } from './random.ts';
import { expectSound } from './testing/sound-plan.ts';

/** HiGHS, a general-purpose MILP solver (MIT): here over every way to cut a board of small instances. */
interface Highs {
  solve(
    program: string,
    options: object,
  ): {
    readonly Status: string;
    readonly ObjectiveValue: number;
  };
}
const highs: Highs = await createRequire(import.meta.url)('highs')();

function fewest(instance: CutInstance): CutPlan {
  const found = planCuts({ settingsWithin: 0, ...instance });
  if ('kind' in found) throw new Error(found.kind);
  expectSound(instance, found);
  return found;
}

const piecesOf = (rows: readonly (readonly [length: number, count: number])[]) =>
  rows.map(([length, count]) => ({ label: String(length), length, count }));

/** Ways to cut a board, each with how many boards. */
function waysOf({ boards }: CutPlan): Record<string, number> {
  const ways: Record<string, number> = {};
  for (const { length, pieces } of boards) {
    const way = `${length}: ${pieces.join(' ')}`;
    ways[way] = (ways[way] ?? 0) + 1;
  }
  return ways;
}

it('finds the two ways that boards without waste were made by', () => {
  const pieces = piecesOf([
    [50, 7],
    [30, 7],
    [20, 7],
    [55, 5],
    [45, 5],
  ]);
  const found = fewest({ kerf: 0, pieces, stock: [{ length: 100, price: 3 }] });
  expect(waysOf(found)).toEqual({ '100: 50 30 20': 7, '100: 55 45': 5 });
  expect(found).toMatchObject({ cost: 36, settings: 5, settingsBound: 5, proven: true });
});

it('takes one setting more where a length goes with two others: 3 boards hold a 60 each, and one of them no 40', () => {
  const pieces = piecesOf([
    [60, 3],
    [40, 2],
    [30, 1],
  ]);
  const stock = [{ length: 100, price: 1 }];
  const found = fewest({ kerf: 0, pieces, stock });
  expect(found).toMatchObject({ cost: 3, settings: 4, settingsBound: 4, proven: true });
  // On 4 boards too: the 60s on three alone leave 40, 40 and 30 for the fourth, which are 110. On 5 each has its own.
  expect(planCuts({ kerf: 0, pieces, stock, settingsWithin: 0.4 })).toMatchObject({
    settings: 4,
    proven: true,
  });
  const dearer = planCuts({ kerf: 0, pieces, stock, settingsWithin: 0.7 });
  expect(dearer).toMatchObject({ cost: 5, bound: 3, settings: 3, settingsBound: 3, proven: true });
});

it('leaves plans as they are where no settings are asked for', () => {
  const pieces = piecesOf([
    [60, 3],
    [40, 2],
  ]);
  const instance = { kerf: 0, pieces, stock: [{ length: 100, price: 1 }] };
  expect(planCuts(instance)).not.toHaveProperty('settingsBound');
});

it('agrees with a general-purpose solver on the fewest settings for so much, with kerf, prices and limited stock', () => {
  let [better, dearer] = [0, 0];
  for (let seed = 1; seed <= 40; seed++) {
    const instance = smallInstance(seed);
    const cheapest = planCuts(instance);
    if ('kind' in cheapest) continue;
    const found = planCuts({ ...instance, settingsWithin: seed % 3 === 0 ? 0.1 : 0 }) as CutPlan;
    expectSound(instance, found);
    const most = seed % 3 === 0 ? Math.floor(cheapest.cost * 1.1 + 1e-9) : cheapest.cost;
    expect(found.cost, `seed ${seed}`).toBeLessThanOrEqual(most);
    const least = leastSettings(instance, most);
    expect({ seed, settings: found.settings, proven: found.proven }).toEqual({
      seed,
      settings: least,
      proven: true,
    });
    if (found.settings < cheapest.settings) better++;
    if (found.cost > cheapest.cost) dearer++;
  }
  expect(better).toBeGreaterThan(3);
  expect(dearer).toBeGreaterThan(0);
});

function smallInstance(seed: number): CutInstance {
  const random = seeded(seed);
  const among = (low: number, high: number) => low + Math.floor(random() * (high - low + 1));
  const longest = among(30, 300);
  const pieces = Array.from({ length: among(2, 4) }, (_, i) => ({
    label: `p${i}`,
    length: among(Math.ceil(longest / 4), Math.floor(longest * 0.7)),
    count: among(1, 9),
  }));
  // Alike lengths take one setting.
  const apart = new Map(pieces.map((piece) => [piece.length, piece]));
  const stock = Array.from({ length: among(1, 2) }, () => {
    const length = among(Math.ceil(longest * 0.7), longest);
    return { length, price: length + among(0, 9), ...(among(0, 3) === 0 ? { available: among(0, 4) } : {}) };
  });
  return { kerf: among(0, 3), trim: among(0, 2), pieces: [...apart.values()], stock };
}

/** Every way to cut a board, and whether it is used at all: what is used counts for its lengths. */
function leastSettings({ kerf, trim = 0, pieces, stock }: CutInstance, most: number): number {
  const ways: { stock: number; counts: number[] }[] = [];
  for (const [j, { length }] of stock.entries()) {
    const fill = (item: number, room: number, counts: number[]): void => {
      const piece = pieces[item];
      if (!piece) {
        if (counts.some((count) => count > 0)) ways.push({ stock: j, counts });
        return;
      }
      for (let many = 0; many <= piece.count && many * (piece.length + kerf) <= room; many++)
        fill(item + 1, room - many * (piece.length + kerf), [...counts, many]);
    };
    fill(0, length - trim + kerf, []);
  }
  const sum = (name: string, by: (way: (typeof ways)[number]) => number) =>
    ways
      .map((way, k) => (by(way) === 0 ? '' : `${by(way)} ${name}${k}`))
      .filter(Boolean)
      .join(' + ');
  const total = pieces.reduce((all, { count }) => all + count, 0);
  const rows = [
    ...pieces.map(({ count }, i) => `${sum('x', ({ counts }) => counts[i] ?? 0)} = ${count}`),
    `${sum('x', (way) => stock[way.stock]?.price ?? 0)} <= ${most}`,
    ...stock.flatMap(({ available }, j) => {
      const boards = sum('x', (way) => (way.stock === j ? 1 : 0));
      return available === undefined || boards === '' ? [] : [`${boards} <= ${available}`];
    }),
    ...ways.map((_, k) => `x${k} - ${total} y${k} <= 0`),
  ];
  const settings = sum('y', ({ counts }) => counts.filter((count) => count > 0).length);
  const names = (name: string) => ways.map((_, k) => `${name}${k}`).join(' ');
  const program = `Minimize\n obj: ${settings}\nSubject To\n${rows.map((row, i) => ` r${i}: ${row}\n`).join('')}General\n ${names('x')}\nBinary\n ${names('y')}\nEnd\n`;
  const { Status, ObjectiveValue } = highs.solve(program, { mip_rel_gap: 0, mip_abs_gap: 0 });
  expect(Status).toBe('Optimal');
  return Math.round(ObjectiveValue);
}

it('never costs more than it may, and says of no plan that it is proven before both are', () => {
  for (let seed = 1; seed <= 2; seed++) {
    const random = seeded(seed);
    const pieces = Array.from({ length: 12 }, (_, i) => ({
      label: `p${i}`,
      length: 400 + Math.floor(random() * 2000),
      count: 2 + Math.floor(random() * 20),
    }));
    const instance = {
      kerf: 3,
      pieces,
      stock: [2400, 3000, 3600].map((length) => ({ length, price: length })),
    };
    const cheapest = planCuts(instance, stepsOf(400)) as CutPlan;
    const search = searchCuts({ ...instance, settingsWithin: 0 });
    let before = Infinity;
    for (let slice = 0; slice < 5; slice++) {
      search.run(stepsOf(60));
      const found = search.plan() as CutPlan;
      expectSound(instance, found);
      if (found.proven) expect(found.settings).toBe(found.settingsBound);
      if (found.cost <= cheapest.cost && cheapest.proven) {
        expect(found.settings).toBeLessThanOrEqual(before);
        before = found.settings;
      }
    }
    expect(before, `seed ${seed}`).toBeLessThan(cheapest.settings);
  }
});

it('keeps pieces that are ripped in parts and strips, with no more settings than the cheapest plan', () => {
  for (let seed = 1; seed <= 3; seed++) {
    const random = seeded(seed);
    const among = (low: number, high: number) => low + Math.floor(random() * (high - low + 1));
    const pieces = Array.from({ length: 5 }, (_, i) => ({
      label: `p${i}`,
      length: among(300, 1500),
      width: [90, 90, 40][i % 3] ?? 90,
      count: among(2, 9),
    }));
    const instance = { kerf: 3, pieces, stock: [{ length: 2400, width: 90, price: 7 }] };
    const cheapest = planCuts(instance, stepsOf(200)) as CutPlan;
    const found = planCuts({ ...instance, settingsWithin: 0 }, stepsOf(600)) as CutPlan;
    expectSound(instance, found);
    expect(found.cost).toBeLessThanOrEqual(cheapest.cost);
    expect(found.settings, `seed ${seed}`).toBeLessThanOrEqual(cheapest.settings);
    expect(found.settingsBound ?? Infinity).toBeLessThanOrEqual(found.settings);
  }
});

/** Lets a search go so many steps. */
function stepsOf(most: number): () => boolean {
  let steps = 0;
  return () => ++steps > most;
}
