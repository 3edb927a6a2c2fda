import Module from 'manifold-3d';
import { expect, it } from 'vitest';
import { type CutEnd, type CutInstance, type CutPlan, type CutTurn, planCuts } from '../index.ts';
import { seeded } from '../random.ts';
import { turnedEnds } from './ends.ts';
import { layRow } from './lay-row.ts';

const cad = await Module();
cad.setup();

const KERF = 3;
/** At 45 degrees over so much of the section: across the width, or through the thickness. */
const slant = (across: number, through = 0): CutEnd => ({
  across,
  through,
  kerf: KERF * Math.hypot(1, Math.sign(across), Math.sign(through)),
});
const SQUARE = slant(0);
const FLAT: readonly CutTurn[] = ['none', 'end'];
const OVER: readonly CutTurn[] = ['none', 'end', 'over', 'end-over'];

const trapezoids = (count: number, by: (slope: number) => CutEnd) => [
  { label: 'trapezoid', length: 100, count, ends: [by(20), by(-20)] as const },
];

it('lays four trapezoids of 100 on 353, by hand: 4 middles of 80, 2 tips of 10, 3 cuts of 3 over the cosine', () => {
  // 320 + 20 + 3 * 4.2426 = 352.73; tip to tip they would take 400 + 3 * 4.2426 = 412.73.
  const pieces = trapezoids(4, (slope) => slant(slope));
  const plan = (length: number) => planCuts({ kerf: KERF, pieces, stock: [{ length, price: 1 }] });
  expect(plan(353)).toMatchObject({ cost: 1, bound: 1, proven: true });
  const [board] = (plan(353) as CutPlan).boards;
  // Every other one turned end for end.
  const turns = board?.places?.map(({ turn }) => turn);
  expect(turns).toEqual(
    turns?.[0] === 'end' ? ['end', 'none', 'end', 'none'] : ['none', 'end', 'none', 'end'],
  );
  expect(board?.places?.map(({ at }) => Math.round(at * 10) / 10)).toEqual([0, 84.2, 168.5, 252.7]);
  expect(plan(352)).toMatchObject({ cost: 2 });
});

it('turns bevels over only where both faces are alike, and says then that it is not proven', () => {
  const pieces = trapezoids(4, (slope) => slant(0, slope));
  const instance: CutInstance = { kerf: KERF, pieces, stock: [{ length: 353, price: 1 }] };
  expect(planCuts({ ...instance, turnsOver: true })).toMatchObject({ cost: 1, proven: true });
  expect(planCuts(instance)).toMatchObject({ cost: 2, bound: 1, proven: false });
});

it('lays ends of parallelograms together as they are: 3 middles of 80, 2 tips of 10, 2 cuts', () => {
  const pieces = [{ label: 'p', length: 100, count: 3, ends: [slant(0, 20), slant(0, 20)] as const }];
  // 240 + 20 + 8.485 = 268.485.
  const plan = (length: number) => planCuts({ kerf: KERF, pieces, stock: [{ length, price: 1 }] });
  expect(plan(268.5)).toMatchObject({ cost: 1, proven: true });
  expect(plan(268.4)).toMatchObject({ cost: 2 });
});

it('takes room for the wider cuts and no more from tip to tip, whatever lies beside what', () => {
  const pieces = [
    { label: 'a', length: 90, count: 1, ends: [SQUARE, slant(30)] as const },
    { label: 'b', length: 50, count: 1 },
  ];
  // Square ends together: 90 + 3 + 50; the angled end last.
  const plan = planCuts({ kerf: KERF, pieces, stock: [{ length: 143, price: 1 }] }) as CutPlan;
  expect(plan).toMatchObject({ cost: 1, proven: true });
  expect(plan.boards[0]?.offcut).toBe(0);
});

/** Solids of a board's pieces with a section of 1 by 1, as they lie, each end moved out by half the lesser of its cuts. */
function solidsOn(instance: CutInstance, board: CutPlan['boards'][number]): Solid[] {
  const demands = new Map(instance.pieces.map((piece) => [piece.label, piece]));
  return board.pieces.map((label, k) => {
    const { length = 0, ends = [SQUARE, SQUARE] as const } = demands.get(label) ?? {};
    const { at, turn } = board.places?.[k] ?? { at: Number.NaN, turn: 'none' as const };
    const [first, second] = turnedEnds(ends, turn);
    const tip = (end: CutEnd) => (Math.abs(end.across) + Math.abs(end.through)) / 2;
    const grown = Math.min(first.kerf, second.kerf) / 2 - 1e-3;
    const corners = [-0.5, 0.5].flatMap((v) => [-0.5, 0.5].map((s) => [v, s] as const));
    const plane = (end: CutEnd, middle: number) =>
      corners.map(([v, s]): [number, number, number] => [middle + end.across * v + end.through * s, v, s]);
    return {
      points: [...plane(first, at + tip(first) - grown), ...plane(second, at + length - tip(second) + grown)],
      from: at,
      to: at + length,
    };
  });
}

interface Solid {
  readonly points: [number, number, number][];
  readonly from: number;
  readonly to: number;
}

function randomInstance(seed: number, most: number, side: 'across' | 'through' | 'both'): CutInstance {
  const random = seeded(seed);
  const among = (low: number, high: number) => low + Math.floor(random() * (high - low + 1));
  const end = (): CutEnd => {
    const slope = [0, 16, -16, 16, -16, 30][among(0, 5)] ?? 0;
    const other = [0, 0, 12, -12][among(0, 3)] ?? 0;
    if (side === 'both') return slant(slope, other);
    return side === 'across' ? slant(slope) : slant(0, slope);
  };
  const kinds = among(1, 3);
  return {
    kerf: KERF,
    turnsOver: seed % 2 === 0,
    pieces: Array.from({ length: kinds }, (_, i) => ({
      label: `p${i}`,
      length: among(70, 150),
      count: among(1, Math.floor(most / kinds)),
      ends: [end(), end()] as const,
    })),
    stock: [{ length: among(250, 420), price: 1 }],
  };
}

it('lets no pieces overlap that lie nested, with half a cut around each (manifold)', () => {
  let nested = 0;
  for (let seed = 1; seed <= 40; seed++) {
    const instance = randomInstance(seed, 14, 'both');
    const plan = planCuts(instance) as CutPlan;
    for (const board of plan.boards) {
      if (board.places === undefined) continue;
      const solids = solidsOn(instance, board);
      expect(Math.min(...solids.map(({ from }) => from))).toBeGreaterThanOrEqual(-1e-6);
      expect(Math.max(...solids.map(({ to }) => to))).toBeLessThanOrEqual(board.length + 1e-6);
      const hulls = solids.map(({ points }) => cad.Manifold.hull(points));
      for (const [k, one] of hulls.entries())
        for (const [l, other] of hulls.entries()) {
          if (l <= k) continue;
          expect(one.intersect(other).volume(), `seed ${seed}`).toBeLessThan(1e-6);
          if ((solids[k]?.to ?? 0) > (solids[l]?.from ?? Infinity)) nested++;
        }
    }
  }
  expect(nested).toBeGreaterThan(20);
});

it('cuts every piece once, and is never cheaper than what is listed as possible, nor its bound above that', () => {
  let [proven, least, gained] = [0, 0, 0];
  for (let seed = 1; seed <= 60; seed++) {
    const instance = randomInstance(seed, 7, 'both');
    const plan = planCuts(instance) as CutPlan;
    const wanted = instance.pieces.flatMap(({ label, count }) => Array.from({ length: count }, () => label));
    expect(plan.boards.flatMap(({ pieces }) => pieces).sort()).toEqual(wanted.sort());
    const optimum = leastCost(instance);
    expect(plan.bound, `seed ${seed}`).toBeLessThanOrEqual(optimum);
    expect(plan.cost, `seed ${seed}`).toBeGreaterThanOrEqual(optimum);
    if (plan.proven) expect(plan.cost).toBe(optimum);
    if (plan.proven) proven++;
    if (plan.cost === optimum) least++;
    const square = instance.pieces.map(({ ends, ...piece }) => ({
      ...piece,
      length: piece.length + Math.max(ends?.[0].kerf ?? 0, ends?.[1].kerf ?? 0) - KERF,
    }));
    if ((planCuts({ ...instance, pieces: square }) as CutPlan).cost > plan.cost) gained++;
  }
  expect(gained).toBeGreaterThan(5);
  expect(proven).toBeGreaterThan(40);
  expect(least).toBeGreaterThan(54);
});

it('keeps its bound below every plan where pieces are too long for some of the boards, and boards are trimmed', () => {
  let [told, least] = [0, 0];
  for (let seed = 1; seed <= 80; seed++) {
    const random = seeded(1000 + seed);
    const among = (low: number, high: number) => low + Math.floor(random() * (high - low + 1));
    const instance: CutInstance = {
      ...randomInstance(seed, 7, 'both'),
      trim: seed % 5 === 0 ? 4 : 0,
      mark: seed % 4 === 0 ? 1 : 0,
      stock: [
        { length: among(160, 420), price: among(10, 30) },
        { length: among(140, 300), price: among(8, 20) },
      ],
    };
    const plan = planCuts(instance);
    if ('kind' in plan) continue;
    const optimum = leastCost(instance);
    expect(plan.bound, `seed ${seed}`).toBeLessThanOrEqual(optimum);
    expect(plan.cost, `seed ${seed}`).toBeGreaterThanOrEqual(optimum);
    if (plan.proven) expect(plan.cost).toBe(optimum);
    told++;
    if (plan.cost === optimum) least++;
  }
  expect(told).toBeGreaterThan(60);
  expect(least / told).toBeGreaterThan(0.95);
});

it('finds rows as short as there are, or nearly always', () => {
  let shortest = 0;
  for (let seed = 1; seed <= 60; seed++) {
    const { pieces, turnsOver } = randomInstance(seed, 7, 'both');
    const blocks = pieces.flatMap(({ length, count, ends = [SQUARE, SQUARE] as const }) =>
      Array.from({ length: count }, () => ({ length, ends })),
    );
    const turns = turnsOver ? OVER : FLAT;
    const least = shortestRow(blocks, turns, (1 << blocks.length) - 1);
    const { used } = layRow(blocks, turns);
    expect(used).toBeGreaterThanOrEqual(least - 1e-6);
    if (used < least + 1e-6) shortest++;
  }
  expect(shortest).toBeGreaterThanOrEqual(58);
});

interface Listed {
  readonly length: number;
  readonly ends: readonly [CutEnd, CutEnd];
}

/** Least over every order and every turn of the pieces of a set, the distance of two taken at the four corners of the section. */
function shortestRow(blocks: readonly Listed[], turns: readonly CutTurn[], set: number): number {
  const corners = [-0.5, 0.5].flatMap((v) => [-0.5, 0.5].map((s) => [v, s] as const));
  const reach = ({ across, through }: CutEnd, way: 1 | -1) =>
    Math.max(...corners.map(([v, s]) => way * (across * v + through * s)));
  const middle = ({ length, ends }: Listed) => length - reach(ends[0], -1) - reach(ends[1], 1);
  const apart = (a: CutEnd, b: CutEnd) =>
    Math.max(...corners.map(([v, s]) => (a.across - b.across) * v + (a.through - b.through) * s)) +
    Math.max(a.kerf, b.kerf);
  const lie = blocks.flatMap((block, at) =>
    turns.map((turn) => ({ block, at, ends: turnedEnds(block.ends, turn) })),
  );
  const known = new Map<string, number>();
  const rest = (left: number, last: number): number => {
    const end = lie[last]?.ends[1] ?? SQUARE;
    if (left === 0) return reach(end, 1);
    const key = `${left} ${last}`;
    const held = known.get(key);
    if (held !== undefined) return held;
    let least = Infinity;
    for (const [k, { block, at, ends }] of lie.entries()) {
      if ((left & (1 << at)) === 0) continue;
      const before = last < 0 ? reach(ends[0], -1) : apart(end, ends[0]);
      least = Math.min(least, before + middle(block) + rest(left & ~(1 << at), k));
    }
    known.set(key, least);
    return least;
  };
  return rest(set, -1);
}

/** Over every way to share pieces out to boards, each the cheapest that is long enough. */
function leastCost({ pieces, stock, turnsOver, trim = 0 }: CutInstance): number {
  const blocks = pieces.flatMap(({ length, count, ends = [SQUARE, SQUARE] as const }) =>
    Array.from({ length: count }, () => ({ length, ends })),
  );
  const turns = turnsOver ? OVER : FLAT;
  const prices = new Map<number, number>();
  const priceOf = (set: number) => {
    const held = prices.get(set);
    if (held !== undefined) return held;
    const row = shortestRow(blocks, turns, set);
    const long = stock.filter(({ length }) => row <= length - trim + 1e-6);
    const price = Math.min(Infinity, ...long.map((board) => board.price));
    prices.set(set, price);
    return price;
  };
  const all = (1 << blocks.length) - 1;
  const known = new Map<number, number>([[0, 0]]);
  const least = (set: number): number => {
    const held = known.get(set);
    if (held !== undefined) return held;
    const first = set & -set;
    let best = Infinity;
    for (let part = set; part > 0; part = (part - 1) & set)
      if ((part & first) !== 0) best = Math.min(best, priceOf(part) + least(set & ~part));
    known.set(set, best);
    return best;
  };
  return least(all);
}
