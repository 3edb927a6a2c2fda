import fc from 'fast-check';
import Module from 'manifold-3d';
import { Vector3 } from 'three';
import { beforeAll, expect, it } from 'vitest';
import { board, originOf, patternOf, postOf, runOf, sourced } from '../../tests/specs/build.ts';
import { levelAt, type Mounting, type RunSpec } from '../model/index.ts';
import { inches, mm, type Ticks } from '../units/index.ts';
import { heightAt } from './incline.ts';
import { findOverlaps } from './overlap.ts';
import type { Piece } from './piece.ts';
import { isRacked } from './racks.ts';
import { layOutRun } from './run.ts';
import { findUnsupported } from './support.ts';

let library: Awaited<ReturnType<typeof Module>>;
beforeAll(async () => {
  library = await Module();
  library.setup();
});

type Levels = readonly (readonly [station: number, level: number])[];

// Five bays of 60 with posts of 4: 5 x 60 + 6 x 4 = 324; middles of posts are 64 apart.
function bank(levels: Levels, mounting: Mounting = { kind: 'face', face: 'front' }, width = 5.5): RunSpec {
  const spec = runOf({
    length: inches(324),
    post: postOf('p', inches(4), inches(4)),
    spacing: { kind: 'bays', count: 5 },
    height: inches(61.5),
    bottom: inches(2),
    pattern: patternOf('one', [board('slat', inches(width), inches(1))], { gap: inches(0.5) }),
    flip: { upright: true },
    rail: board('bar', inches(3.5), inches(1.5), 'rail'),
    ...(mounting.kind === 'between' ? { cleat: board('nib', inches(0.75), inches(0.75), 'cleat') } : {}),
    mounting,
    endGap: inches(mounting.kind === 'between' ? 1 / 8 : 0),
  });
  return {
    ...spec,
    ground: sourced(Math.max(...levels.map(([, z]) => inches(z)))),
    levels: levels.map(([x, z]) => ({ station: inches(x), level: inches(z), origin: originOf('ground') })),
    slope: sourced('racked'),
  };
}

const mountings: readonly Mounting[] = [
  { kind: 'face', face: 'front' },
  { kind: 'face', face: 'back' },
  { kind: 'between' },
  { kind: 'both' },
];

const inch = (ticks: Ticks) => ticks / inches(1);
const laidOut = (levels: Levels, mounting?: Mounting) => layOutRun(bank(levels, mounting));
const find = (pieces: readonly Piece[], key: string) => pieces.find((piece) => piece.key === key) as Piece;

// By hand. Ground falls 3 in 4: a bay of 60 is 60 x 5/4 = 75 along the slope. Rails 3-1/2 wide, plumb at posts, from tip to
// tip 75 + 3-1/2 x 3/4 = 77-5/8, in common 75 - 2-5/8 = 72-3/8, sawn at atan 3/4 = 36.87 degrees. Slats 5-1/2 wide
// are 61-1/2 - 2 = 59-1/2 on either edge, so 59-1/2 + 5-1/2 x 3/4 = 63-5/8 from tip to tip and 55-3/8 in common.
it('cuts rails plumb and slats to the slope: 3 in 4, by hand', () => {
  const { pieces, problems } = laidOut([
    [0, 0],
    [324, -243],
  ]);
  expect(problems).toEqual([]);
  const rail = find(pieces, 'bank/b2/rail-top').cut;
  expect([inch(rail.longPoint), inch(rail.shortPoint)]).toEqual([77.625, 72.375]);
  for (const { miter, bevel } of rail.ends) {
    expect(miter).toBeCloseTo((Math.atan(0.75) * 180) / Math.PI, 9);
    expect(bevel).toBe(0);
  }
  const slat = find(pieces, 'bank/b2/c03').cut;
  expect([inch(slat.longPoint), inch(slat.shortPoint)]).toEqual([63.625, 55.375]);
  expect(slat.ends[0].miter).toBeCloseTo(-36.8699, 4);
});

// By hand. 5 in 12: 60 x 13/12 = 65 along the slope, and 3-1/2 x 5/12 = 1.4583 more from tip to tip: 66.4583, on the tape
// 66-7/16. The ground at the middles of the posts, 2 + 64 n, is -5/12 of that: -0.8333, -27.5, -54.1667, ...; on the
// tape, not lower: -13/16, -27-1/2, -54-1/8. So bay 2 falls 26-5/8 in 64 and not 26-2/3: its slope is 0.416016.
it('goes from mark to mark of the tape: 5 in 12, by hand', () => {
  const run = laidOut([
    [0, 0],
    [324, -135],
  ]);
  expect(inch(find(run.pieces, 'bank/b2/rail-bottom').cut.longPoint)).toBe(66.4375);
  expect(run.edges.get(2)?.bottom?.rise).toBeCloseTo(-26.625 / 64, 9);
  // Post 3: bay 2 ends at its face, 2 before its middle: 61-1/2 - 54-1/8 + 2 x 0.416 = 8.207, on the tape 8-1/4.
  const top = Math.max(...find(run.pieces, 'bank/p3').solid.vertices.map(([, , z]) => z));
  expect(inch(top)).toBe(8.25);
});

it('gives the solids that a beam sawn plumb and a slat sawn sloping have, by another library', () => {
  const run = laidOut([
    [0, 5],
    [100, -13],
    [324, -61],
  ]);
  const { Manifold } = library;
  for (const number of [1, 2, 3, 4, 5]) {
    const { from, to } = run.bays[number - 1] as (typeof run.bays)[number];
    const rise = run.edges.get(number)?.bottom?.rise ?? Number.NaN;
    const rail = find(run.pieces, `bank/b${number}/rail-top`);
    // A long beam turned to the slope about the rail's upper left corner, then cut off at its two stations.
    const corner = rail.solid.vertices[0] as readonly [number, number, number];
    const beam = Manifold.cube([inches(200), inches(1.5), inches(3.5)], false)
      .translate([-inches(100), 0, -inches(3.5)])
      .rotate([0, (-Math.atan(rise) * 180) / Math.PI, 0])
      .translate([corner[0], corner[1], corner[2]]);
    const xs = rail.solid.vertices.map(([x]) => x);
    const [x0, x1] = [Math.min(...xs), Math.max(...xs)];
    expect(x0).toBeGreaterThanOrEqual(from);
    expect(x1).toBeLessThanOrEqual(to);
    const slab = Manifold.cube([x1 - x0, inches(40), inches(400)], false).translate([
      x0,
      -inches(20),
      -inches(200),
    ]);
    const sawn = beam.intersect(slab);
    const own = Manifold.hull(rail.solid.vertices.map((at) => [...at] as [number, number, number]));
    expect(own.volume() / sawn.volume()).toBeCloseTo(1, 6);
    expect(sawn.subtract(own).volume() / sawn.volume()).toBeLessThan(1e-5);
    // From tip to tip along the grain, by the distance of its corners and their turn from the grain.
    const at = rail.solid.vertices.map((vertex) => new Vector3(...vertex));
    const grain = new Vector3(1, 0, rise).normalize();
    const along = at.map((vertex) => vertex.dot(grain));
    expect(rail.cut.longPoint).toBeCloseTo(Math.max(...along) - Math.min(...along), -1);
  }
});

it.each(mountings)('makes on level ground what is made without racking: $kind $face', (mounting) => {
  const level = bank([[0, 0]], mounting);
  const { levels, slope, ...plain } = level;
  expect([isRacked({ levels, slope }), isRacked({ slope })]).toEqual([true, false]);
  const run = layOutRun(level);
  expect([...run.edges.values()].map(({ bottom, top }) => [bottom?.rise, top?.rise])).toEqual(
    run.bays.map(() => [0, 0]),
  );
  expect(run.pieces).toEqual(layOutRun(plain).pieces);
  // Of slope without levels there is nothing to follow.
  expect(layOutRun({ ...plain, ...(slope ? { slope } : {}) }).edges.size).toBe(0);
});

// Over the straight line from post to post stands a hump of 6 at 162, the middle of bay 3: its marks are raised by 6.
it('raises a bay over a hump between its posts, and its neighbors with it', () => {
  const run = laidOut([
    [130, 0],
    [162, 6],
    [194, 0],
  ]);
  const marks = run.bays.map(({ number }) => run.edges.get(number)?.bottom as { at: number; z: number });
  expect(marks.map(({ z }) => inch(z))).toEqual([2, 2, 8, 8, 2]);
  for (const x of [132, 162, 192]) {
    const edge = run.edges.get(3)?.bottom;
    expect(edge && inch(heightAt(edge, inches(x)))).toBe(8);
  }
});

it('tells of ground so steep that rails leave no slat', () => {
  const { sound, problems } = laidOut([
    [0, 0],
    [324, -324 * 12],
  ]);
  expect(sound).toBe(false);
  expect(problems.map(({ code }) => code)).toEqual(['too-low-for-rails']);
});

it('keeps clear of any ground by the bottom stated, with nothing in one place and nothing unheld', () => {
  const ground = fc.array(fc.tuple(fc.integer({ min: 0, max: 324 }), fc.integer({ min: -40, max: 40 })), {
    minLength: 2,
    maxLength: 6,
  });
  fc.assert(
    fc.property(
      ground,
      fc.constantFrom(...mountings),
      fc.constantFrom(1.5, 3.5, 5.5),
      (points, mounting, width) => {
        const levels = [...new Map(points)];
        const spec = bank(levels, mounting, width);
        const stiff = { stock: sourced(board('st', inches(2.5), mm(19))), origin: originOf('stiffener') };
        const faces =
          mounting.kind === 'face' && mounting.face === 'back' ? (['front'] as const) : (['back'] as const);
        const run = layOutRun({ ...spec, stiffeners: { ...stiff, faces } });
        fc.pre(run.sound && run.edges.size > 0);
        expect(findOverlaps(run)).toEqual([]);
        expect(findUnsupported(run)).toEqual([]);
        for (const piece of run.pieces) {
          if (piece.role === 'post') continue;
          for (const [x, , z] of piece.solid.vertices)
            expect(z - levelAt(run.groundLine, x)).toBeGreaterThanOrEqual(inches(2) - 2);
        }
        for (const bay of run.bays) {
          const edge = run.edges.get(bay.number);
          if (!edge?.bottom || !edge.top) continue;
          for (let i = 0; i <= 60; i++) {
            const x = bay.from + ((bay.to - bay.from) * i) / 60;
            expect(heightAt(edge.bottom, x) - levelAt(run.groundLine, x)).toBeGreaterThanOrEqual(
              inches(2) - 2,
            );
          }
          // Lines of neighbors meet at the middle of the post between them.
          const next = run.edges.get(bay.number + 1);
          if (!next?.bottom) continue;
          const middle = (bay.to + (run.bays[bay.number]?.from ?? 0)) / 2;
          expect(heightAt(edge.bottom, middle)).toBeCloseTo(heightAt(next.bottom, middle), 3);
        }
        // Every slat of a width in a bay is cut alike, and its edges are no longer than from line to line.
        for (const { cut } of run.pieces.filter(({ role }) => role === 'slat'))
          expect((cut.longPoint + cut.shortPoint) / 2).toBeLessThanOrEqual(inches(59.5));
      },
    ),
    { numRuns: 40 },
  );
});
