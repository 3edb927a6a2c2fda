import fc from 'fast-check';
import Module from 'manifold-3d';
import { ShapeUtils, Vector2 } from 'three';
import { expect, it } from 'vitest';
import {
  convexParts,
  findOverlaps,
  findUnsupported,
  layOutRun,
  type Piece,
  type RunLayout,
  type Solid,
  wallAt,
  wallBetween,
} from '../../language/layout/index.ts';
import type { RunSpec, WallSpec } from '../../language/model/index.ts';
import { inches, toInches } from '../../language/units/index.ts';
import { openJob } from '../jobs/index.ts';
import { clapped } from './index.ts';

const cad = await Module();
cad.setup();

type Corner = [number, number, number];

/** A solid by a solid modeler: the union of its convex parts, in inches. */
const modeled = (solid: Solid) =>
  cad.Manifold.union(
    convexParts(solid).map(({ vertices }) =>
      cad.Manifold.hull(vertices.map(([x, y, z]): Corner => [toInches(x), toInches(y), toInches(z)])),
    ),
  );

const fillersOf = ({ pieces }: RunLayout): readonly Piece[] => pieces.filter(({ role }) => role === 'filler');

const WAVY = `begins at wall, 1-1/2" off, at 0' toward 0", at 2' toward 1/4", at 3' away 1/8"`;

// By hand, in inches. Slats from 2-1/2 to 50 up. From 0 to 24 up the wall comes 1/4 toward the run: at 2-1/2 it is
// 1/4 * 2.5 / 24 = 0.026042 toward, so the filler is 1.5 - 0.026042 = 1.473958 wide at its foot; at 24 (21-1/2 from
// its foot) 1.5 - 0.25 = 1.25; at 36 (33-1/2) 1.5 + 0.125 = 1.625; above that the wall is plumb: 1.625 at 47-1/2.
it('tapers a filler to a wall as worked out by hand', async () => {
  const run = (await openJob(clapped(`${WAVY}; scribed filler slat`))).run();
  const [filler] = fillersOf(run);
  expect(filler?.cut.scribe?.map(({ at, width }) => [toInches(at), toInches(width)])).toEqual([
    [0, expect.closeTo(1.473958, 5)],
    [21.5, 1.25],
    [33.5, 1.625],
    [47.5, 1.625],
  ]);
  expect(filler?.cut).toMatchObject({ stock: 'slat', ripped: true, thickness: inches(0.75) });
  expect(toInches(filler?.cut.width ?? 0)).toBe(1.625);
  expect(toInches(filler?.cut.longPoint ?? 0)).toBe(47.5);
  // (1.473958 + 1.25) / 2 * 21.5 + (1.25 + 1.625) / 2 * 12 + 1.625 * 14 = 29.28255 + 17.25 + 22.75 = 69.28255.
  const ring = [[0, 2.5] as const, ...edgeOf(filler as Piece), [0, 50] as const];
  expect(Math.abs(ShapeUtils.area(ring.map(([x, z]) => new Vector2(x, z))))).toBeCloseTo(69.28255, 4);
  expect(modeled((filler as Piece).solid).volume()).toBeCloseTo(69.28255 * 0.75, 4);
  expect(findOverlaps(run)).toEqual([]);
  expect(findUnsupported(run)).toEqual([]);
});

// 3/4 in 72: at 2-1/2 up 0.026042, at 50 up 0.520833. (2 - 0.026042 + 2 - 0.520833) / 2 * 47.5 = 82.01172.
it('makes one convex board where a wall only leans', async () => {
  const text = clapped(`ends at wall, 2" off, leans toward 3/4" in 6'; scribed filler slat`);
  const [filler] = fillersOf((await openJob(text)).run());
  expect(filler?.solid.parts).toBeUndefined();
  expect(filler?.label).toBe('P3-FR');
  expect(filler?.cut.scribe?.map(({ width }) => toInches(width))).toEqual([
    expect.closeTo(1.973958, 5),
    expect.closeTo(1.479167, 5),
  ]);
  expect(modeled((filler as Piece).solid).volume()).toBeCloseTo(82.01172 * 0.75, 3);
});

it('takes the gaps at both walls from a length between them, as planned even where posts were measured', async () => {
  const walls = `begins at wall, 1-1/2" off; ends at wall, 2" off`;
  const text = clapped(walls, ['length 118-1/2"', 'length 122" between walls']);
  const run = (await openJob(text)).run();
  expect(toInches(run.spec.length.value)).toBe(118.5);
  expect(run.walls.map(({ plumb }) => toInches(plumb))).toEqual([-1.5, 120.5]);
  // A bay 1/4 narrower than its 54 moves the last post that far from the wall, which stays where it is.
  const measured = (await openJob(`${text}measured bank { bay 2 clear 53-3/4" }\n`)).run();
  expect(toInches(measured.spec.length.value)).toBe(118.25);
  expect(measured.walls.map(({ plumb }) => toInches(plumb))).toEqual([-1.5, 120.5]);
});

it('makes no filler where the wall is at the post or in it', async () => {
  const text = clapped(`begins at wall, 1/4" off, leans toward 1/2" in 4'; scribed filler slat`);
  expect(fillersOf((await openJob(text)).run())).toEqual([]);
});

// Ground rising 12 in 118-1/2 along upright slats that are racked: beside the first post, whose inner face is at 3-1/2,
// the ground is at 12 * 3.5 / 118.5 = 0.354; the filler there goes from 2-1/2 to 50 above that, in whole ticks.
it('is as high as what stands beside its post where a run is racked', async () => {
  const text = clapped(
    `begins at wall, 2" off; scribed filler slat; rails bar; flip upright; slope racked\n  ground at 0" down 12", at 118-1/2" up 0"`,
  );
  const run = (await openJob(text)).run();
  const [filler] = fillersOf(run);
  const z = filler?.solid.vertices.map((vertex) => toInches(vertex[2])) ?? [];
  const ground = -12 + (12 * 3.5) / 118.5;
  expect(Math.min(...z)).toBeCloseTo(ground + 2.5, 1);
  expect(Math.max(...z)).toBeCloseTo(ground + 50, 1);
  expect(findOverlaps(run)).toEqual([]);
  expect(findUnsupported(run)).toEqual([]);
});

it('lets a filler touch its wall everywhere, and reach into neither wall nor post', async () => {
  const spec = (await openJob(clapped(`${WAVY}; ends at wall, 2" off; scribed filler slat`))).run().spec;
  const origin = spec.origin;
  const off = fc.integer({ min: inches(0.4), max: inches(3) }).map((value) => ({ value, origin }));
  const points = fc
    .uniqueArray(fc.integer({ min: 0, max: inches(60) }), { minLength: 1, maxLength: 17 })
    .chain((heights) =>
      fc.tuple(
        ...heights
          .toSorted((a, b) => a - b)
          .map((height) =>
            fc.integer({ min: inches(-1), max: inches(0.35) }).map((toward) => ({ height, toward, origin })),
          ),
      ),
    )
    .map((all) => ({ kind: 'points' as const, points: all, origin }));
  const leaning = fc
    .integer({ min: inches(-1), max: inches(0.4) })
    .map((by) => ({ kind: 'leans' as const, by, over: inches(60), origin }));
  const wall: fc.Arbitrary<WallSpec> = fc
    .tuple(off, fc.oneof(points, leaning))
    .map(([each, profile]) => ({ origin, off: each, profile }));
  const lean = fc.double({ min: -1 / 300, max: 1 / 300, noNaN: true });
  let made = 0;
  fc.assert(
    fc.property(wall, wall, fc.option(fc.tuple(lean, lean)), (start, end, leans) => {
      const walls = { start, end };
      const run = layOutRun(leans ? leaningPosts({ ...spec, walls }, leans) : { ...spec, walls });
      expect(run.sound).toBe(true);
      for (const filler of fillersOf(run)) {
        made++;
        holds(run, filler);
      }
      expect(findOverlaps(run)).toEqual([]);
      expect(findUnsupported(run)).toEqual([]);
    }),
    { numRuns: 80 },
  );
  expect(made).toBeGreaterThan(80);
});

function leaningPosts(spec: RunSpec, [first, last]: readonly [number, number]): RunSpec {
  const { origin } = spec;
  const posts = [
    { number: 1, slope: first, origin },
    { number: 3, slope: last, origin },
  ];
  return { ...spec, measured: { origin, bays: [], posts, cuts: [] } };
}

/** The edge of a filler at the wall, from below, in inches. */
function edgeOf({ solid }: Piece): readonly (readonly [x: number, z: number])[] {
  return Array.from({ length: solid.vertices.length / 4 }, (_, i) => {
    const [x = 0, , z = 0] = solid.vertices[4 * i + 1] ?? [];
    return [toInches(x), toInches(z)] as const;
  });
}

function holds(run: RunLayout, filler: Piece): void {
  const face = run.walls.find(({ side }) => filler.key.endsWith(side));
  const post = run.pieces.find(({ key }) => filler.supports.includes(key));
  if (!face || !post) throw new Error('a filler stands between a post and a wall');
  const edge = edgeOf(filler);
  for (const [i, [x, z]] of edge.entries()) {
    const [nextX, nextZ] = edge[i + 1] ?? [x, z];
    for (const share of [0, 0.25, 0.5, 0.75]) {
      const at = [x + share * (nextX - x), z + share * (nextZ - z)] as const;
      // To a tick or two, which is 1/100 000 inch.
      expect(Math.abs(at[0] - toInches(wallAt(face, at[1] * inches(1))))).toBeLessThan(1e-5);
    }
  }
  const solid = modeled(filler.solid);
  const beside = [modeled(post.solid), wallBlock(run, face)];
  for (const other of beside) expect(cad.Manifold.intersection(solid, other).volume()).toBeLessThan(1e-3);
}

/** The wall as deep as a foot past its face, over all of the run's height and more. */
function wallBlock(run: RunLayout, face: RunLayout['walls'][number]) {
  const line = wallBetween(face, run.bottom - inches(6), run.top + inches(6)).map(
    ([x, z]): [number, number] => [toInches(x), toInches(z)],
  );
  const deep = toInches(face.plumb) - face.inward * 24;
  const ring: [number, number][] = [[deep, line[0]?.[1] ?? 0], ...line, [deep, line.at(-1)?.[1] ?? 0]];
  const flat = new cad.CrossSection([face.inward === 1 ? ring : ring.toReversed()], 'EvenOdd');
  // Extruded up, then laid so that what was up is through the run.
  return flat.extrude(20).rotate([90, 0, 0]).translate([0, 10, 0]);
}
