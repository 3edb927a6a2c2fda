import { expect, it } from 'vitest';
import { openJobs } from '../../tests/jobs/index.ts';
import { elevationOf } from './elevation.ts';
import { plansOf } from './plan.ts';
import type { View } from './view.ts';

const JOB = `
job { measure inches to 1/16" }
board plank { width 3-1/2"; thickness 3/4" }
post pole { along 3-1/2"; through 3-1/2" }
deck terrace { surface up 30"; boards 1"; joists 1-1/2" by 7-1/4"; rim 1-1/2"; ground down 0"; STAIRS }
pattern even { repeat plank; gap 1/2"; end anywhere }
run bank { on terrace, posts outside rim; length 16'; posts pole, 4 bays; height 4'; slats on front face; fill even }
`;

async function views(stairs: string) {
  const { job, layout } = await openJobs({ '/a.slat': JOB.replace('STAIRS', stairs) }).open('/a.slat');
  const { value: measure } = job.measure;
  const [run] = layout.runs;
  const [plan] = plansOf(layout.runs, measure, 20);
  if (!run || !plan) throw new Error('there is no run');
  return { plan, front: elevationOf(run, measure, 20, 'front'), back: elevationOf(run, measure, 20, 'back') };
}

const group = ({ groups }: View, key: string) => groups.find((one) => one.key === key);
const strokes = (view: View, key: string) => group(view, key)?.path.match(/M/g)?.length;

it('draws nosings, sides and an arrow down on the plan, behind the run', async () => {
  const { plan } = await views('stairs from 48" to 84", going 10"');
  // Four steps of 7-1/2": the nosing of the deck and three treads, and two sides; an arrow of three strokes.
  expect(strokes(plan, 'bank/plan/stairs')).toBe(6);
  expect(strokes(plan, 'bank/plan/stairs-down')).toBe(3);
  expect(plan.labels.find(({ key }) => key === 'bank/plan/stairs-1')?.text).toBe('down 4 steps');
  // North is up: from the rim's face, 1-3/4" before the middle of the posts, 30" back.
  const ys = [
    ...(group(plan, 'bank/plan/stairs')?.path ?? '').matchAll(/[ML]\s*(-?[\d.]+)[ ,](-?[\d.]+)/g),
  ].map(([, , y]) => Number(y));
  expect(Math.max(...ys) / 25.4).toBeCloseTo(1.75, 2);
  expect(Math.min(...ys) / 25.4).toBeCloseTo(1.75 - 30, 2);
});

it('draws steps in elevation, hidden by the deck from the front', async () => {
  const { front, back } = await views('stairs from 48" to 84", going 10"');
  expect(strokes(front, 'bank/stairs')).toBe(4);
  expect(group(front, 'bank/stairs')?.style).toBe('hidden');
  expect(group(back, 'bank/stairs')?.style).not.toBe('hidden');
  // Turned, they are from 192 - 84 to 192 - 48.
  const numbers = (group(back, 'bank/stairs')?.path.match(/-?[\d.]+/g) ?? []).map(Number);
  expect(numbers).toContain(Math.round(108 * 2540) / 100);
});

it('draws none where a deck has none', async () => {
  const { plan, front } = await views('');
  expect(group(plan, 'bank/plan/stairs')).toBeUndefined();
  expect(group(front, 'bank/stairs')).toBeUndefined();
});
