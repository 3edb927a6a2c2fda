import { expect, it } from 'vitest';
import type { BoardPlan, Takeoff } from '../../language/takeoff/index.ts';
import type { Material } from '../protocol.ts';
import { openTexts } from '../testing/index.ts';
import { BANK } from './testing/bank.ts';
import { seekTotals, type Totals } from './totals.ts';
import { proofOf } from './words.ts';

async function totalsOf(text: string): Promise<Totals & { layoutPieces: number }> {
  const { shared, document } = await openTexts({ 'a.slat': text });
  const kept = shared.work.Keeper.of(document.uri.toString());
  if (!kept) throw new Error('nothing is kept');
  const work = seekTotals(kept.work);
  work.run(() => false);
  expect(work.done()).toBe(true);
  return { ...work.found(true), layoutPieces: kept.runs.flatMap(({ pieces }) => pieces).length };
}

const flat = (lines: readonly Material[]): Material[] =>
  lines.flatMap((one) => [one, ...flat(one.under ?? [])]);
const find = ({ lines }: Totals, label: string) => flat(lines).find((one) => one.label === label);

it('lists every piece once, under the board it is cut from', async () => {
  const totals = await totalsOf(BANK);
  const all = flat(totals.lines);
  expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
  const keys = all.flatMap(({ id, pieces = 0 }) => {
    expect(totals.pieces[id]?.length ?? 0).toBe(pieces);
    return totals.pieces[id] ?? [];
  });
  expect(keys).toHaveLength(totals.layoutPieces);
  expect(new Set(keys).size).toBe(totals.layoutPieces);
});

it('marks a line anew when the pieces under it have other keys, though it reads as before', async () => {
  const cuts = (totals: Totals) => flat(totals.lines).filter(({ kind }) => kind === 'cut');
  const before = cuts(await totalsOf(BANK));
  const renamed = cuts(await totalsOf(BANK.replace('run bank', 'run shore')));
  expect(renamed.map(({ label }) => label)).toEqual(before.map(({ label }) => label));
  expect(renamed.map(({ mark }) => mark)).not.toEqual(before.map(({ mark }) => mark));
  expect(cuts(await totalsOf(`// so\n${BANK}`))).toEqual(before);
});

it('tells boards that are bought and those from the yard, with prices and spares (hand)', async () => {
  const totals = await totalsOf(BANK);
  // Posts of 4' + 2' from 8' ones, one each: 3 x $14. Spares 5 %, at least 1.
  expect(find(totals, 'pole')?.note).toMatch(/^3 pieces, \$42\.00, .* waste, proven cheapest$/);
  expect(find(totals, "3 of 8'")?.note).toBe('and 1 spare, 24 ft, $14.00 each, $42.00');
  expect(find(totals, `3 of 8' 2"`)?.note).toMatch(/^on hand, 24\.5 ft$/);
  // 22 slats at 6 minutes are 132; at $48 an hour $105.60.
  expect(find(totals, 'fixing')?.note).toBe('132 minutes, $105.60');
  expect(find(totals, 'Labor')?.note).toBe('$105.60, 2.2 hours');
  // Finish is counted and has no price, which is told and not made up.
  expect(flat(totals.lines).filter(({ kind }) => kind === 'trouble').length).toBeGreaterThan(0);
  expect(find(totals, 'Lines without a price are not in the sum')).toBeDefined();
});

it('tells of strips with the board they are ripped from, and of what has no plan why', async () => {
  const ripped = BANK.replace('repeat plank', 'repeat strip').replace(
    'post pole',
    'rip strip from plank to 1-1/2"\npost pole',
  );
  // 44" are 22 times 1-1/2" and 1/2"; two bays of them, ripped from planks.
  expect(find(await totalsOf(ripped), 'plank')?.note).toMatch(/^44 of strip, \$/);
  const short = BANK.replace("8' $9.20 each, 16' $18 each", "4' $4.60 each").replace(/^on hand.*$/m, '');
  // Two bays between three posts: (16' - 3 x 3-1/2") / 2 is 7' 6-3/4", less what slats keep from the posts.
  expect(find(await totalsOf(short), 'plank')).toMatchObject({
    kind: 'trouble',
    note: expect.stringMatching(/^\d+ of 7' 6.* are longer than any board gives, 4'$/),
  });
  const none = BANK.replace(/; lengths 8' \$9\.20 each, 16' \$18 each/, '').replace(/^on hand.*$/m, '');
  expect(find(await totalsOf(none), 'plank')?.note).toBe('states no lengths, so no boards can be planned');
});

it('says how far boards are from proven, and whether more will be found out', () => {
  const plan = (name: string, minor: number, bound: number) =>
    ({
      bought: { name },
      cost: { minor, currency: 'USD' },
      bound: { minor: bound, currency: 'USD' },
      proven: bound >= minor,
    }) as unknown as BoardPlan;
  const takeoff = (...plans: BoardPlan[]): Takeoff => ({
    plans,
    items: [],
    proven: plans.every(({ proven }) => proven),
  });
  expect(proofOf(takeoff(plan('a', 500, 500)), true)).toBe('proven cheapest');
  // 9.00 - 7.50 and 5.00 - 3.30.
  expect(proofOf(takeoff(plan('a', 900, 750), plan('b', 500, 330), plan('c', 5, 5)), true)).toBe(
    'at most $3.20 too dear',
  );
  expect(proofOf(takeoff(plan('a', 900, 750)), false)).toBe('at most $1.50 too dear, proof goes on');
  const { cost: _cost, bound: _bound, ...bare } = plan('rails', 2, 1);
  expect(proofOf(takeoff(bare as BoardPlan), true)).toBe('not proven for rails');
  expect(proofOf(takeoff(), true)).toBe('');
});
