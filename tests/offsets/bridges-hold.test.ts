import fc from 'fast-check';
import Module from 'manifold-3d';
import { expect, it } from 'vitest';
import {
  findOverlaps,
  findUnsupported,
  type Piece,
  type RunLayout,
  toPlan,
} from '../../language/layout/index.ts';
import { demandOf } from '../../language/takeoff/demand.ts';
import { IMPERIAL, inches, spellLength, toInches } from '../../language/units/index.ts';
import { openOffset } from './made-offset.ts';

const cad = await Module();
cad.setup();

type Opened = Awaited<ReturnType<typeof openOffset>>;

/** A piece as a solid modeler has it, where it stands on the plan; inches. */
function standing({ layout }: Opened, run: RunLayout, { solid }: Piece) {
  const frame = layout.places.get(run.key);
  if (!frame) throw new Error(`${run.key} has no place`);
  return cad.Manifold.hull(
    solid.vertices.map(([x, y, z]) => [...toPlan(frame, x, y), z].map(toInches) as [number, number, number]),
  );
}

const KINDS = ['return', 'filler wide', 'filler big', 'panel'] as const;

const POSTS = fc.constantFrom('p4' as const, 'p5' as const);
const FACES = fc.constantFrom('between posts', 'on front face', 'on back face', 'on both faces');

const jobs = fc.record({
  kind: fc.constantFrom(...KINDS),
  way: fc.constantFrom('back', 'forward'),
  sixteenths: fc.integer({ min: 16, max: 16 * 16 }),
  on: fc.option(fc.integer({ min: 4, max: 6 * 12 }), { nil: undefined }),
  posts: fc.tuple(POSTS, POSTS),
  slats: fc.tuple(FACES, FACES),
  slat: fc.constantFrom('wide' as const, 'thick' as const),
  down: fc.integer({ min: 0, max: 12 }),
});

it('puts no two pieces in one place, and everything on what holds it', async () => {
  let built = 0;
  await fc.assert(
    fc.asyncProperty(jobs, async ({ kind, way, sixteenths, on, posts, slats, slat, down }) => {
      const space = kind === 'panel' ? `${on ?? 48}" on, ` : '';
      const step = spellLength(inches(sixteenths / 16), IMPERIAL);
      const place = `after quay, ${space}steps ${way} ${step}, closed by ${kind}`;
      const more = `ground down ${down}"`;
      const open = await openOffset(
        { place, post: posts[1], slats: `slats ${slats[1]}`, more, slat },
        { post: posts[0], slats: `slats ${slats[0]}` },
      );
      const [quay, mole] = [open.run('quay'), open.run('mole')];
      const impossible = open.codes.includes('bridge-impossible');
      expect(open.bridge.length > 0).toBe(!impossible);
      expect(findOverlaps(mole)).toEqual([]);
      expect(findUnsupported(mole)).toEqual([]);
      for (const vertex of open.bridge.flatMap(({ solid }) => solid.vertices))
        for (const at of vertex) expect(Number.isFinite(at)).toBe(true);
      if (impossible) return;
      built++;
      const near = (pieces: readonly Piece[]) =>
        pieces.filter((piece) => piece.role !== 'slat' || (piece.course ?? 0) < 3);
      const bridge = near(open.bridge).map((piece) => standing(open, mole, piece));
      const others = [
        ...near(quay.pieces).map((piece) => standing(open, quay, piece)),
        ...near(mole.pieces)
          .filter((piece) => !open.bridge.includes(piece))
          .map((piece) => standing(open, mole, piece)),
      ];
      for (const one of bridge)
        for (const other of others) expect(one.intersect(other).volume()).toBeLessThan(1e-3);
    }),
    { numRuns: 40, seed: 20_260, endOnFailure: true },
  );
  expect(built).toBeGreaterThan(15);
}, 240_000);

it('lets no straight look through where the offset was open', async () => {
  const step = 'steps back 6"';
  // Level, at the middle of the second course, through the middle of the opening and at 45 degrees to the runs.
  const blocked = async (place: string) => {
    const open = await openOffset({ place });
    const mole = open.run('mole');
    const quay = open.run('quay');
    const course = mole.courses.get(1)?.[1];
    const z = toInches(((course?.start ?? 0) + (course?.end ?? 0)) / 2);
    const ends = [quay, mole].map((run) => {
      const post = run.posts.at(run === quay ? -1 : 0);
      const piece = run.pieces.find(({ key }) => key === post?.key) as Piece;
      return standing(open, run, piece).boundingBox();
    });
    const [a, b] = ends as [(typeof ends)[0], (typeof ends)[0]];
    // Between the posts' near corners on the plan.
    const x = (a.max[0] + b.min[0]) / 2;
    const y = (a.max[1] + b.min[1]) / 2;
    const ray = cad.Manifold.cube([60, 0.02, 0.02], true).rotate([0, 0, -45]).translate([x, y, z]);
    const all = [quay, mole].flatMap((run) => run.pieces.map((piece) => standing(open, run, piece)));
    return all.some((solid) => solid.intersect(ray).volume() > 1e-9);
  };
  expect(await blocked(`after quay, ${step}`)).toBe(false);
  expect(await blocked(`after quay, ${step}, closed by return`)).toBe(true);
  expect(await blocked(`after quay, ${step}, closed by filler wide`)).toBe(true);
  expect(await blocked(`after quay, 4' on, ${step}, closed by panel`)).toBe(true);
}, 60_000);

it('counts what closes an offset among what is bought', async () => {
  const whole = async (place: string, stock: string) => {
    const { layout, job } = await openOffset({ place });
    return demandOf(layout, job).find((one) => one.stock.name === stock)?.count;
  };
  // Two bays of ten slats in each of the two runs; a return and a panel are ten more.
  expect(await whole('after quay, steps back 6"', 'wide')).toBe(40);
  expect(await whole('after quay, steps back 6", closed by return', 'wide')).toBe(50);
  expect(await whole(`after quay, 4' on, steps back 6", closed by panel`, 'wide')).toBe(50);
  expect(await whole('after quay, steps back 6", closed by filler big', 'big')).toBe(1);
  // Four cleats a bay.
  expect(await whole('after quay, steps back 18", closed by return', 'stop')).toBe(20);
});

it('is the same run laid out again, and another one for another step', async () => {
  const one = (await openOffset({ place: 'after quay, steps back 18", closed by return' })).run('mole');
  const other = (await openOffset({ place: 'after quay, steps back 19", closed by return' })).run('mole');
  const longest = (run: RunLayout) =>
    Math.max(
      ...run.pieces.flatMap(({ key, cut }) => (key.startsWith('mole/return/c0') ? [cut.longPoint] : [])),
    );
  expect(longest(other) - longest(one)).toBe(inches(1));
  expect(other.hash).not.toBe(one.hash);
});
