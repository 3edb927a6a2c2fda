import { expect, it } from 'vitest';
import { type Better, beats, searchBetter } from '../../language/takeoff/index.ts';
import { mm } from '../../language/units/index.ts';
import { betterTask } from '../../server/work/index.ts';
import { openJob } from '../jobs/index.ts';

const job = (more = '', price = '') => `job "Small" { measure mm to 1 mm ${more} }
board slat-90 { width 90 mm; thickness 20 mm; lengths 2 m${price} }
post stake { along 90 mm; through 90 mm; lengths 2 m${price} }
pattern even(space = 15 mm) { repeat slat-90; gap space; end anywhere; fit gaps 10 mm to 30 mm }
run side {
  length 2 m over posts
  posts stake, 1 bays
  height 1000 mm; bottom 70 mm
  embed 700 mm
  slats on front face
  fill even
}
`;

async function searched(text: string): Promise<Better | undefined> {
  const { services, document, job: read } = await openJob(text);
  const task = betterTask(services.shared, document, read, 'side');
  const search = task && searchBetter(task);
  search?.run(() => false);
  return search?.found();
}

/*
 * By hand: 930 mm to fill. 9 slats of 90 and 8 gaps of 15 are 930; 8 slats and 7 gaps of 30 are 930 too. Each slat is
 * 2 m long, so a board each; two posts of a board each. Open are 120 and 210 of 930.
 */
it('finds the wider gap that saves a board, at the price of sight', async () => {
  const found = await searched(job());
  expect(found?.now).toMatchObject({ bought: mm(2000) * 11, waste: expect.closeTo(0, 1), uneven: 0 });
  expect(found?.now.seeThrough).toBeCloseTo(120 / 930, 9);
  const wide = found?.choices.find(({ title }) => title.startsWith('gap 30 mm'));
  expect(wide?.figures).toMatchObject({ bought: mm(2000) * 10, uneven: 0 });
  expect(wide?.figures.seeThrough).toBeCloseTo(210 / 930, 9);
  expect(wide?.changes.map(({ text }) => text)).toEqual(['fill even(space = 30 mm)']);
});

it('counts money where every stock has its price', async () => {
  const found = await searched(job('money EUR', ' €7.50'));
  expect(found?.now.cost).toEqual({ minor: 11 * 750, currency: 'EUR' });
  const wide = found?.choices.find(({ title }) => title.startsWith('gap 30 mm'));
  expect(wide?.figures.cost).toEqual({ minor: 10 * 750, currency: 'EUR' });
});

it('offers nothing that the job forbids', async () => {
  // 14 %: 8 slats are too open, be their gaps as they may.
  const found = await searched(job('; see-through at most 14 %'));
  expect(found?.choices.length).toBeGreaterThan(0);
  for (const { figures } of found?.choices ?? []) expect(figures.seeThrough).toBeLessThanOrEqual(0.14);
});

it('shows nothing that another choice beats', async () => {
  const found = await searched(job());
  const scores = (found?.choices ?? []).map(({ figures: { bought, waste, seeThrough, uneven } }) => [
    bought,
    Math.round(waste * 1000),
    Math.round(seeThrough * 1000),
    Math.round(uneven / mm(1)),
  ]);
  expect(scores.length).toBeGreaterThan(1);
  for (const one of scores) expect(scores.filter((other) => beats(other, one))).toEqual([]);
});

it('goes on where it was left, to the same end', async () => {
  const { services, document, job: read } = await openJob(job());
  const task = betterTask(services.shared, document, read, 'side');
  if (!task) throw new Error('no task');
  const [whole, sliced] = [searchBetter(task), searchBetter(task)];
  whole.run(() => false);
  let slices = 0;
  while (!sliced.done()) {
    let steps = 0;
    sliced.run(() => ++steps > 3);
    slices++;
  }
  expect(slices).toBeGreaterThan(3);
  expect(sliced.found()).toEqual(whole.found());
});
