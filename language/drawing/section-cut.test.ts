import { expect, it } from 'vitest';
import { openJob } from '../../tests/jobs/index.ts';

const JOB = `board cedar { width 5-1/2"; thickness 3/4" }
board bar { width 3-1/2"; thickness 1-1/2" }
post pole { along 3-1/2"; through 3-1/2" }
job { measure inches to 1/16" }
pattern rows { repeat cedar; gap 1/2"; end anywhere; fit gaps 3/8" to 5/8", else rip last }
run bank { length 144"; posts pole, 2 bays; height 60"; bottom 2"; rails bar; flip upright; slats in grooves, 1/2" deep; end gap 1/8"; fill rows }
`;

/** Area by the surveyor's formula. */
function areaOf(outline: readonly number[]): number {
  let twice = 0;
  for (let i = 0; i < outline.length; i += 2) {
    const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = [0, 1, 2, 3].map((k) => outline[(i + k) % outline.length]);
    twice += x0 * y1 - x1 * y0;
  }
  return Math.abs(twice) / 2;
}

// By hand: a groove is as wide as the slat and 1/16", 13/16", and 1/2" deep. 3-1/2 x 1-1/2 less 13/16 x 1/2 is 4.84375
// square inches, of each rail.
it('shows the grooves of rails that are cut through', async () => {
  const { views } = await openJob(JOB);
  const section = views().find(({ kind }) => kind === 'section');
  const faces = section?.groups.filter(({ style }) => style === 'section').flatMap(({ hits }) => hits) ?? [];
  const rails = faces.filter(({ piece }) => piece.includes('/rail-'));
  expect(rails.map(({ piece }) => piece).sort()).toEqual(['bank/b1/rail-bottom', 'bank/b1/rail-top']);
  for (const { outline } of rails) expect(areaOf(outline ?? []) / 25.4 ** 2).toBeCloseTo(4.84375, 2);
  const slat = faces.find(({ piece }) => piece.includes('/c'));
  expect(slat).toBeDefined();
  expect(slat?.outline).toBeUndefined();
});
