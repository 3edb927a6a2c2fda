import { expect, it } from 'vitest';
import type { View } from '../../language/drawing/index.ts';
import { workingsOf } from '../../language/figures/index.ts';
import { takeoffOf } from '../../language/takeoff/index.ts';
import { openJob } from '../jobs/index.ts';
import { clapped } from './index.ts';

const WALLS = `begins at wall, 1-1/2" off, at 0' toward 0", at 2' toward 1/4", at 50" away 1/8"
  ends at wall, 2" off, leans away 1/2" in 50"`;

const viewOf = (views: readonly View[], kind: View['kind']): View => {
  const view = views.find((one) => one.kind === kind);
  if (!view) throw new Error(`no view ${kind}`);
  return view;
};
const texts = ({ labels }: View) => labels.map(({ text }) => text);

it('draws walls from both sides and from above, and prints tapers with the front', async () => {
  const views = (await openJob(clapped(`${WALLS}; scribed filler slat`))).views();
  const [front, back, plan] = (['front', 'back', 'plan'] as const).map((kind) => viewOf(views, kind)) as [
    View,
    View,
    View,
  ];
  for (const view of [front, back])
    for (const side of ['start', 'end'])
      expect(view.groups.some(({ key }) => key === `bank/wall-${side}-hatch`)).toBe(true);
  expect(plan.groups.some(({ key }) => key === 'bank/plan/walls-hatch')).toBe(true);
  // 1/4 * 2.5 / 24 off 1-1/2 is 1.474, on the tape 1-7/16; 21-1/2 up 1-1/4; at the top 1-5/8.
  for (const text of ['from its foot', 'wide', '1-7/16"', '21-1/2"', '1-1/4"', '1-5/8"'])
    expect(texts(front)).toContain(text);
  expect(texts(back)).not.toContain('from its foot');
  // The wall 1-1/2 to the left of station 0, seen from behind as far to the right of it.
  const hatch = (view: View, side: string) =>
    view.groups.find(({ key }) => key === `bank/wall-${side}`)?.path.match(/^M(-?[\d.]+)/)?.[1];
  const length = 118.5 * 25.4;
  expect(Number(hatch(front, 'start'))).toBeCloseTo(-1.5 * 25.4, 1);
  expect(Number(hatch(back, 'start'))).toBeCloseTo(length + 1.5 * 25.4, 1);
});

it('draws a filler in one outline, and finds it where it is', async () => {
  const front = viewOf((await openJob(clapped(`${WALLS}; scribed filler slat`))).views(), 'front');
  const hits = front.groups.flatMap((group) => group.hits.filter(({ piece }) => piece.includes('filler')));
  expect(hits.map(({ piece }) => piece)).toEqual(['bank/p1/filler-start', 'bank/p3/filler-end']);
  // Two corners at the post and one at each of three heights of the wall.
  expect(hits[0]?.outline).toHaveLength(10);
});

it('writes open gaps beside a wall that is not plumb', async () => {
  const front = viewOf((await openJob(clapped(WALLS))).views(), 'front');
  // 2-1/2 up it is 2 + 0.5 * 2.5 / 50 = 2.025; at the top 2-1/2.
  expect(texts(front)).toEqual(expect.arrayContaining(['gap 2"', 'gap 2-1/2"', 'gap 1-7/16"', 'gap 1-5/8"']));
});

it('buys the boards and screws of fillers', async () => {
  const count = async (filler: string) => {
    const { job, layout } = await openJob(clapped(`${WALLS}${filler}`));
    const { plans, items } = takeoffOf(layout, job, () => false);
    return {
      slats: plans.flatMap(({ demands }) => demands).find(({ stock }) => stock.name === 'slat')?.count ?? 0,
      screws: items.filter(({ name }) => name === 'screw').reduce((sum, { net }) => sum + net, 0),
    };
  };
  const [without, filled] = [await count(''), await count('; scribed filler slat')];
  expect(filled.slats - without.slats).toBe(2);
  // 47-1/2 at most 18 apart: 3 spaces, 4 screws each.
  expect(filled.screws - without.screws).toBe(8);
});

it('works out gaps and tapers with their steps', async () => {
  const { layout, job } = await openJob(clapped(`${WALLS}; scribed filler slat, at least 3/4"`));
  const workings = workingsOf(layout, job).filter(({ code }) => /^(wall-gap|filler-taper)$/.test(code));
  expect(workings.map(({ code }) => code)).toEqual(['wall-gap', 'filler-taper', 'wall-gap', 'filler-taper']);
  const [gap] = workings;
  // Narrowest 24 up: 1-1/4. The post could stand 1-1/2 - 1-1/4 + 3/4 = 1 off.
  expect(gap?.figure.value).toBe(1.25);
  expect(gap?.steps.at(-1)?.value?.value).toBe(1);
  expect(workings[3]?.figure.value).toBeCloseTo(2.5, 9);
});

// One bay of 111-1/2: half of it and the post are 55-3/4 + 3-1/2 = 59-1/4; with a filler 2 wide 61-1/4.
it('hangs a filler on its post alone in the wind', async () => {
  const carried = async (filler: string) => {
    const { layout, job } = await openJob(clapped(`begins at wall, 2" off${filler}`, ['2 bays', '1 bays']));
    const bending = workingsOf(layout, job).find(({ code }) => code === 'post-bending');
    return bending?.inputs.find(({ symbol }) => symbol === 'B')?.value;
  };
  expect(await carried('')).toEqual({ value: 59.25, unit: 'in' });
  expect(await carried('; scribed filler slat')).toEqual({ value: 61.25, unit: 'in' });
});
