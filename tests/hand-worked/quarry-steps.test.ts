import { beforeAll, describe, expect, it } from 'vitest';
import { aboveGround, bottomEdge, toPlan } from '../../language/layout/index.ts';
import { inches } from '../../language/units/index.ts';
import type { OpenJob } from '../jobs/index.ts';
import { closedOf, gapsOf, type InUnit, inUnit, openByHand, spansOf } from './index.ts';

// All in inches. It rests on sums along a tape and on plane trigonometry: cos 60 = 1/2, sin 60 = 0.866025, tan 30 =
// 0.577350.

const near = (value: number): unknown => expect.closeTo(value, 3);
const all = (values: readonly number[]): unknown[] => values.map(near);

let open: OpenJob;
let bank: InUnit;
let yard: InUnit;
beforeAll(async () => {
  open = await openByHand('quarry-steps');
  bank = inUnit(open.run('bank'), inches(1));
  yard = inUnit(open.run('yard'), inches(1));
});

it('can be built as it is written', () => {
  expect(open.findings.filter(({ severity }) => severity === 'error')).toEqual([]);
});

describe('the run in steps', () => {
  it('sets four posts: 182 less 4 x 3-1/2 is 168, three bays of 56', () => {
    expect(bank.posts).toEqual([
      [0, 3.5],
      [59.5, 63],
      [119, 122.5],
      [178.5, 182],
    ]);
    expect(bank.clears).toEqual([56, 56, 56]);
  });

  // The pitch is 3-1/2 + 1/2 = 4. The ground is highest at the uphill side of a bay's first post: at 0 it is 0; at
  // 59-1/2 it is -59.5 / 14 = -4-1/4, one pitch and 1/4; at 119 -7 - 21/6 = -10-1/2, two pitches and 2-1/2. Twelve
  // slats and eleven gaps are 42 + 5-1/2 = 47-1/2: from 2-1/2 to 50, then 4 lower, then 8.
  it.each([
    [1, 50, 12],
    [2, 46, 12],
    [3, 42, 13],
  ])('steps bay %i by whole pitches, its top at %i', (bay, top, count) => {
    const slats = open
      .run('bank')
      .pieces.filter((piece) => piece.role === 'slat' && piece.bay === bay)
      .map(({ solid }) => solid.vertices.map((vertex) => vertex[2] / inches(1)));
    expect(slats.map((heights) => Math.max(...heights))).toEqual(
      Array.from({ length: count }, (_, course) => top - 4 * course),
    );
    const gaps = gapsOf(slats.map((heights) => [Math.min(...heights), Math.max(...heights)]));
    // The tapered course ends half an inch under the one above it, wherever it ends below.
    expect(gaps).toEqual(Array.from({ length: count - 1 }, () => 0.5));
  });

  // Tops are an inch over the higher bay beside each post: 51, 51, 47, 43. Feet are 24 under the lowest ground under
  // a post's width: -3.5 / 14 = -1/4, -63 / 14 = -4-1/2, -7 - 24.5 / 6 = -11.0833, -21.
  it('cuts posts from 24 in the ground to an inch over the slats', () => {
    expect(bank.reach('post', 2)).toEqual([
      all([-24.25, 51]),
      all([-28.5, 51]),
      all([-35.0833, 47]),
      all([-45, 43]),
    ]);
    const lengths = [1, 2, 3, 4].map((number) => bank.cut(`bank/p${number}`).long);
    expect(lengths).toEqual(all([75.25, 79.5, 82.0833, 88]));
  });

  // From post to post. Bay 1: the bottom at 2-1/2 over -1/4 and -4-1/4. Bay 2: -1-1/2 over -4-1/2 and, at 119,
  // -10-1/2. Bay 3 ends with the tapered course below.
  it('stands clear of the ground all along each bay', () => {
    const run = open.run('bank');
    const clear = run.bays.map((bay) => {
      const edge = bottomEdge(run, bay.number);
      const { least, most } = aboveGround(run, bay, edge ?? { at: 0, z: Number.NaN, rise: 0 });
      return [least / inches(1), most / inches(1)];
    });
    // Bay 3: at 122-1/2 -8.2845 over -11.0833, at 178-1/2 -9.4285 over -7 - 80.5 / 6 = -20.4167.
    expect(clear).toEqual([all([2.75, 6.75]), all([3, 9]), all([2.7989, 10.9882])]);
  });

  // A thirteenth course hangs from -5-1/2 - 1/2 = -6. At its left end, 120-13/16, the ground is -10-1/2 - 1.8125 / 6
  // = -10.8021, and 2-1/2 over that leaves 2.3021: 2-1/4 on the tape. At the right end it is the whole board: -6 + 21
  // - 2-1/2 = 12-1/2 would go in. So its bottom goes from -8-1/4 to -9-1/2. In bay 2 it would hang from -2: the
  // straight line over the ground there lies on the break at 98, -7, and at post 2 at -2.83: nothing fits. In bay 1
  // even less.
  it('rips one course of the last bay to the ground, and none above', () => {
    const { cut, solid } = bank.piece('bank/b3/c13');
    expect(cut.taper?.map((width) => width / inches(1))).toEqual([2.25, 3.5]);
    expect(Math.min(...solid.vertices.map(([, , z]) => z)) / inches(1)).toEqual(near(-9.5));
    expect(open.run('bank').pieces.filter((piece) => piece.cut.taper)).toHaveLength(1);
  });

  // Slats meet over the middles of posts, 61-1/4 and 120-3/4, with 1/8 between them: 61-1/4 - 1/16 = 61-3/16; 120-3/4
  // - 61-1/4 - 1/8 = 59-3/8; from 120-13/16 to the edge of the last post, 182, 61-3/16. There the other run's slats
  // pass at 60 degrees: on the face of the post they meet in its edge, and 3/4 farther out 3/4 / tan 60 = 0.4330
  // sooner: sawn 30 degrees off square.
  it('cuts slats from middle to middle of posts, the last to the corner', () => {
    expect(bank.cut('bank/b1/c01')).toEqual({ long: 61.1875, short: 61.1875, saw: [0, 0] });
    expect(bank.cut('bank/b2/c05')).toEqual({ long: 59.375, short: 59.375, saw: [0, 0] });
    expect(bank.cut('bank/b3/c01')).toEqual({
      long: near(61.1875),
      short: near(60.7545),
      saw: [0, near(30)],
    });
  });

  it('is of 4 posts and 12 + 12 + 13 slats', () => {
    expect(bank.counts).toEqual({ post: 4, slat: 37 });
  });
});

describe('the run after the corner', () => {
  // Its tape begins at the corner of the shared post that comes first along it. Across the turn of 60 the post takes
  // 3-1/2 (cos 60 + sin 60) = 4.7811. 120 - 4.7811 - 2 x 3-1/2 leaves 108.2189, half of it 54.1095: 58.8905, on the
  // tape 58-7/8.
  it('sets posts from the shared one on', () => {
    expect(yard.posts).toEqual([all([0, 4.7811]), [58.875, 62.375], [116.5, 120]]);
    expect(yard.clears).toEqual(all([54.0939, 54.125]));
  });

  // Middle of the shared post 180.25 along the first run. Its corners along the second, u = (0.5, 0.866025): the
  // first is (178.5, -1.75), 89.25 - 1.5155 = 87.7345. Across it, n = (-0.866025, 0.5): the outermost is (182,
  // -1.75), -157.6166 - 0.875 = -158.4916; there slats lie, 1-3/4 before the run's own middle line: -156.7416. So
  // station 0 is 87.7345 u - 156.7416 n.
  it('stands on the plan so that its slats lie on the edge of the post', () => {
    const place = open.layout.places.get('yard');
    expect(place?.bearing).toBeCloseTo(30, 9);
    expect(place?.origin.map((at) => at / inches(1))).toEqual(all([179.6095, -2.3905, 0]));
    // That edge, from the second run: 1-3/4 before its middle line and 1-3/4 along it.
    const edge = place && toPlan(place, inches(1.75), -inches(1.75));
    expect(edge?.map((at) => at / inches(1))).toEqual(all([182, -1.75]));
  });

  // Lapped: slats go past the edge of the post as far as the outside of the first run's slats, 3/4 / sin 60 = 0.8660
  // before the edge at 1.75: 0.8840 at the post, and 3/4 / tan 60 = 0.4330 more on their outside. To the middle of
  // post 2, 60-5/8, less 1/16: 60.5625 - 0.8840 = 59.6785, on the tape 59-5/8, given up at post 2. The second bay:
  // 120 - 60-11/16 = 59-5/16.
  it('laps its slats over the ends of those before', () => {
    expect(yard.cut('yard/b1/c01')).toEqual({
      long: near(59.625),
      short: near(59.192),
      saw: [near(30), 0],
    });
    const [first] = yard.reach('slat', 0);
    expect(first).toEqual(all([0.884, 0.884 + 59.625]));
    expect(yard.cut('yard/b2/c01')).toEqual({ long: 59.3125, short: 59.3125, saw: [0, 0] });
  });

  // -21 + 63 = 42, the top of the bay before; fifteen slats and fourteen gaps are 52-1/2 + 7 = 59-1/2, down to 3-1/2
  // over the ground.
  it('goes on with the lines of the bay before', () => {
    const heights = yard.reach('slat', 2).slice(0, 15);
    expect(heights.map(([, top]) => top)).toEqual(Array.from({ length: 15 }, (_, course) => 42 - 4 * course));
    expect(heights.at(-1)?.[0]).toBe(-17.5);
    expect(gapsOf(heights)).toEqual(Array.from({ length: 14 }, () => 0.5));
    // 24 under -21, and an inch over 42: 88 long; the first is the other run's.
    expect(yard.reach('post', 2)).toEqual([
      [-45, 43],
      [-45, 43],
    ]);
    expect(yard.counts).toEqual({ post: 2, slat: 30 });
  });
});

// Between posts: bays of 56. After the corner slats touch the shared post with its edge alone, 1-3/4 along their run:
// 58-7/8 - 1-3/4 = 57-1/8 to the next. What fills the wedge beside that edge is ripped to 90 - 60 = 30 degrees.
it('holds slats where they touch posts', () => {
  expect(spansOf(open)).toEqual({ bank: near(56), yard: near(57.125) });
  const told = (code: string) => open.findings.filter((finding) => finding.code === code);
  expect(told('span-too-long').map(({ message }) => /spans (\S+)/.exec(message)?.[1])).toEqual([
    '56"',
    '57-1/8"',
  ]);
  expect(told('corner-not-square').map(({ message }) => message.includes('to 30°'))).toEqual([true]);
});

// Of bays 1 and 2 11 gaps of 1/2 in 47-1/2 are open; of bay 3 12 of them in 42 + 8.8565, where its bottom is in the
// middle. 17 / 145.8565 = 0.116553, and 168 of 182 are bays: 0.107587. After the corner 14 gaps in 59-1/2, 0.117647,
// over 108.2189 of 120: 0.106097.
it('closes the face but for the gaps', () => {
  expect(closedOf(open)).toEqual({ bank: near(89.2413), yard: near(89.3903) });
});

// Mitered at half of the turn. Outside, 3/4 off the post, both go 3/4 tan 30 = 0.4330 past its edge: the first run's
// to 182.4330, so 182.4330 - 120.8125 = 61.6205, on the tape 61-9/16, given up over post 3; the second's from 1.75 at
// the post, 1.3170 outside: 60.5625 - 1.3170 = 59.2455, on the tape 59-3/16. Inside they are 0.4330 shorter.
it('miters the same corner at half of its turn', async () => {
  const mitered = await openByHand('quarry-steps', ['corner lap', 'corner miter']);
  const [before, after] = ['bank', 'yard'].map((name) => inUnit(mitered.run(name), inches(1)));
  expect(before?.cut('bank/b3/c01')).toEqual({
    long: near(61.5625),
    short: near(61.1295),
    saw: [0, near(30)],
  });
  expect(after?.cut('yard/b1/c01')).toEqual({
    long: near(59.1875),
    short: near(58.7545),
    saw: [near(30), 0],
  });
});
