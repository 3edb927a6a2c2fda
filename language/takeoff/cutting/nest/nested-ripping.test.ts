import { expect, it } from 'vitest';
import { type CutEnd, type CutInstance, type CutPlan, planCuts } from '../index.ts';
import { seeded } from '../random.ts';
import { turnedEnds } from './ends.ts';

const KERF = 3;
const SQUARE: CutEnd = { across: 0, through: 0, kerf: KERF };
const slant = (through: number): CutEnd => ({
  across: 0,
  through,
  kerf: KERF * (through === 0 ? 1 : Math.SQRT2),
});

function instanceOf(seed: number): CutInstance {
  const random = seeded(seed);
  const among = (low: number, high: number) => low + Math.floor(random() * (high - low + 1));
  const end = () => slant([0, 0, 16, -16][among(0, 3)] ?? 0);
  return {
    kerf: KERF,
    trim: among(0, 1) * 5,
    turnsOver: seed % 3 > 0,
    mark: 1,
    pieces: Array.from({ length: among(2, 5) }, (_, i) => ({
      label: `p${i}`,
      length: among(70, 160),
      width: i % 2 === 0 ? 90 : 28,
      count: among(1, 6),
      ends: [end(), end()] as const,
    })),
    stock: [
      { length: 420, width: 90, price: 21 },
      { length: 300, width: 90, price: 16 },
      { length: 360, width: 90, price: 0, available: among(0, 2) },
    ],
  };
}

interface Lying {
  readonly at: number;
  readonly length: number;
  readonly ends: readonly [CutEnd, CutEnd];
}

/** Where each face of the board is cut: ends are so far from the tip there. */
function expectApart(row: readonly Lying[], room: number): void {
  const faces = [-0.5, 0.5];
  const edge = ({ at, length, ends: [first, second] }: Lying, face: number) => [
    at + Math.abs(first.through) / 2 + first.through * face,
    at + length - Math.abs(second.through) / 2 + second.through * face,
  ];
  for (const [k, one] of row.entries()) {
    expect(one.at).toBeGreaterThanOrEqual(-1e-6);
    expect(one.at + one.length).toBeLessThanOrEqual(room + 1e-6);
    const before = row[k - 1];
    if (!before) continue;
    const kerf = Math.max(before.ends[1].kerf, one.ends[0].kerf);
    for (const face of faces)
      expect((edge(one, face)[0] ?? 0) - (edge(before, face)[1] ?? 0)).toBeGreaterThanOrEqual(kerf - 1e-6);
  }
}

it('keeps pieces of ripped boards apart in strips and between parts, and each once', () => {
  let [ripped, proven] = [0, 0];
  for (let seed = 1; seed <= 30; seed++) {
    const instance = instanceOf(seed);
    let steps = 0;
    const plan = planCuts(instance, () => ++steps > 600) as CutPlan;
    const demands = new Map(instance.pieces.map((piece) => [piece.label, piece]));
    const wanted = instance.pieces.flatMap(({ label, count }) => Array.from({ length: count }, () => label));
    expect(plan.boards.flatMap(({ pieces }) => pieces).sort()).toEqual(wanted.sort());
    expect(plan.cost).toBe(plan.boards.reduce((sum, { price }) => sum + price, 0));
    expect(plan.bound).toBeLessThanOrEqual(plan.cost);
    const onHand = plan.boards.filter(({ stock }) => stock === 2).length;
    expect(onHand).toBeLessThanOrEqual(instance.stock[2]?.available ?? 0);
    if (plan.proven) proven++;
    for (const { length, parts = [] } of plan.boards) {
      const row = parts.map((part): Lying => {
        const rows = part.strips.map((strip) =>
          strip.pieces.map((label, k): Lying => {
            const { length = 0, ends = [SQUARE, SQUARE] as const } = demands.get(label) ?? {};
            const { at = 0, turn = 'none' as const } = strip.places?.[k] ?? {};
            return { at, length, ends: turnedEnds(ends, turn) };
          }),
        );
        const [only] = rows[0] ?? [];
        if (only && part.strips[0]?.width === 90) return { ...only, at: part.at ?? Number.NaN };
        ripped++;
        for (const one of rows) expectApart(one, part.length);
        expect(part.strips.reduce((sum, { width }) => sum + width + KERF, -KERF)).toBeLessThanOrEqual(90);
        return { at: part.at ?? Number.NaN, length: part.length, ends: [SQUARE, SQUARE] };
      });
      expectApart(row, length - (instance.trim ?? 0));
    }
  }
  expect(ripped).toBeGreaterThan(20);
  expect(proven).toBeGreaterThan(5);
});
