import fc from 'fast-check';
import { expect, it } from 'vitest';
import { hiddenEdges, isHidden } from './occlusion.ts';
import type { Silhouette } from './project.ts';

function box(x0: number, y0: number, x1: number, y1: number, near = 0): Silhouette {
  return { x0, y0, x1, y1, near, far: near + 1 };
}

const anyBox = fc
  .record({
    x: fc.integer({ min: 0, max: 12 }),
    y: fc.integer({ min: 0, max: 12 }),
    w: fc.integer({ min: 1, max: 8 }),
    h: fc.integer({ min: 1, max: 8 }),
  })
  .map(({ x, y, w, h }) => box(x, y, x + w, y + h));

it('finds what is covered by many things together, as counting cell by cell does', () => {
  fc.assert(
    fc.property(anyBox, fc.array(anyBox, { maxLength: 12 }), (seen, front) => {
      let open = 0;
      for (let x = seen.x0; x < seen.x1; x++) {
        for (let y = seen.y0; y < seen.y1; y++) {
          if (!front.some((f) => f.x0 <= x && x < f.x1 && f.y0 <= y && y < f.y1)) open++;
        }
      }
      expect(isHidden(seen, front)).toBe(open === 0);
    }),
    { numRuns: 500 },
  );
});

it('draws the part of an edge behind a slat, and none that lies along its border', () => {
  const rail = box(0, 0, 1000, 100);
  const slat = box(200, 0, 500, 400, -10);
  const lines = hiddenEdges(rail, [slat]).map((line) => line.map(Math.round));
  // The rail's upper edge lies along the slat's own, so only the lower one is behind it.
  expect(lines).toEqual([[500, 100, 200, 100]]);
});

it('goes on across the gaps between slats, but not across an opening', () => {
  const stile = box(0, 0, 100, 1000);
  const slats = [0, 150, 300, 800].map((y) => box(-50, y, 200, y + 138, -10));
  const right = hiddenEdges(stile, slats)
    .map((line) => line.map(Math.round))
    .filter(([x]) => x === 100);
  expect(right).toEqual([
    [100, 0, 100, 438],
    [100, 800, 100, 938],
  ]);
});

it('clips an edge at slanting things too', () => {
  const diamond: Silhouette = { ...box(0, 0, 10, 10, -5), outline: [5, 0, 10, 5, 5, 10, 0, 5] };
  const [line] = hiddenEdges(box(-20, 5, 30, 60), [diamond]);
  expect(line?.[1]).toBeCloseTo(5);
  expect(line?.[0]).toBeCloseTo(0, 0);
  expect(line?.[2]).toBeCloseTo(10, 0);
});
