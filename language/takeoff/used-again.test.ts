import { expect, it } from 'vitest';
import { openJobs } from '../../tests/jobs/index.ts';
import { demandOf } from './demand.ts';
import { hardwareOf, treatedEnds } from './hardware.ts';
import { orderOf } from './order.ts';
import { takeoffOf } from './takeoff.ts';

const YARD = `
job "Bank" { saw kerf 1/8"; spares 10 %, at least 1 }
material wet { kind wood; treated }
board plank { width 3-1/2"; thickness 3/4"; lengths 8' }
board batten { width 2-1/2"; thickness 3/4"; lengths 8', 12'; made of wet }
board peg { width 1-1/2"; thickness 1-1/2"; lengths 8' }
post pole { along 3-1/2"; through 3-1/2"; lengths 8' }
pattern even(slat = plank) { repeat slat; gap 1/2"; end anywhere }
`;
const run = (bracing: string) =>
  `run bank { length 20' over posts; posts pole, 4 bays; height 4'; bottom 4"; embed 2'; fill even; slats on front face; ${bracing} }`;

async function found(text: string) {
  const { job, layout } = await openJobs({ '/bank.slat': YARD + text }).open('/bank.slat');
  return { job, layout, temporary: demandOf(layout, job).filter((one) => one.temporary) };
}

it('counts what sets the posts by itself, all of it', async () => {
  // Four bays of two strips, five posts of two braces and two stakes.
  const { temporary } = await found(run('temporary bracing batten, stakes peg'));
  expect(temporary.map(({ stock, count }) => [stock.name, count])).toEqual([
    ['batten', 18],
    ['peg', 10],
  ]);
});

it('counts what one bay takes at most where pieces go on from bay to bay', async () => {
  // Of end bays two strips each, alike in length, of middle bays two; four braces and four stakes for the two posts of a bay.
  const { temporary } = await found(run('temporary bracing batten, stakes peg, bay by bay'));
  expect(temporary.map(({ stock, count }) => [stock.name, count])).toEqual([
    ['batten', 8],
    ['peg', 4],
  ]);
});

it('orders it last, without spares, and leaves screws, sealer and finish as they are', async () => {
  const [braced, plain] = [await found(run('temporary bracing batten, stakes peg')), await found(run(''))];
  const order = orderOf(takeoffOf(braced.layout, braced.job, () => false).plans, braced.job, false);
  const last = order.filter(({ temporary }) => temporary);
  expect(order.slice(-last.length)).toEqual(last);
  expect(last.map(({ spare }) => spare)).toEqual(last.map(() => 0));
  expect(new Set(last.map(({ stock }) => stock))).toEqual(new Set(['batten', 'peg']));
  expect(order.filter(({ temporary }) => !temporary).every(({ spare }) => spare > 0)).toBe(true);
  expect(hardwareOf(braced.layout, braced.job)).toEqual(hardwareOf(plain.layout, plain.job));
  expect(treatedEnds(braced.layout, braced.job)).toBe(0);
});

it('takes it from boards of the screen where it is of their stock, and from the pile', async () => {
  const shared = await found(run('temporary bracing plank'));
  const plan = takeoffOf(shared.layout, shared.job, () => false).plans.find(
    ({ bought }) => bought.name === 'plank',
  );
  expect(plan?.demands.map(({ temporary }) => temporary ?? false)).toEqual([false, true]);
  const pile = await found(
    `${run('temporary bracing batten, stakes peg, bay by bay')}\non hand { batten 9 of 12' }`,
  );
  const taken = takeoffOf(pile.layout, pile.job, () => false).plans.find(
    ({ bought }) => bought.name === 'batten',
  );
  expect(taken?.buy.size).toBe(0);
  expect(taken?.boards.every(({ onHand }) => onHand !== undefined)).toBe(true);
});
