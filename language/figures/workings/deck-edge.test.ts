import { expect, it } from 'vitest';
import { keepsWithin } from '../working.ts';
import { deckPostFigures } from './deck-edge.ts';

const where = {
  origin: { uri: 'file:///a.slat', path: 'Run:a', why: 'stated' as const },
  label: 'a, post 1',
};

it('sets the wind on a six-foot screen beside the load of a guard', () => {
  // Hand-worked: 15 psf on 6 ft by 4 ft is 360 lb at 36 in: 1 080 ft-lb, against 200 lb at 36 in: 600 ft-lb.
  const { overGuard, working } = deckPostFigures({ force: 360, arm: 36 }, where);
  expect(overGuard).toBeCloseTo(1.8, 9);
  expect(working.steps[0]?.value).toEqual({ value: 1_080, unit: 'ft-lb' });
  // Upper bolt, 4 in apart and 5 in below: 360 x 43 / 4 = 3 870 lb, over 1 800 lb.
  expect(working.figure).toEqual({ value: 3_870, unit: 'lb' });
  expect(keepsWithin(working)).toBe(false);
  expect(working.notes[0]).toContain('an engineer, or for a connector tested for it');
});

it('takes stated bolts before those of deck guides', () => {
  // 100 lb at 30 in, bolts 6 in apart and 4 in below: 100 x (30 + 4 + 3) / 6 = 616.7 lb.
  const { working, overHoldDown } = deckPostFigures(
    { force: 100, arm: 30, boltsApart: 6, boltsBelow: 4 },
    where,
  );
  expect(working.figure.value).toBeCloseTo(616.67, 2);
  expect(overHoldDown).toBeCloseTo(616.67 / 1_800, 4);
  expect(keepsWithin(working)).toBe(true);
});
