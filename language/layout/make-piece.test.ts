import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inches, mm } from '../units/index.ts';
import { dot, minus } from './convex.ts';
import { makeBoard } from './make-board.ts';
import { type About, makePiece, type Shape, turned } from './make-piece.ts';
import type { Piece, Solid, Vec3 } from './piece.ts';

const about: About = {
  key: 'run/p1',
  label: 'P1',
  role: 'slat',
  run: 'run',
  side: 'middle',
  supports: [],
  from: [],
};

const level: Shape = {
  stock: 'board',
  ripped: false,
  origin: [0, 0, 0],
  grain: [1, 0, 0],
  across: [0, 0, -1],
  through: [0, 1, 0],
  width: inches(3.5),
  thickness: inches(0.75),
  ends: [{ at: 0 }, { at: inches(48) }],
};

const edge = ({ solid }: Piece, from: number, to: number): number =>
  Math.hypot(...minus(solid.vertices[to] as Vec3, solid.vertices[from] as Vec3));

it('makes a square-cut board with whole corners and one length', () => {
  const piece = makePiece(about, level);
  expect(piece.cut).toMatchObject({
    longPoint: inches(48),
    shortPoint: inches(48),
    ends: [
      { miter: 0, bevel: 0 },
      { miter: 0, bevel: 0 },
    ],
  });
  expect(piece.solid.vertices[2]).toEqual([0, inches(0.75), -inches(3.5)]);
  expect(piece.solid.vertices[6]).toEqual([inches(48), inches(0.75), -inches(3.5)]);
});

// A frame's side mitered at both ends: inside length = outside length - 2 x width (any carpentry handbook;
// a square corner halves to 45 degrees).
it('cuts a mitered frame side shorter inside by twice its width', () => {
  const piece = makePiece(about, {
    ...level,
    ends: [
      { at: 0, miter: 1 },
      { at: inches(48), miter: -1 },
    ],
  });
  expect(piece.cut.longPoint).toBe(inches(48));
  expect(piece.cut.shortPoint).toBe(inches(48 - 7));
  expect(piece.cut.ends[0].miter).toBeCloseTo(45, 10);
  expect(piece.cut.ends[1].miter).toBeCloseTo(-45, 10);
  expect(edge(piece, 0, 4)).toBeCloseTo(piece.cut.longPoint, 6);
  expect(edge(piece, 1, 5)).toBeCloseTo(piece.cut.shortPoint, 6);
});

it('bevels across the thickness', () => {
  const piece = makePiece(about, { ...level, ends: [{ at: 0, bevel: 0.5 }, { at: inches(48) }] });
  expect(piece.cut.longPoint - piece.cut.shortPoint).toBe(inches(0.75) / 2);
  // atan(1/2) = 26.565 degrees.
  expect(piece.cut.ends[0]).toEqual({ miter: 0, bevel: expect.closeTo(26.565, 3) });
});

// A parallelogram: every line along the grain is as long as any other, yet the board it is cut from must reach
// from tip to tip.
it('takes a parallelogram from tip to tip', () => {
  const lean = Math.tan(Math.PI / 6);
  const piece = makePiece(about, {
    ...level,
    ends: [
      { at: 0, miter: lean },
      { at: inches(48), miter: lean },
    ],
  });
  expect(edge(piece, 0, 4)).toBeCloseTo(inches(48), 6);
  expect(edge(piece, 1, 5)).toBeCloseTo(inches(48), 6);
  expect(piece.cut.longPoint).toBe(Math.floor(inches(48) + inches(3.5) * lean));
  expect(piece.cut.shortPoint).toBe(Math.floor(inches(48) - inches(3.5) * lean));
});

it('agrees with its solid, however it is turned and cut', () => {
  const angle = fc.double({ min: -Math.PI, max: Math.PI, noNaN: true });
  const lean = fc.double({ min: -1, max: 1, noNaN: true });
  fc.assert(
    fc.property(angle, angle, lean, lean, lean, lean, (turn, tilt, m0, b0, m1, b1) => {
      const grain: Vec3 = [Math.cos(turn) * Math.cos(tilt), Math.sin(turn) * Math.cos(tilt), Math.sin(tilt)];
      const through: Vec3 = [-Math.sin(turn), Math.cos(turn), 0];
      const across: Vec3 = [
        -Math.cos(turn) * Math.sin(tilt),
        -Math.sin(turn) * Math.sin(tilt),
        Math.cos(tilt),
      ];
      const ends = [
        { at: 0, miter: m0, bevel: b0 },
        { at: mm(2000), miter: m1, bevel: b1 },
      ] as const;
      const piece = makePiece(about, { ...level, grain, through, across, ends });
      const along = piece.solid.vertices.map((vertex) => dot(vertex, grain));
      const starts = along.slice(0, 4);
      const stops = along.slice(4);
      const long = Math.max(...stops) - Math.min(...starts);
      const short = Math.min(...stops) - Math.max(...starts);
      expect(Math.abs(piece.cut.longPoint - long)).toBeLessThan(1 + 1e-3);
      expect(piece.cut.longPoint).toBeLessThanOrEqual(long + 1e-3);
      expect(Math.abs(piece.cut.shortPoint - short)).toBeLessThan(1 + 1e-3);
      // The section is the stock's, measured square to the grain.
      const first = piece.solid.vertices[0] as Vec3;
      const second = minus(piece.solid.vertices[1] as Vec3, first);
      expect(Math.hypot(...minus(second, scaled(grain, dot(second, grain))))).toBeCloseTo(level.width, 3);
      const fourth = minus(piece.solid.vertices[3] as Vec3, first);
      expect(Math.hypot(...minus(fourth, scaled(grain, dot(fourth, grain))))).toBeCloseTo(level.thickness, 3);
      expect(Math.tan((piece.cut.ends[0].miter * Math.PI) / 180)).toBeCloseTo(m0, 9);
    }),
  );
});

it('lays level boards along the run and upright ones up from the ground, alike in size', () => {
  const block = { x: [3, 103], y: [-4, 6], z: [20, 50] } as const;
  const flat = makeBoard(about, { name: 'b' }, false, block);
  const tall = makeBoard(about, { name: 'b' }, true, block);
  expect(flat.cut).toMatchObject({ longPoint: 100, width: 30, thickness: 10 });
  expect(tall.cut).toMatchObject({ longPoint: 30, width: 100, thickness: 10 });
  const sorted = ({ solid }: Piece) => solid.vertices.map((vertex) => vertex.join()).sort();
  expect(sorted(flat)).toEqual(sorted(tall));
  for (const { solid } of [flat, tall]) {
    const [a, b, , d, e] = solid.vertices as [Vec3, Vec3, Vec3, Vec3, Vec3];
    // Grain, width and thickness make a right hand, so that faces can be told apart by turning.
    const [g, w, t] = [minus(e, a), minus(b, a), minus(d, a)];
    const volume =
      g[0] * (w[1] * t[2] - w[2] * t[1]) -
      g[1] * (w[0] * t[2] - w[2] * t[0]) +
      g[2] * (w[0] * t[1] - w[1] * t[0]);
    expect(volume).toBe(100 * 10 * 30);
  }
});

const scaled = (a: Vec3, by: number): Vec3 => [a[0] * by, a[1] * by, a[2] * by];

// A quarter turn keeps every distance: what is cut out of a piece turns with it.
it.each([1, -1] as const)('turns all of a piece by a quarter, its parts and hollows too: way %i', (way) => {
  const grooves = [
    { side: 'start', from: 0, at: inches(0.25), width: inches(0.25), depth: inches(0.5) },
  ] as const;
  const scribe = [0, 24, 48].map((at) => ({ at: inches(at), width: inches(at === 24 ? 3 : 2) }));
  for (const piece of [makePiece(about, { ...level, grooves }), makePiece(about, { ...level, scribe })]) {
    const at = [inches(7), inches(-3)] as const;
    const { solid, cut } = turned(piece, at, way);
    const all = ({ vertices, parts = [], hollows = [] }: Solid): readonly Vec3[] =>
      [vertices, ...parts.map(all), ...hollows.map(all)].flat();
    expect(all(piece.solid).length).toBeGreaterThan(8);
    expect(all(solid)).toEqual(
      all(piece.solid).map(([x, y, z]) =>
        way === 1 ? [at[0] - y, at[1] + x, z] : [at[0] + y, at[1] - x, z],
      ),
    );
    expect(cut).toBe(piece.cut);
  }
});
