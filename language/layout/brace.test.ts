import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inches } from '../units/index.ts';
import { type BracePlace, makeBrace } from './brace.ts';
import { dot, minus } from './convex.ts';
import type { About } from './make-piece.ts';
import type { Piece, Vec3 } from './piece.ts';

const about: About = {
  key: 'g/brace',
  label: 'G1-BR',
  role: 'brace',
  run: 'run',
  side: 'middle',
  supports: [],
  from: [],
};

const square: BracePlace = {
  inside: { x: [0, inches(40)], z: [0, inches(40)] },
  y: [0, inches(1.5)],
  width: inches(8),
  hinges: 'left',
  step: 1,
};

const brace = (place: Partial<BracePlace> = {}): Piece => makeBrace(about, 'b', { ...square, ...place });

const near = (vertex: Vec3 | undefined, x: number, z: number): void => {
  expect(vertex?.[0]).toBeCloseTo(x, 0);
  expect(vertex?.[2]).toBeCloseTo(z, 0);
};

// The 3-4-5 triangle: the end takes 10 in of the rail, so a run of 40 - 10 = 30 with a rise of 40 makes an edge
// of 50, and 8 in of width across it is 8 x 50 / 40 = 10 in along the rail, as it should be. Over its width the
// end runs on by 8 x 3/4 = 6 in.
it('solves the brace whose edges are a 3-4-5 triangle', () => {
  const { cut, solid } = brace();
  expect(cut.longPoint).toBe(inches(56));
  expect(cut.shortPoint).toBe(inches(44));
  expect(cut.ends[0].miter).toBeCloseTo(36.8699, 4);
  expect(cut.ends[1].miter).toBeCloseTo(36.8699, 4);
  near(solid.vertices[0], 0, 0);
  near(solid.vertices[1], inches(10), 0);
  near(solid.vertices[4], inches(30), inches(40));
  near(solid.vertices[5], inches(40), inches(40));
});

it('goes from the low corner at the hinges, whichever side they are on', () => {
  const { cut, solid } = brace({ hinges: 'right' });
  expect(cut.longPoint).toBe(inches(56));
  near(solid.vertices[0], inches(40), 0);
  near(solid.vertices[5], 0, inches(40));
});

it('stands on the stiles in a leaf wider than high', () => {
  const { cut, solid } = brace({ inside: { x: [0, inches(60)], z: [0, inches(30)] }, width: inches(5) });
  expect(cut.ends[0].miter).toBeGreaterThan(0);
  expect(cut.ends[0].miter).toBeLessThanOrEqual(45);
  near(solid.vertices[0], 0, 0);
  expect(solid.vertices[1]?.[0]).toBeCloseTo(0, 0);
  near(solid.vertices[5], inches(60), inches(30));
});

it('fits the inside corners of any leaf, at its full width', () => {
  const size = fc.integer({ min: inches(10), max: inches(90) });
  fc.assert(
    fc.property(
      size,
      size,
      fc.double({ min: 0.01, max: 0.9, noNaN: true }),
      fc.boolean(),
      (w, h, part, left) => {
        const width = Math.max(1, Math.floor(Math.min(w, h) * part));
        const inside = { x: [0, w], z: [0, h] } as const;
        const { cut, solid } = brace({ inside, width, hinges: left ? 'left' : 'right' });
        const corners = solid.vertices;
        for (const [x, , z] of corners) {
          expect(x).toBeGreaterThan(-1);
          expect(x).toBeLessThan(w + 1);
          expect(z).toBeGreaterThan(-1);
          expect(z).toBeLessThan(h + 1);
        }
        near(corners[0], left ? 0 : w, 0);
        near(corners[5], left ? w : 0, h);
        // Distance of the two long edges: the brace's width.
        const [a, b, , , e] = corners as [Vec3, Vec3, Vec3, Vec3, Vec3];
        const grain = minus(e, a);
        const length = Math.hypot(...grain);
        const aside = minus(b, a);
        expect(Math.sqrt(dot(aside, aside) - (dot(aside, grain) / length) ** 2)).toBeCloseTo(width, 0);
        expect(cut.longPoint).toBeLessThanOrEqual(Math.hypot(w, h));
        expect(Math.abs(cut.ends[0].miter)).toBeLessThanOrEqual(45);
      },
    ),
  );
});

it('is cut to a mark of the tape, never longer than its place', () => {
  const step = inches(1 / 16);
  const place = { inside: { x: [0, inches(33)], z: [0, inches(61)] } as const, width: inches(3.5) };
  const exact = brace(place).cut.longPoint;
  const { longPoint } = brace({ ...place, step }).cut;
  expect(longPoint % step).toBe(0);
  expect(exact - longPoint).toBeGreaterThanOrEqual(0);
  expect(exact - longPoint).toBeLessThan(step);
});
