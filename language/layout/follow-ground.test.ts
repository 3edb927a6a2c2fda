import fc from 'fast-check';
import { expect, it } from 'vitest';
import { board, originOf, patternOf, postOf, runOf, sourced } from '../../tests/specs/build.ts';
import { levelAt, type RunSpec, type Slope } from '../model/index.ts';
import { inches, type Ticks } from '../units/index.ts';
import { evenDrops } from './even-drops.ts';
import { findOverlaps } from './overlap.ts';
import { layOutRun } from './run.ts';
import { findUnsupported } from './support.ts';

// Slats of 5-1/2 with gaps of 1/2: pitch 6. Five bays of 60 with posts of 4: 5 x 60 + 6 x 4 = 324.
function bank(levels: readonly (readonly [number, number])[], slope: Slope): RunSpec {
  const spec = runOf({
    length: inches(324),
    post: postOf('p', inches(4), inches(4)),
    spacing: { kind: 'bays', count: 5 },
    height: inches(61.5),
    bottom: inches(2),
    pattern: patternOf('one', [board('slat', inches(5.5), inches(1))], { gap: inches(0.5) }),
    mounting: { kind: 'face', face: 'front' },
  });
  return {
    ...spec,
    ground: sourced(Math.max(...levels.map(([, z]) => inches(z)))),
    levels: levels.map(([x, z]) => ({
      station: inches(x),
      level: inches(z),
      origin: originOf('run bank/ground'),
    })),
    slope: sourced(slope),
  };
}

const inch = (ticks: Ticks | undefined) => (ticks ?? Number.NaN) / inches(1);

// By hand. Ground falls 1 in 9: 36 over 324. The run on the highest ground: 10 slats, 10 x 5-1/2 + 9 x 1/2 = 59-1/2 =
// 61-1/2 - 2. Slats on a face reach over both posts, so the highest ground of bay n is at the face of its left post,
// station 64(n - 1): 0, -7.11, -14.22, -21.33, -28.44. Each 6 of fall takes one more course: 0, 1, 2, 3, 4.
it('keeps one top line and adds courses below as the ground falls', () => {
  const run = layOutRun(
    bank(
      [
        [0, 0],
        [324, -36],
      ],
      'level-top',
    ),
  );
  expect(run.problems).toEqual([]);
  expect(run.bays.map(({ number }) => run.courses.get(number)?.length)).toEqual([10, 11, 12, 13, 14]);
  expect(run.bays.map(({ number }) => inch(run.reach.get(number)?.[0]))).toEqual([2, -4, -10, -16, -22]);
  expect(run.bays.map(({ number }) => inch(run.reach.get(number)?.[1]))).toEqual(Array(5).fill(61.5));
  // Posts: ground under the last one, at 324, is -36; above it stand 61-1/2 + 36 = 97-1/2, half of that is below.
  const last = run.pieces.find(({ key }) => key === 'bank/p6');
  const z = last?.solid.vertices.map(([, , each]) => inch(each)) ?? [];
  expect([Math.min(...z), Math.max(...z)]).toEqual([-36 - 48.75, 61.5]);
});

// By hand: allowed falls in pitches of 6 are 0, 1, 2, 3, 4; spread evenly over four transitions: 1 each.
it('steps down by whole pitches', () => {
  const run = layOutRun(
    bank(
      [
        [0, 0],
        [324, -36],
      ],
      'in-steps',
    ),
  );
  expect(run.bays.map(({ number }) => inch(run.reach.get(number)?.[1]))).toEqual([
    61.5, 55.5, 49.5, 43.5, 37.5,
  ]);
  expect(run.bays.map(({ number }) => run.courses.get(number)?.length)).toEqual(Array(5).fill(10));
});

// 36 of fall in pitches of 6, five panels: 6 pitches over 4 transitions, 2, 1, 2, 1 and not 2, 2, 1, 1 (common practice;
// even spreading after J. E. Bresenham, 1965).
it('spreads whole pitches evenly where the ground allows, and else follows it', () => {
  expect(evenDrops([0, 3, 4, 5, 6])).toEqual([0, 2, 3, 5, 6]);
  expect(evenDrops([6, 5, 4, 3, 0])).toEqual([6, 5, 3, 2, 0]);
  expect(evenDrops([0, 1, 3, 4, 6])).toEqual([0, 1, 3, 4, 6]);
  expect(evenDrops([2, 0, 3, 1, 2])).toEqual([2, 0, 3, 1, 2]);
  // By hand: tight over 0, 1 and the last 6, five pitches over three transitions go 2, 1, 2.
  expect(evenDrops([0, 1, 6, 6, 6])).toEqual([0, 1, 3, 4, 6]);
  // Two steps in eight bays: lines of 4, 3 and 1 bays, as the ground allows no 3, 3, 2, and not of 5, 2 and 1; one step
  // in eight, allowed from the fourth bay on: 4 and 4.
  expect(evenDrops([0, 0, 0, 0, 1, 1, 1, 2])).toEqual([0, 0, 0, 0, 1, 1, 1, 2]);
  expect(evenDrops([0, 0, 0, 1, 1, 1, 1, 1])).toEqual([0, 0, 0, 0, 1, 1, 1, 1]);
  expect(evenDrops([2, 1, 1, 1, 0, 0, 0, 0])).toEqual([2, 1, 1, 1, 0, 0, 0, 0]);
});

it('never steps lower than the ground allows, and never up where it falls', () => {
  const drops = fc.array(fc.nat(9), { minLength: 1, maxLength: 12 });
  fc.assert(
    fc.property(drops, fc.boolean(), (any, rising) => {
      const falling = [...any].sort((a, b) => a - b);
      const allowed = rising ? falling.toReversed() : falling;
      const found = evenDrops(allowed);
      expect(found.every((drop, bay) => drop <= (allowed[bay] ?? -1))).toBe(true);
      const ordered = [...found].sort((a, b) => a - b);
      expect(found).toEqual(rising ? ordered.toReversed() : ordered);
      expect([found[0], found.at(-1)]).toEqual([allowed[0], allowed.at(-1)]);
    }),
  );
});

// A fall of 36 over five panels is 36 / 5 = 7.2 in each (a published guide divides so); from panel to panel there are four
// transitions, and six pitches of 6 go over them as 2, 1, 2, 1, wherever the ground lets them (common practice).
it('steps down 36 over five panels by 2, 1, 2 and 1 pitches', () => {
  const tops = (levels: readonly (readonly [number, number])[]) => {
    const run = layOutRun(bank(levels, 'in-steps'));
    expect(run.problems).toEqual([]);
    return run.bays.map(({ number }) => inch(run.reach.get(number)?.[1]));
  };
  const steps = (heights: readonly number[]) =>
    heights.slice(1).map((top, at) => ((heights[at] ?? 0) - top) / 6);
  // A bank between the first panel and the second, and ground that falls just so.
  expect(
    steps(
      tops([
        [0, 0],
        [59, 0],
        [60, -36],
      ]),
    ),
  ).toEqual([2, 1, 2, 1]);
  expect(
    steps(
      tops([
        [0, 0],
        [64, -12],
        [128, -18],
        [192, -30],
        [256, -36],
      ]),
    ),
  ).toEqual([2, 1, 2, 1]);
  const { groundLine } = layOutRun(
    bank(
      [
        [0, 0],
        [324, -36],
      ],
      'in-steps',
    ),
  );
  const panel = inches(324) / 5;
  expect(inch(levelAt(groundLine, panel) - levelAt(groundLine, 2 * panel))).toBeCloseTo(7.2, 6);
});

// Course practice: 61 over a nominal course of 10 is 6.1, so six courses of 61 / 6 = 10-1/6 (published worked example).
// A slat of 9-1/2 with a gap of 1/2, half of it at either end, is such a course; its gap grows to 2/3.
it('divides a height of 61 into six courses of 10-1/6', () => {
  const pattern = patternOf('one', [board('slat', inches(9.5), inches(1))], {
    gap: inches(0.5),
    edgeGap: inches(0.25),
  });
  const run = layOutRun(
    runOf({
      length: inches(324),
      post: postOf('p', inches(4), inches(4)),
      spacing: { kind: 'bays', count: 5 },
      height: inches(63),
      bottom: inches(2),
      pattern: { ...pattern, edgeHalf: true },
      remedies: [{ kind: 'gaps', low: inches(3 / 8), high: inches(3 / 4) }],
      mounting: { kind: 'face', face: 'front' },
    }),
  );
  const courses = run.courses.get(1) ?? [];
  expect(courses).toHaveLength(6);
  for (const [at, { start }] of courses.entries())
    expect(Math.abs(start - (inches(63) - inches(1 / 3) - (at * inches(61)) / 6))).toBeLessThanOrEqual(1);
});

const GROUNDS: readonly (readonly (readonly [number, number])[])[] = [
  [
    [0, 0],
    [324, -36],
  ],
  [
    [0, -20],
    [100, 3],
    [200, -8],
    [324, -31],
  ],
  [
    [50, -5],
    [180, -40],
    [300, 4],
  ],
];

it.each(
  GROUNDS.flatMap((ground) => (['level-top', 'in-steps'] as const).map((slope) => ({ ground, slope }))),
)(
  'keeps clear of the ground all along, with courses at one datum: $slope over $ground',
  ({ ground, slope }) => {
    const run = layOutRun(bank(ground, slope));
    expect(run.problems).toEqual([]);
    expect(findOverlaps(run)).toEqual([]);
    expect(findUnsupported(run)).toEqual([]);
    const pitch = inches(6);
    for (const { number } of run.bays) {
      const courses = run.courses.get(number) ?? [];
      expect(courses.length).toBeGreaterThan(0);
      for (const { start } of courses) expect(Math.abs((run.top - start) % pitch)).toBe(0);
    }
    for (const piece of run.pieces.filter(({ role }) => role === 'slat')) {
      const xs = piece.solid.vertices.map(([x]) => x);
      const low = Math.min(...piece.solid.vertices.map(([, , z]) => z));
      for (let i = 0; i <= 400; i++) {
        const x = Math.min(...xs) + ((Math.max(...xs) - Math.min(...xs)) * i) / 400;
        expect(low - levelAt(run.groundLine, x)).toBeGreaterThanOrEqual(inches(2) - 1);
      }
    }
  },
);
