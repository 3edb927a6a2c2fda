import { expect, it } from 'vitest';
import { openJob } from '../../tests/jobs/index.ts';
import type { View } from './view.ts';

const STOCK = `job { measure inches to 1/16" }
board slat { width 3-1/2"; thickness 3/4" }
board bar { width 3-1/2"; thickness 1-1/2" }
post stake { along 3-1/2"; through 3-1/2" }
cleat nib { width 3/4"; thickness 3/4" }
pattern rows { repeat slat; gap 1/2"; end anywhere; fit gaps 3/8" to 5/8", else rip last }
`;
const BANK = `run bank { seen from lane; length 144"; posts stake, 3 bays; height 50"; bottom 2-1/2"; slats between posts; fill rows; cleats nib }
`;
const GATE = (to: string) =>
  `gate wicket in bank { opening 40" from 48"; hinges on left; opens to ${to}; frame bar; brace bar; bottom 2" to 4" }\n`;

async function planOf(text: string): Promise<View> {
  const { views } = await openJob(STOCK + text);
  const plan = views().find(({ kind }) => kind === 'plan');
  if (!plan) throw new Error('no plan');
  return plan;
}

const label = ({ labels }: View, end: string) => {
  const found = labels.find(({ key }) => key.endsWith(end));
  if (!found) throw new Error(`no ${end}`);
  return found;
};

// Seen from above with its front below, the back of a run is up the sheet, where y is less than nothing.
it('puts dimensions where no leaf stands open', async () => {
  expect(label(await planOf(BANK), 'plan/length').y).toBeGreaterThan(0);
  expect(label(await planOf(BANK + GATE('lane')), 'plan/length').y).toBeLessThan(0);
  expect(label(await planOf(BANK + GATE('garden')), 'plan/length').y).toBeGreaterThan(0);
});

it('puts numbers beside an open leaf, not on it', async () => {
  const numbers = async (text: string) => {
    const plan = await planOf(text);
    return [2, 3].map((number) => label(plan, `plan/post-${number}`).x);
  };
  const [hinged = 0, latched = 0] = await numbers(BANK + GATE('lane'));
  const [still = 0, stands = 0] = await numbers(BANK + GATE('lane').replace(/opens to lane; /, ''));
  expect(hinged).toBeLessThan(still);
  expect(latched).toBeGreaterThan(stands);
});

it('writes the name of a gate in the middle of its opening, past leaves it has no room between', async () => {
  const name = async (text: string) => label(await planOf(BANK + text), 'wicket');
  const single = await name(GATE('lane'));
  // From 48" the opening is 40" wide; its middle is at 68".
  expect(single.x).toBeCloseTo(68 * 25.4, 1);
  const long = label(await planOf(BANK + GATE('lane').replace('wicket', `w${'i'.repeat(90)}cket`)), 'cket');
  expect(long.y).toBeGreaterThan(39 * 25.4);
  expect(single.y).toBeLessThan(20 * 25.4);
});

it('keeps stations clear of the joists of a deck', async () => {
  const deck = `deck terrace { surface up 0"; boards 1"; joists 1-1/2" by 9-1/4", 16" on center from 3/4"; rim 1-1/2", double; ground down 12" }
`;
  const plan = await planOf(`${deck}${BANK.replace('seen', 'on terrace, posts outside rim; seen')}`);
  const joists = plan.groups.find(({ key }) => key === 'bank/plan/deck-joists')?.path ?? '';
  const lowest = Math.max(...[...joists.matchAll(/[ML][-\d.]+ ([-\d.]+)/g)].map(([, y]) => Number(y)));
  expect(lowest).toBeGreaterThan(0);
  for (const { key, y } of plan.labels) if (key.includes('/station-')) expect(y).toBeGreaterThan(lowest);
});
