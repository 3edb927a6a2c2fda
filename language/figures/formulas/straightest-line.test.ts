import { createRequire } from 'node:module';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Point } from '../convex-hull.ts';
import { straightestLine } from './straightest-line.ts';

/** HiGHS, a general-purpose solver of linear programs (MIT). */
interface Highs {
  solve(program: string, options?: object): { readonly Status: string; readonly ObjectiveValue: number };
}
const highs: Highs = await createRequire(import.meta.url)('highs')();

const farthest = (points: readonly Point[], start: number, slope: number) =>
  Math.max(...points.map(([x, y]) => Math.abs(y - start - slope * x)));

// By hand: one post of three half off the line of the others; a quarter is the least there is.
it('halves what one post of three is off', () => {
  expect(
    straightestLine([
      [0, 0],
      [60, 0.5],
      [120, 0],
    ]),
  ).toEqual({ start: 0.25, slope: 0, most: 0.25 });
});

it('goes through two points, and through any number on a line', () => {
  expect(
    straightestLine([
      [0, 1],
      [10, 3],
    ]),
  ).toMatchObject({ start: 1, slope: 0.2, most: 0 });
  const found = straightestLine([
    [0, 1],
    [5, 2],
    [10, 3],
    [20, 5],
  ]);
  expect(found.most).toBeCloseTo(0, 12);
  expect(found.slope).toBeCloseTo(0.2, 12);
});

it('has a line for one point, for none, and for points one above the other', () => {
  expect(straightestLine([[4, 2]])).toEqual({ start: 2, slope: 0, most: 0 });
  expect(straightestLine([])).toEqual({ start: 0, slope: 0, most: 0 });
  expect(
    straightestLine([
      [4, 2],
      [4, 6],
    ]),
  ).toEqual({ start: 4, slope: 0, most: 2 });
});

const posts = fc
  .uniqueArray(fc.tuple(fc.integer({ min: 0, max: 400 }), fc.integer({ min: -32, max: 32 })), {
    minLength: 3,
    maxLength: 9,
    selector: ([x]) => x,
  })
  .map((points): Point[] => points.map(([x, y]) => [x, y / 16]));

// The best line is as far off three of the points, above, below and above in turn: every three are tried.
it('is as good as the best line through the middles of any three points', () => {
  fc.assert(
    fc.property(posts, (points) => {
      const { start, slope, most } = straightestLine(points);
      expect(farthest(points, start, slope)).toBeCloseTo(most, 9);
      let least = Number.POSITIVE_INFINITY;
      for (const a of points)
        for (const b of points)
          for (const c of points) {
            if (!(a[0] < b[0])) continue;
            const steep = (b[1] - a[1]) / (b[0] - a[0]);
            const across = c[1] - a[1] - steep * (c[0] - a[0]);
            least = Math.min(least, farthest(points, a[1] - steep * a[0] + across / 2, steep));
          }
      expect(most).toBeCloseTo(least, 9);
    }),
    { numRuns: 200 },
  );
});

// Least e with -e <= y - start - slope x <= e at every point, as a linear program.
it('agrees with a solver of linear programs', () => {
  fc.assert(
    fc.property(posts, (points) => {
      const rows = points.flatMap(([x, y], i) => [
        ` a${i}: start + ${x} slope + e >= ${y}`,
        ` b${i}: start + ${x} slope - e <= ${y}`,
      ]);
      const program = `Minimize\n obj: e\nSubject To\n${rows.join('\n')}\nBounds\n start free\n slope free\n e >= 0\nEnd\n`;
      const solved = highs.solve(program, {});
      expect(solved.Status).toBe('Optimal');
      expect(straightestLine(points).most).toBeCloseTo(solved.ObjectiveValue, 6);
    }),
    { numRuns: 60 },
  );
});
