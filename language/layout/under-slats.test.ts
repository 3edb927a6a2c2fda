import fc from 'fast-check';
import Module from 'manifold-3d';
import { beforeAll, expect, it } from 'vitest';
import { board, originOf, patternOf, postOf, runOf, sourced } from '../../tests/specs/build.ts';
import { levelAt, type Mounting, type RunSpec, type Slope } from '../model/index.ts';
import { inches, METRIC, mm, type Ticks } from '../units/index.ts';
import { aboveGround, bottomEdge } from './bay-edges.ts';
import { findOverlaps } from './overlap.ts';
import type { Piece } from './piece.ts';
import { layOutRun } from './run.ts';
import { findUnsupported } from './support.ts';

let library: Awaited<ReturnType<typeof Module>>;
beforeAll(async () => {
  library = await Module();
  library.setup();
});

type Levels = readonly (readonly [station: number, level: number])[];
type Given = Partial<Pick<RunSpec, 'kick' | 'lastFollows'>> & { bottom?: number; mounting?: Mounting };

// Five bays of 60 with posts of 4; ten slats of 5-1/2 and gaps of 1/2 are 59-1/2: pitch 6.
function bank(levels: Levels, slope: Slope, { bottom = 2, mounting, ...given }: Given): RunSpec {
  const upright = slope === 'racked';
  const held: Mounting = mounting ?? { kind: 'face', face: 'front' };
  const spec = runOf({
    length: inches(324),
    post: postOf('p', inches(4), inches(4)),
    spacing: { kind: 'bays', count: 5 },
    height: inches(bottom + 59.5),
    bottom: inches(bottom),
    pattern: patternOf('one', [board('slat', inches(5.5), inches(1))], { gap: inches(0.5) }),
    mounting: held,
    ...(held.kind === 'between' ? { cleat: board('nib', inches(0.75), inches(0.75), 'cleat') } : {}),
    ...(upright ? { flip: { upright }, rail: board('bar', inches(3.5), inches(1.5), 'rail') } : {}),
  });
  return {
    ...spec,
    ground: sourced(Math.max(...levels.map(([, z]) => inches(z)))),
    levels: levels.map(([x, z]) => ({ station: inches(x), level: inches(z), origin: originOf('ground') })),
    slope: sourced(slope),
    ...given,
  };
}

const kick = (follows: boolean, clearance = 0.5): Given => ({
  kick: {
    stock: sourced(board('sole', inches(9.25), inches(1.5))),
    clearance: sourced(inches(clearance)),
    follows,
    origin: originOf('kick'),
  },
});
const inch = (ticks: Ticks | undefined) => (ticks ?? Number.NaN) / inches(1);
const find = (pieces: readonly Piece[], key: string) => pieces.find((piece) => piece.key === key);

// By hand. Ground falls 4 in 64, so 5 in 80; the first bay's slats lie from 0 to 66, the middle of post 2, ground there 0 and
// -4-1/8. Below ten slats over 2 there is no room for a taper. Bay 2, from 66: from 1-1/2 to 2 over
// -4-1/8 it is 3-5/8, and to 2 over -8-1/8 more than the board's 5-1/2. Bay 3 lies from 130 to 194, ground -8-1/8 and -12-1/8;
// one course more ends at 2 - 6 = -4. The next hangs from -4-1/2 down to 2 over the ground: 1-5/8 at the left end, under
// 2. Bay 5, from 258: ground -16-1/8, -20-1/4; two more courses end at -10; from -10-1/2 to -14-1/8 is 3-5/8, and
// to -18-1/4 more than the board's 5-1/2.
it('rips one more course to the ground where it is wide enough, by hand', () => {
  const run = layOutRun(
    bank(
      [
        [0, 0],
        [324, -20.25],
      ],
      'level-top',
      { lastFollows: sourced(inches(2)) },
    ),
  );
  expect(run.problems).toEqual([]);
  const tapers = run.pieces.flatMap(({ key, cut }) => (cut.taper ? [[key, cut.taper.map(inch)]] : []));
  expect(tapers).toEqual([
    ['bank/b2/c11', [3.625, 5.5]],
    ['bank/b5/c13', [3.625, 5.5]],
  ]);
  expect(run.courses.get(5)).toHaveLength(12);
  const edge = bottomEdge(run, 5);
  expect(edge && inch(edge.z)).toBe(-10.5 - 3.625);
});

// By hand. Level ground; a gap of 1/2 under slats that end 10 above it leaves 9-1/2 less a clearance of 1/2: 9.
it('sets a level board under level slats, by hand', () => {
  const { levels, ...flat } = bank([[0, 0]], 'level-top', { ...kick(false), bottom: 10 });
  const run = layOutRun(flat);
  const piece = find(run.pieces, 'bank/b2/kick');
  expect(levels).toHaveLength(1);
  expect([piece?.cut.width, piece?.cut.longPoint].map(inch)).toEqual([9, 60]);
  expect([piece?.cut.ripped, piece?.cut.taper]).toEqual([true, undefined]);
  expect(inch(run.reach.get(2)?.[0])).toBe(0.5);
  expect(run.bottom).toBe(inches(10));
});

// By hand. The same over ground that falls 1 in 12: in bay 1, from 4 to 64, the ground is -1/3 and -5-1/3; the room from
// 9-1/2 to 1/2 over it 9-1/3 and 14-1/3. The board is 9-1/4 wide, so it stays whole and follows nothing. Raised to 5:
// from 4-1/2 it is 4-1/3, on the tape 4-5/16, and 9-1/4, where 9-1/3 would go in.
// A gap and a clearance of 12.7 mm each: 65.4 mm under the slats leave 40 of them, 64.4 mm 39.
it.each([
  [40, [], [40]],
  [39, [['kick-no-room', '40 mm']], []],
])('rips no board narrower than 40 mm in a metric job: %i mm', (room, told, widths) => {
  const { levels, ...flat } = bank([[0, 0]], 'level-top', { ...kick(false), bottom: (25.4 + room) / 25.4 });
  const run = layOutRun({ ...flat, spacing: sourced({ kind: 'bays', count: 1 }), measure: METRIC });
  expect(levels).toHaveLength(1);
  expect(run.problems.map(({ code, args }) => [code, args.least])).toEqual(told);
  expect(run.pieces.filter(({ role }) => role === 'kick').map(({ cut }) => cut.width / mm(1))).toEqual(
    widths,
  );
});

it('rips a board to the ground, no wider than it is', () => {
  const falls: Levels = [
    [0, 0],
    [324, -27],
  ];
  const whole = layOutRun(bank(falls, 'in-steps', { ...kick(true), bottom: 10 }));
  expect(find(whole.pieces, 'bank/b1/kick')?.cut).toMatchObject({ width: inches(9.25), ripped: false });
  const tapered = layOutRun(bank(falls, 'in-steps', { ...kick(true), bottom: 5 }));
  expect(find(tapered.pieces, 'bank/b1/kick')?.cut.taper?.map(inch)).toEqual([4.3125, 9.25]);
});

it('tells of bays without room, and leaves them without a board', () => {
  const run = layOutRun(
    bank(
      [
        [0, 0],
        [324, -12],
      ],
      'level-top',
      kick(false),
    ),
  );
  expect(run.problems.map(({ code, args }) => [code, args.bays])).toEqual([['kick-no-room', '1']]);
  expect(find(run.pieces, 'bank/b1/kick')).toBeUndefined();
  expect(find(run.pieces, 'bank/b3/kick')).toBeDefined();
});

it('gives the solid of a board sawn along two lines, by another library', () => {
  const run = layOutRun(
    bank(
      [
        [0, 0],
        [200, -30],
        [324, -36],
      ],
      'racked',
      { ...kick(true, 1), bottom: 6 },
    ),
  );
  const { Manifold, CrossSection } = library;
  const boards = run.pieces.filter(({ role }) => role === 'kick');
  expect(boards.length).toBe(5);
  for (const { solid, cut, bay } of boards) {
    const xs = solid.vertices.map(([x]) => x);
    const [x0, x1] = [Math.min(...xs), Math.max(...xs)];
    const low = bottomEdge(run, bay ?? 0);
    const edges = run.edges.get(bay ?? 0);
    const rise = (edges?.top?.rise ?? 0) as number;
    const top = (x: number) => (edges?.top?.z ?? 0) - inches(59.5) + rise * (x - (edges?.top?.at ?? 0));
    const bottom = (x: number) => (low?.z ?? 0) + (low?.rise ?? 0) * (x - (low?.at ?? 0));
    const face = CrossSection.ofPolygons([
      [
        [x0, bottom(x0)],
        [x1, bottom(x1)],
        [x1, top(x1)],
        [x0, top(x0)],
      ],
    ]);
    const own = Manifold.hull(solid.vertices.map((at) => [...at] as [number, number, number]));
    expect(own.volume() / (face.area() * cut.thickness)).toBeCloseTo(1, 5);
    // Its grain follows its upper edge.
    expect(cut.longPoint).toBeLessThanOrEqual(Math.hypot(1, rise) * (x1 - x0) + Math.abs(rise) * cut.width);
  }
});

it('keeps clear of any ground by what is stated, with nothing in one place and nothing unheld', () => {
  const ground = fc.array(fc.tuple(fc.integer({ min: 0, max: 324 }), fc.integer({ min: -30, max: 30 })), {
    minLength: 2,
    maxLength: 5,
  });
  const slopes = fc.constantFrom<Slope>('level-top', 'in-steps', 'racked');
  const mountings = fc.constantFrom<Mounting>(
    { kind: 'face', face: 'back' },
    { kind: 'between' },
    { kind: 'both' },
  );
  fc.assert(
    fc.property(
      ground,
      slopes,
      mountings,
      fc.boolean(),
      fc.boolean(),
      fc.integer({ min: 2, max: 9 }),
      (...given) => {
        const [points, slope, mounting, follows, last, bottom] = given;
        const levels = [...new Map(points)];
        const spec = bank(levels, slope, {
          ...kick(follows),
          bottom,
          mounting,
          ...(last && slope !== 'racked' ? { lastFollows: sourced(inches(2)) } : {}),
        });
        const stiff = {
          stock: sourced(board('st', inches(2.5), inches(0.75))),
          faces: ['back', 'front'] as const,
        };
        const dressed =
          mounting.kind === 'between' ? { stiffeners: { ...stiff, origin: originOf('stiff') } } : {};
        const battens = mounting.kind === 'both' && slope !== 'racked' ? { battens: stiff.stock } : {};
        const run = layOutRun({ ...spec, ...dressed, ...battens });
        fc.pre(run.sound);
        expect(findOverlaps(run)).toEqual([]);
        expect(findUnsupported(run)).toEqual([]);
        for (const piece of run.pieces) {
          if (piece.role === 'post') continue;
          const least = piece.role === 'kick' ? inches(0.5) : inches(bottom);
          for (const [x, , z] of piece.solid.vertices)
            expect(z - levelAt(run.groundLine, x), piece.key).toBeGreaterThanOrEqual(least - 2);
          if (piece.cut.taper)
            expect(Math.min(...piece.cut.taper)).toBeGreaterThanOrEqual(
              inches(piece.role === 'kick' ? 1.5 : 2) - inches(1 / 4),
            );
        }
        for (const bay of run.bays) {
          const edge = bottomEdge(run, bay.number);
          const own = run.pieces.filter((piece) => piece.bay === bay.number);
          if (!edge) continue;
          const kicked = own.some(({ role }) => role === 'kick');
          expect(aboveGround(run, bay, edge).least).toBeGreaterThanOrEqual(inches(kicked ? 0.5 : bottom) - 2);
          // Nothing in the bay is lower than its edge says.
          for (const { solid } of own)
            for (const [x, , z] of solid.vertices)
              expect(z).toBeGreaterThanOrEqual(edge.z + edge.rise * (x - edge.at) - 2);
        }
      },
    ),
    { numRuns: 50 },
  );
});

// Courses of bay 5 as above: 12, and the 13th is ripped to the ground.
it.each([
  [12, []],
  [13, []],
  [14, [['measured-elsewhere', 13]]],
])('knows that course %i of a bay is cut where the last is ripped to the ground', (course, told) => {
  const spec = bank(
    [
      [0, 0],
      [324, -20.25],
    ],
    'level-top',
    { lastFollows: sourced(inches(2)) },
  );
  const cuts = [{ bay: 5, courses: { first: course, last: course }, origin: originOf('cut') }];
  const run = layOutRun({ ...spec, measured: { bays: [], posts: [], cuts, origin: originOf('measured') } });
  expect(run.problems.map(({ code, args }) => [code, args.count])).toEqual(told);
});
