import { beforeAll, describe, expect, it } from 'vitest';
import { aboveGround, bottomEdge } from '../../language/layout/index.ts';
import { mm } from '../../language/units/index.ts';
import type { OpenJob } from '../jobs/index.ts';
import { closedOf, gapsOf, type InUnit, inUnit, openByHand, spansOf } from './index.ts';

// All in millimeters. It rests on sums along a tape, the theorems of Pythagoras and of cosines: the roots of 1 +
// 1/100 and 1 + 1/25 are 1.0049876 and 1.0198039, that of 455 is 21.330729.

const near = (value: number): unknown => expect.closeTo(value, 3);
const all = (values: readonly number[]): unknown[] => values.map(near);

let open: OpenJob;
let ramp: InUnit;
let court: InUnit;
beforeAll(async () => {
  open = await openByHand('harbor-ramp');
  ramp = inUnit(open.run('ramp'), mm(1));
  court = inUnit(open.run('court'), mm(1));
});

it('can be built as it is written', () => {
  expect(open.findings.filter(({ severity }) => severity === 'error')).toEqual([]);
});

describe('the racked run', () => {
  it('sets four posts: 5160 less 4 x 90 is 4800, three bays of 1600', () => {
    expect(ramp.posts).toEqual([
      [0, 90],
      [1690, 1780],
      [3380, 3470],
      [5070, 5160],
    ]);
    expect(ramp.clears).toEqual([1600, 1600, 1600]);
  });

  // Middles of posts are at 45, 1735, 3425 and 5115; the ground there is -4.5, -173.5, -342.5 and -342.5 - 1690 / 5 =
  // -680.5, up to the next mark of the tape -4, -173, -342, -680. So bays fall 169, 169 and 338 in 1690: 0.1, 0.1 and
  // 0.2. The bottom is 100 over each mark, 100.5 over the ground all along.
  it.each([
    [1, 45, -4, -0.1],
    [2, 1735, -173, -0.1],
    [3, 3425, -342, -0.2],
  ])('slopes bay %i from mark to mark', (bay, at, mark, rise) => {
    const top = open.run('ramp').edges.get(bay)?.top;
    expect(top && [top.at / mm(1), top.z / mm(1), top.rise]).toEqual([at, mark + 1500, near(rise)]);
  });

  // Along the slope a bay of 1600 is 1600 x 1.0049876 = 1607.980, and from tip to tip 90 x 0.1 = 9 more: 1616 on the
  // tape, in common 1616 - 18. In the third 1600 x 1.0198039 = 1631.686 and 18: 1649, and 1649 - 36. The angles are
  // atan 0.1 and atan 0.2.
  it('saws rails plumb at the posts', () => {
    for (const rail of ['top', 'bottom']) {
      const flat = { long: 1616, short: near(1598), saw: [near(5.7106), near(5.7106)] };
      expect(ramp.cut(`ramp/b1/rail-${rail}`)).toEqual(flat);
      expect(ramp.cut(`ramp/b2/rail-${rail}`)).toEqual(flat);
      const steep = { long: 1649, short: near(1613), saw: [near(11.3099), near(11.3099)] };
      expect(ramp.cut(`ramp/b3/rail-${rail}`)).toEqual(steep);
    }
  });

  // Ten slats and nine gaps are 900 + 630 = 1530, and 35 at either side: 1600. Edges of 1400, from 100 to 1500; from
  // tip to tip 90 x 0.1 more, in common as much less. The first slat of bay 1 stands from 125 to 215: its top falls
  // from 1496 - 8 to 1496 - 17.
  it('saws plumb slats to the slope', () => {
    for (const [bay, long, short, angle] of [
      [1, 1409, 1391, 5.7106],
      [3, 1418, 1382, 11.3099],
    ] as const)
      for (const course of ['01', '10'])
        expect(ramp.cut(`ramp/b${bay}/c${course}`)).toEqual({
          long,
          short: near(short),
          saw: [near(angle), near(angle)],
        });
    const along = ramp.reach('slat', 0).slice(0, 10);
    expect(along.map(([from]) => from)).toEqual(Array.from({ length: 10 }, (_, slat) => 125 + 160 * slat));
    expect(gapsOf(along)).toEqual(Array.from({ length: 9 }, () => 70));
    const corners = ramp.piece('ramp/b1/c01').solid.vertices.map(([x, , z]) => `${x / mm(1)} ${z / mm(1)}`);
    expect([...new Set(corners)].sort()).toEqual(['125 1488', '125 88', '215 1479', '215 79']);
  });

  // Under the bottom rail are 100.5 upright, 10 of them to stay free: 90.5 / 1.0049876 = 90.05 across the board, 90
  // on the tape; in bay 3 90.5 / 1.0198039 = 88.74, 88. Lengths as of rails: 1607.980 + 9; 1631.686 + 88 x 0.2 =
  // 1649.286, in common 1649 - 2 x 17.6. What is free then: 100.5 - 90 x 1.0049876 = 10.0511; 100.5 - 88 x 1.0198039
  // = 10.7573.
  it('rips kick boards to the space under the rails', () => {
    const widths = [1, 2, 3].map((bay) => ramp.piece(`ramp/b${bay}/kick`).cut.width / mm(1));
    expect(widths).toEqual([90, 90, 88]);
    expect(ramp.cut('ramp/b1/kick')).toMatchObject({ long: 1616, short: near(1598) });
    expect(ramp.cut('ramp/b3/kick')).toMatchObject({ long: 1649, short: near(1613.8) });
    const run = open.run('ramp');
    const free = run.bays.map((bay) => {
      const edge = bottomEdge(run, bay.number);
      const { least, most } = aboveGround(run, bay, edge ?? { at: 0, z: Number.NaN, rise: 0 });
      return [least / mm(1), most / mm(1)];
    });
    expect(free).toEqual([all([10.0511, 10.0511]), all([10.0511, 10.0511]), all([10.7573, 10.7573])]);
  });

  // Tops are 20 over the higher line beside a post, from its middle to the bay, up to a mark: 1496; at 1690, 45
  // uphill of the middle, -173 + 1500 + 4.5 = 1331.5, so 1332; at 3380 -342 + 1504.5 = 1162.5, so 1163; at 5070 -680
  // + 1500 + 9 = 829. Feet are 600 under the ground at the downhill side: -9, -178, -342.5 - 45 / 5 = -351.5, -689.5.
  it('cuts posts from 600 in the ground to 20 over the slats', () => {
    expect(ramp.reach('post', 2)).toEqual([
      all([-609, 1516]),
      all([-778, 1352]),
      all([-951.5, 1183]),
      all([-1289.5, 849]),
    ]);
    const lengths = [1, 2, 3, 4].map((number) => ramp.cut(`ramp/p${number}`).long);
    expect(lengths).toEqual([2125, 2130, 2134.5, 2138.5]);
  });

  // From the top of one rail to the bottom of the other, upright: 1400 - 2 x 90 x 1.0049876 = 1219.1022; in bay 3
  // 1216.4353. In inches, as figures of wind are reckoned: 1219.1022 / 25.4 = 47.9961.
  it('spans slats from rail to rail', () => {
    expect(spansOf(open).ramp).toEqual(near(47.9961));
  });

  // Open are 10 x 70 of 1600 between the rails: 0.4375 x 1219.1022 = 533.3572 of 1400 + 90.4489 with the kick board;
  // in bay 3 0.4375 x 1216.4353 = 532.1904 of 1400 + 89.7427. 1598.9048 / 4470.6405 = 0.357646, and 4800 of 5160 are
  // bays: 0.332694.
  it('closes two thirds of the face', () => {
    expect(closedOf(open).ramp).toEqual(near(66.7306));
  });

  it('is of 4 posts and, in each of 3 bays, 2 rails, 10 slats and a kick board', () => {
    expect(ramp.counts).toEqual({ post: 4, rail: 6, slat: 30, kick: 3 });
  });
});

describe('the run up to the wall', () => {
  // By the theorem of cosines the inside angle has (9 + 16 - 36) / 24 = -11/24 for its cosine: 117.2796 degrees, a
  // turn of 62.7204. Its cosine is 11/24 = 0.458333, its sine the root of 455 over 24, 0.888780. The second run's
  // middle line goes through the middle of the shared post, and its tape begins where the post does along it, 45
  // (0.458333 + 0.888780) = 60.6201 before: east 5115 - 60.6201 x 0.458333, north -60.6201 x 0.888780.
  it('turns by the triangle measured', () => {
    const place = open.layout.places.get('court');
    expect(place?.bearing).toEqual(near(90 - 62.7204));
    expect(place?.origin.map((at) => at / mm(1))).toEqual(all([5087.2158, -53.878, 0]));
  });

  // The shared post takes 90 x 1.347114 = 121.2402 of the tape. 3000 - 121.2402 - 180 leaves 2698.7598, half of it
  // 1349.3799: the middle post at 1470.6201, on the tape 1471. Slats have 3 free at either end: 1471 - 121.2402 - 6 =
  // 1343.7598, and 2910 - 1561 - 6 = 1343.
  it('sets posts and cuts slats between them', () => {
    expect(court.posts).toEqual([all([0, 121.2402]), [1471, 1561], [2910, 3000]]);
    expect(court.clears).toEqual(all([1349.7598, 1349]));
    for (const key of ['court/b1/c01', 'court/b2/c12'])
      expect(court.cut(key)).toEqual({ long: 1343, short: 1343, saw: [0, 0] });
  });

  // Cleats of 20 at either end: 1349.7598 - 40 = 1309.7598, 51.5653 inches. Against the other run's line they stand
  // at 90 - 62.7204 = 27.2796 degrees.
  it('spans slats from cleat to cleat', () => {
    expect(spansOf(open).court).toEqual(near(51.5653));
    const square = open.findings.filter(({ code }) => code === 'corner-not-square');
    expect(square.map(({ message }) => message.includes('to 27.3°'))).toEqual([true]);
  });

  // 330 of 1410 are gaps, over 2698.7598 of 3000: 0.210541.
  it('closes four fifths of the face', () => {
    expect(closedOf(open).court).toEqual(near(78.9459));
  });

  // Twelve slats and eleven gaps are 1080 + 330 = 1410: from 60 to 1470 over -690. Cleats are as long, posts from
  // -1290 to 780 + 20.
  it('fills the height', () => {
    const heights = court.reach('slat', 2).slice(0, 12);
    expect(heights.map(([, top]) => top)).toEqual(
      Array.from({ length: 12 }, (_, course) => 780 - 120 * course),
    );
    expect(heights.at(-1)?.[0]).toBe(-630);
    expect(court.cut('court/b1/cleat-left-front').long).toBe(1410);
    expect(court.reach('post', 2)).toEqual([
      [-1290, 800],
      [-1290, 800],
    ]);
  });

  // The wall is 40 off the post at the ground and 1 in 100 nearer going up: at 60 39.4, at 1470 25.3; ripped of a
  // board to 40 first.
  it('scribes the filler to the wall', () => {
    const { cut } = court.piece('court/p3/filler-end');
    expect(cut.scribe?.map(({ at, width }) => [at / mm(1), width / mm(1)])).toEqual([
      all([0, 39.4]),
      all([1410, 25.3]),
    ]);
    expect([cut.width, cut.longPoint].map((size) => size / mm(1))).toEqual([40, 1410]);
  });

  it('is of 2 posts of its own, 24 slats, 8 cleats and the filler', () => {
    expect(court.counts).toEqual({ post: 2, slat: 24, cleat: 8, filler: 1 });
  });
});
