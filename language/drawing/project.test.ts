import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Vec3 } from '../layout/index.ts';
import { mm } from '../units/index.ts';
import { splitAt } from './ground-split.ts';
import { FROM_FRONT, hull, type Projection, project } from './project.ts';

/** Area by the surveyor's formula; positive when corners run clockwise on a sheet with y down. */
function area(outline: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < outline.length; i += 2) {
    const [ax, ay] = [outline[i] as number, outline[i + 1] as number];
    const [bx, by] = [
      outline[(i + 2) % outline.length] as number,
      outline[(i + 3) % outline.length] as number,
    ];
    sum += ax * by - bx * ay;
  }
  return sum / 2;
}

function cube(size: number): Vec3[] {
  const at = [0, mm(size)] as const;
  return at.flatMap((x) => at.flatMap((y) => at.map((z): Vec3 => [x, y, z])));
}

it('sees a box from the front as the rectangle of its length and height', () => {
  const seen = project({ vertices: cube(100) }, FROM_FRONT);
  expect(seen).toEqual({ x0: 0, y0: -100, x1: 100, y1: 0, outline: undefined, near: 0, far: 100 });
});

it('sees a cube along its diagonal as a regular hexagon', () => {
  // Isometric projection (ISO 5456-3): every edge is shortened by the square root of 2/3, and the
  // outline is a regular hexagon with that side, of area 3/2 * sqrt(3) * side^2.
  const isometric: Projection = (x, y, z, to) => {
    to.x = (x - y) / Math.SQRT2 / mm(1);
    to.y = (x + y - 2 * z) / Math.sqrt(6) / mm(1);
    to.away = (x + y + z) / Math.sqrt(3) / mm(1);
  };
  const { outline } = project({ vertices: cube(100) }, isometric);
  const side = 100 * Math.sqrt(2 / 3);
  expect(outline).toHaveLength(12);
  expect(area(outline ?? [])).toBeCloseTo(1.5 * Math.sqrt(3) * side ** 2, 6);
});

it('puts a hull around all points, turning one way', () => {
  const points = fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 6, maxLength: 30 });
  fc.assert(
    fc.property(points, (numbers) => {
      const all = numbers.slice(0, 2 * Math.floor(numbers.length / 2));
      const outline = hull(all);
      fc.pre(outline.length >= 6);
      for (let i = 0; i < outline.length; i += 2) {
        const [ax, ay] = [outline[i] as number, outline[i + 1] as number];
        const [bx, by] = [
          outline[(i + 2) % outline.length] as number,
          outline[(i + 3) % outline.length] as number,
        ];
        for (let j = 0; j < all.length; j += 2) {
          const turn = (bx - ax) * ((all[j + 1] as number) - ay) - (by - ay) * ((all[j] as number) - ax);
          expect(turn / Math.hypot(bx - ax, by - ay)).toBeGreaterThan(-0.02);
        }
      }
    }),
  );
});

it('cuts a slanting outline at the ground without losing any of it', () => {
  const brace = {
    x0: 0,
    y0: -50,
    x1: 100,
    y1: 50,
    near: 0,
    far: 1,
    outline: [0, 50, 80, -50, 100, -50, 20, 50],
  };
  const { above, below } = splitAt(brace, 0);
  const whole = Math.abs(area(brace.outline));
  expect(Math.abs(area(above?.outline ?? [])) + Math.abs(area(below?.outline ?? []))).toBeCloseTo(whole, 9);
  expect(above?.y1).toBe(0);
  expect(below?.y0).toBe(0);
});
