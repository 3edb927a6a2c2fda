import { expect, it } from 'vitest';
import { openJob } from '../../../tests/jobs/index.ts';
import { windFaces } from './wind-face.ts';
import { windOn } from './wind-on.ts';

const text = (site: string, run: string) => `job "Height" {
  measure inches to 1/16"
  wind 115 mph, exposure B, by ASCE 7-16
}
board plank { width 5-15/16"; thickness 1"; lengths 16'; span at most 8' }
post stake { along 3-1/2"; through 3-1/2"; lengths 16' }
pattern rows { repeat plank; gap 1/16"; end anywhere; fit gaps 0" to 1/8" }
${site}
run side {
  ${run}
  length 144"
  posts stake, 3 bays
  height 66"; bottom 3"
  slats on front face; joints at every post
  fill rows
}
`;

async function opened(site: string, run: string) {
  const { job, layout } = await openJob(text(site, run));
  const [side] = layout.runs;
  if (!side) throw new Error('no run');
  return { side, wind: windOn(side, job) };
}

const deck = (ground: string) => `deck porch {
  surface up 36"
  boards 1"
  joists 1-1/2" by 9-1/4", 16" on center from 3/4"
  rim 1-1/2", double
  ${ground}
}`;

// ASCE 7-16, Fig. 29.3-1: h is the height of the top above the ground. Hand-worked: 66 in over a deck 36 in up, whose ground
// is 12 in down: 114 in; s/h = 63/114 = 0.5526, B/s = 144/63 = 2.286. Between the rows 0.5 (1.70) and 0.7 (1.60) that is
// 1.70 - 0.10 x 0.0526/0.2 = 1.6737; on the ground s/h = 0.9545, between 0.9 (1.493 at that length) and 1 (1.393): 1.4384.
it('measures the top of a screen on a deck from the ground below it', async () => {
  const raised = await opened(deck('ground down 12"'), 'on porch, posts outside rim');
  expect(windFaces(raised.side)[0]).toEqual({ top: 114, face: 63, raised: true });
  const grade = await opened('', '');
  expect(grade.wind.rise).toBe(0.05);
  expect(raised.wind.rise).toBe(0);
  expect(raised.wind.solidity).toBeCloseTo(grade.wind.solidity, 2);
  expect(raised.wind.pressure / grade.wind.pressure / (1.6737 / 1.4384)).toBeCloseTo(1, 2);
});

it('says so where the ground below a deck is not stated', async () => {
  const { wind, side } = await opened(deck(''), 'on porch, posts outside rim');
  expect(windFaces(side)[0]).toMatchObject({ top: 66, raised: false });
  expect(wind.working.notes.join(' ')).toContain('ground below the deck is not stated');
});

// The same figure: 24 in of fall in 144 in; a level top is highest over the last of three bays, which
// ends where the last post begins, at 140.5 in, where the ground is 24 x 140.5 / 144 = 23.4167 in down. Which bay is
// pressed the most hangs on its share of its height too: there a course is added below.
it('takes the bay that is pressed the most where the ground falls', async () => {
  const { side, wind } = await opened('', 'ground at 0" up 0", at 144" down 24"\n  slope level top');
  const tops = windFaces(side).map(({ top }) => top);
  expect(tops).toHaveLength(3);
  expect(Math.max(...tops)).toBeCloseTo(66 + 23.4167, 3);
  const shown = wind.working.inputs.find(({ symbol }) => symbol === 'h');
  expect(tops.map((value) => ({ value, unit: 'in' }))).toContainEqual(shown?.value);
});
