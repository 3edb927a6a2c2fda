import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  arbitraryRunSpec,
  bicycleCourt,
  compostBay,
  leafBetween,
  teaTerrace,
} from '../../tests/specs/index.ts';
import { mm } from '../units/index.ts';
import {
  contactArea,
  findOverlaps,
  findUnsupported,
  layOutRun,
  overlap,
  type Piece,
  type RunLayout,
  type Solid,
  type Vec3,
} from './index.ts';
import { makePiece } from './make-piece.ts';

/** A cube of this size, turned about the axis through the screen. */
function cube(size: number, at: Vec3, degrees = 0): Solid {
  const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  const about = {
    key: '',
    label: '',
    role: 'slat',
    run: '',
    side: 'middle',
    supports: [],
    from: [],
  } as const;
  return makePiece(about, {
    stock: '',
    ripped: false,
    origin: at,
    grain: [c, 0, s],
    across: [-s, 0, c],
    through: [0, 1, 0],
    width: size,
    thickness: size,
    ends: [{ at: 0 }, { at: size }],
  }).solid;
}

it('knows blocks that overlap from blocks that touch', () => {
  expect(overlap(cube(1000, [0, 0, 0]), cube(1000, [990, 0, 0]))).toBe(true);
  expect(overlap(cube(1000, [0, 0, 0]), cube(1000, [1000, 0, 0]))).toBe(false);
});

// A cube on its edge reaches 1000 x sqrt(2) / 2 = 707 to either side of its middle. Bounds overlap from 0 on;
// the cubes themselves only when the corner passes the other's face.
it('knows turned bodies from their bounds', () => {
  expect(overlap(cube(1000, [-708, 0, 0], 45), cube(1000, [0, 0, 200]))).toBe(false);
  expect(overlap(cube(1000, [-700, 0, 0], 45), cube(1000, [0, 0, 200]))).toBe(true);
  // Diagonal neighbors: bounds overlap, faces at 45 degrees keep them apart.
  expect(overlap(cube(1000, [0, 0, 0], 45), cube(1000, [750, 0, 750], 45))).toBe(false);
  expect(overlap(cube(1000, [0, 0, 0], 45), cube(1000, [600, 0, 600], 45))).toBe(true);
});

it('measures the area of contact', () => {
  const base = cube(1000, [0, 0, 0]);
  expect(contactArea(base, cube(1000, [1000, 0, 0]), 0)).toBeCloseTo(1e6, 3);
  expect(contactArea(base, cube(1000, [1000, 250, 500]), 0)).toBeCloseTo(750 * 500, 3);
  expect(contactArea(base, cube(1000, [1000, 0, 1000]), 0)).toBeCloseTo(0, 3);
  expect(contactArea(base, cube(1000, [1010, 0, 0]), 9)).toBe(0);
  expect(contactArea(base, cube(1000, [1010, 0, 0]), 10)).toBeCloseTo(1e6, 3);
});

const made = { bicycleCourt, compostBay, leafBetween, teaTerrace };

it.each(Object.entries(made))('has nothing in one place twice and all of it held: %s', (_, spec) => {
  const layout = layOutRun(spec());
  expect(layout.problems).toEqual([]);
  expect(findOverlaps(layout)).toEqual([]);
  expect(findUnsupported(layout)).toEqual([]);
});

it('joins without any gap what is on the marks of the tape', () => {
  const { pieces } = layOutRun(compostBay());
  const byKey = new Map(pieces.map((piece) => [piece.key, piece]));
  for (const piece of pieces) {
    for (const key of piece.supports) {
      expect(contactArea(piece.solid, (byKey.get(key) as Piece).solid, 0)).toBeGreaterThan(0);
    }
  }
});

it('holds for any run and leaf that can be built', () => {
  let built = 0;
  let leaves = 0;
  fc.assert(
    fc.property(arbitraryRunSpec, (spec) => {
      const layout = layOutRun(spec);
      if (!layout.sound) {
        expect(layout.problems.length).toBeGreaterThan(0);
        return;
      }
      built++;
      leaves += layout.leaves.length;
      expect(findOverlaps(layout)).toEqual([]);
      expect(findUnsupported(layout)).toEqual([]);
      expect(ungrounded(layout)).toEqual([]);
    }),
    { numRuns: 250 },
  );
  // The specs are worth drawing: most can be built, and many have leaves.
  expect(built).toBeGreaterThan(90);
  expect(leaves).toBeGreaterThan(30);
});

/** Pieces from which no way of supports leads down to a post. */
function ungrounded({ pieces }: RunLayout): readonly string[] {
  const grounded = new Set(pieces.filter(({ role }) => role === 'post').map(({ key }) => key));
  for (let grew = true; grew; ) {
    const before = grounded.size;
    for (const { key, supports } of pieces)
      if (supports.some((each) => grounded.has(each))) grounded.add(key);
    grew = grounded.size > before;
  }
  return pieces.flatMap(({ key }) => (grounded.has(key) ? [] : [key]));
}

it('finds a piece that is moved into another, or away from what holds it', () => {
  const layout = layOutRun(bicycleCourt());
  const into: Record<string, Vec3> = {
    'court/b1/c03': [0, 0, mm(200)],
    'court/b1/cleat-left-front': [0, mm(5), 0],
    'court/cycles/rail-top': [mm(20), 0, 0],
    'court/cycles/brace': [0, 0, mm(2)],
  };
  for (const [key, by] of Object.entries(into)) {
    expect.soft(findOverlaps(moved(layout, key, by)).length, key).toBeGreaterThan(0);
    const off = findUnsupported(moved(layout, key, [0, mm(-300), 0]));
    expect
      .soft(
        off.map(({ piece }) => piece),
        key,
      )
      .toContain(key);
  }
});

function moved(layout: RunLayout, key: string, by: Vec3): RunLayout {
  const pieces = layout.pieces.map((piece) => {
    if (piece.key !== key) return piece;
    const vertices = piece.solid.vertices.map(([x, y, z]): Vec3 => [x + by[0], y + by[1], z + by[2]]);
    return { ...piece, solid: { vertices } };
  });
  return { ...layout, pieces };
}
