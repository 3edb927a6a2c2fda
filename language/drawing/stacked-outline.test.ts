import fc from 'fast-check';
import Module from 'manifold-3d';
import { ShapeUtils, Vector2 } from 'three';
import { expect, it } from 'vitest';
import { joinedOutline } from './joined-outline.ts';
import { corners, hull, type Projection, project } from './project.ts';
import { stackedOutline } from './stacked-outline.ts';

const cad = await Module();
cad.setup();

type Ring = readonly (readonly [x: number, z: number])[];

const pairs = (outline: readonly number[]): [number, number][] =>
  Array.from({ length: outline.length / 2 }, (_, i) => [outline[2 * i] ?? 0, outline[2 * i + 1] ?? 0]);
const areaOf = (outline: readonly number[]): number =>
  Math.abs(ShapeUtils.area(pairs(outline).map(([x, y]) => new Vector2(x, y))));
const unionOf = (polygons: readonly (readonly number[])[]): number =>
  cad.CrossSection.union(polygons.map((one) => cad.CrossSection.hull([pairs(one)]))).area();

/** A board 20 deep from x 0 to a wavy edge, in parts one over the other. */
const partsOf = (edge: Ring) =>
  edge.slice(1).map(([x1, z1], i) => {
    const [x0, z0] = edge[i] ?? [0, 0];
    const ring = (x: number, z: number) => [
      [0, 0, z] as const,
      [x, 0, z] as const,
      [x, 20, z] as const,
      [0, 20, z] as const,
    ];
    return { vertices: [...ring(x0, z0), ...ring(x1, z1)] };
  });

const wavy: fc.Arbitrary<Ring> = fc
  .array(fc.tuple(fc.integer({ min: 10, max: 80 }), fc.integer({ min: 20, max: 400 })), {
    minLength: 2,
    maxLength: 17,
  })
  .map((steps) => {
    let z = 0;
    return steps.map(([x, rise]) => {
      z += rise;
      return [x, z] as const;
    });
  });

it('goes round all parts of a wavy board, seen from the front and from any eye', () => {
  const spot = fc.tuple(
    fc.integer({ min: -900, max: 900 }),
    fc.integer({ min: 200, max: 3000 }),
    fc.integer({ min: 0, max: 2000 }),
  );
  fc.assert(
    fc.property(wavy, spot, (edge, [ex, ey, ez]) => {
      const front = partsOf(edge).map(({ vertices }) => hull(vertices.flatMap(([x, , z]) => [x, -z])));
      expect(areaOf(stackedOutline(front))).toBeCloseTo(unionOf(front), 4);
      // On the plane of the board's far face.
      const seen = partsOf(edge).map(({ vertices }) =>
        hull(
          vertices.flatMap(([x, y, z]) => {
            const t = (ey + 20) / (ey + y);
            return [ex + t * (x - ex), -(ez + t * (z - ez))];
          }),
        ),
      );
      expect(areaOf(stackedOutline(seen)) / unionOf(seen)).toBeCloseTo(1, 6);
    }),
    { numRuns: 300 },
  );
});

it('joins parts side by side to the area they have together, and says when they overlap', () => {
  const plain: Projection = (x, y, z, to) => {
    to.x = x;
    to.y = -z;
    to.away = y;
  };
  fc.assert(
    fc.property(wavy, (edge) => {
      const parts = partsOf(edge);
      const outline = joinedOutline(parts.map((part) => corners(project(part, plain))));
      if (!outline) throw new Error('parts that share an edge have one outline');
      // Half the sum of both widths by the height, of each part.
      const area = edge.slice(1).reduce((sum, [x1, z1], i) => {
        const [x0, z0] = edge[i] ?? [0, 0];
        return sum + ((x0 + x1) / 2) * (z1 - z0);
      }, 0);
      expect(Math.abs(areaOf(outline) - area)).toBeLessThan(0.01 * edge.length * 100);
      expect(unionOf(parts.map(({ vertices }) => vertices.flatMap(([x, , z]) => [x, -z])))).toBeCloseTo(
        area,
        3,
      );
    }),
    { numRuns: 100 },
  );
  const square = (x0: number) => [x0, 0, x0 + 2, 0, x0 + 2, 2, x0, 2];
  expect(joinedOutline([square(0), square(1)])).toBeUndefined();
  expect(joinedOutline([square(0), square(2)])).toEqual([0, 0, 4, 0, 4, 2, 0, 2]);
});
