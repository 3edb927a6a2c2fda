import { expect, it } from 'vitest';
import { inches, toInches } from '../../units/index.ts';
import { fitPattern, layOut } from './index.ts';
import { between, problemOf } from './testing/sample.ts';

// Figures worked by hand below are arithmetic on the stated sizes; the ways to make a pattern land and
// the order they are tried in are common practice.

it('spreads what twelve pickets leave of 96 inches over the eleven gaps between them', () => {
  // Common practice: a picket panel of 12 boards and 11 gaps. (96 - 12 * 5.5) / 11 = 2.727.
  const problem = problemOf([['picket', 5.5]], {
    space: inches(96),
    gap: inches(2.75),
    upright: true,
    remedies: [{ kind: 'gaps', low: inches(2.25), high: inches(3) }],
  });
  const { chosen } = fitPattern(problem);
  expect(chosen).toMatchObject({ kind: 'gaps', count: 12, lead: 0, tail: 0 });
  expect(toInches(chosen?.gap ?? 0)).toBeCloseTo(30 / 11, 5);
  expect(toInches(chosen?.gap ?? 0)).toBeCloseTo(2.727, 3);
});

it('lets half gaps at both ends follow the gap, so that panels side by side read on', () => {
  // Common practice: the same panel with half a gap at each end. (96 - 12 * 5.5) / 12 = 2.5, ends 1.25.
  const problem = problemOf([['picket', 5.5]], {
    space: inches(96),
    gap: inches(2.75),
    edgeGap: inches(1.375),
    edgeHalf: true,
    upright: true,
    remedies: [{ kind: 'gaps', low: inches(2.25), high: inches(3) }],
  });
  const { chosen } = fitPattern(problem);
  expect(chosen).toMatchObject({ count: 12, gap: inches(2.5), lead: inches(1.25), tail: inches(1.25) });
  const drawn = fitPattern({ ...problem, gap: inches(2.5), edgeGap: inches(1.25) }).chosen;
  expect(drawn).toMatchObject({ kind: 'as-drawn', count: 12, lead: inches(1.25), tail: inches(1.25) });
});

it('divides a wall into courses as siding is laid out', () => {
  // Common practice for siding: height over nominal course, rounded, then height over that number:
  // 61 / 10 = 6.1, so 6 courses of 61 / 6 = 10-1/6. Here a course is a slat and a gap.
  const problem = problemOf([['siding', 9.5]], {
    space: inches(61),
    gap: inches(0.5),
    edgeGap: inches(0.25),
    edgeHalf: true,
    remedies: [{ kind: 'gaps', low: inches(0.25), high: inches(1) }],
  });
  const { chosen } = fitPattern(problem);
  expect(chosen?.count).toBe(Math.round(61 / 10));
  expect(toInches(chosen?.gap ?? 0) + 9.5).toBeCloseTo(10 + 1 / 6, 5);
  const { slots } = layOut(problem, chosen);
  const pitches = slots.slice(1).map((slot, i) => slot.start - (slots[i]?.start ?? 0));
  expect(Math.max(...pitches) - Math.min(...pitches)).toBeLessThanOrEqual(1);
});

// One repeat is 5-1/2 + 2-5/8 + 2-5/8 and three gaps of 3/4: 13 in. Ending on the board needs
// 13 k + 5-1/2: 57-1/2 with four repeats (13 slats), 70-1/2 with five (16 slats).
const shoreline = [
  ['board-6', 5.5],
  ['strip-2', 2.625, 5.5],
  ['strip-2', 2.625, 5.5],
] as const;
const onBoard = { end: { kind: 'on', slat: 'board-6' } } as const;

it('raises the bottom within its band before anything else', () => {
  // 60 high, bottom 2 to 4: 57-1/2 goes in with the bottom at 2-1/2.
  const banded = problemOf(shoreline, { ...between([2, 4], [60]), ...onBoard });
  const { chosen, nominalCount, leftover } = fitPattern(banded);
  expect(chosen).toMatchObject({
    kind: 'move-ends',
    count: 13,
    bottom: inches(2.5),
    height: inches(60),
    gapChange: 0,
    changes: [],
  });
  expect({ nominalCount, leftover }).toEqual({ nominalCount: 13, leftover: inches(0.5) });
});

it('lowers the top only by what the bottom cannot take', () => {
  // 61 high to no less than 60, bottom 2 to 3: 57-1/2 needs 1-1/2 less than 59: 1 below, 1/2 above.
  const banded = problemOf(shoreline, { ...between([2, 3], [60, 61]), ...onBoard });
  expect(fitPattern(banded).chosen).toMatchObject({ bottom: inches(3), height: inches(60.5) });
  const still = problemOf(shoreline, { ...between([2], [59, 61]), ...onBoard });
  expect(fitPattern(still).chosen).toMatchObject({ bottom: inches(2), height: inches(59.5) });
});

it('draws the pattern as stated and says what is left when nothing is asked for', () => {
  const problem = problemOf(shoreline, { ...between([1], [60]), ...onBoard });
  const { chosen, leftover, nominalCount, choices } = fitPattern(problem);
  expect({ chosen, leftover, nominalCount }).toEqual({ leftover: inches(1.5), nominalCount: 13 });
  expect(layOut(problem).slots.at(-1)?.end).toBe(inches(57.5));
  // Bottom at 2-1/2 is where bottoms usually are, so it is offered. Over 12 gaps 1-1/2 is 1/8 each.
  expect(choices.slice(0, 2).map(({ kind, changes }) => [kind, changes[0]?.text])).toEqual([
    ['move-ends', 'bottom 2-1/2"'],
    ['gaps', 'fit gaps 7/8" to 7/8"'],
  ]);
});

it('leaves what is over of upright slats at the two edges', () => {
  const { chosen } = fitPattern(problemOf(shoreline, { ...onBoard, space: inches(59), upright: true }));
  expect(chosen).toMatchObject({ kind: 'move-ends', count: 13, lead: inches(0.75), tail: inches(0.75) });
});

it('rips the last slat no narrower than half its width and 1-1/2 inches', () => {
  // Whole repeats need 13 k - 3/4: 64-1/4 for five, of which the last strip of 2-5/8 can be 1-1/2 at least.
  const asked = { end: { kind: 'whole' }, remedies: [{ kind: 'rip-last' }] } as const;
  const fitIn = (space: number) =>
    fitPattern(problemOf(shoreline, { ...asked, space: inches(space) })).chosen;
  expect(fitIn(63.5)).toMatchObject({ kind: 'rip-last', count: 15, width: inches(1.875), slat: 'strip-2' });
  expect(fitIn(63.125)).toMatchObject({ width: inches(1.5) });
  expect(fitIn(63)).toBeUndefined();
});

it('changes a width by whole steps and hides the rest in the gaps', () => {
  // Four boards of 5-1/2 and three gaps of 3/4 need 24-1/4; 24 asks for 1/4 less, 1/16 a board.
  const problem = problemOf([['board', 5.5]], {
    space: inches(24),
    remedies: [{ kind: 'change-width', slat: 'board', width: inches(5.4375) }],
  });
  expect(fitPattern(problem).chosen).toMatchObject({ count: 4, width: inches(5.4375), gapChange: 0 });
  expect(layOut(problem, fitPattern(problem).chosen).slots.map(({ ripped }) => ripped)).toEqual([
    true,
    true,
    true,
    true,
  ]);
});

it('takes up the rest with trim one gap from the slats', () => {
  // 62 leaves 4-1/2 below 57-1/2; less one gap of 3/4 the trim is 3-3/4.
  const asked = (edge: 'top' | 'bottom') =>
    problemOf(shoreline, { ...onBoard, space: inches(62), remedies: [{ kind: 'trim', edge }] });
  const below = fitPattern(asked('bottom')).chosen;
  expect(below).toMatchObject({
    kind: 'trim',
    count: 13,
    width: inches(3.75),
    slat: 'board-6',
    edge: 'bottom',
  });
  expect(layOut(asked('bottom'), below).slots.at(-1)).toEqual({
    kind: 'trim',
    stock: 'board-6',
    start: inches(58.25),
    end: inches(62),
    ripped: true,
    item: -1,
  });
  const above = layOut(asked('top'), fitPattern(asked('top')).chosen).slots;
  expect(above[0]).toMatchObject({ kind: 'trim', start: 0, end: inches(3.75) });
  expect(above[1]).toMatchObject({ kind: 'slat', start: inches(4.5) });
});
