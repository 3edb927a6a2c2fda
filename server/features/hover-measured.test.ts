import { expect, it } from 'vitest';
import { openJob } from '../../tests/jobs/index.ts';
import { measuredLines } from './hover-measured.ts';

// Two bays of 58" clear: 2 times 58 and three posts of 3-1/2 are 126-1/2; slats are 1/4 shorter. The infill is one
// slat of 5-1/2 high, so that the slat's long edge is as the bay is at the top.
const JOB = `job { measure inches to 1/16" }
board slat { width 5-1/2"; thickness 3/4" }
post stake { along 3-1/2"; through 3-1/2" }
cleat nib { width 3/4"; thickness 3/4" }
pattern rows { repeat slat; gap 1/2"; end anywhere }
run bank { length 126-1/2"; posts stake, 2 bays; height 8"; bottom 2-1/2"; slats between posts; fill rows; end gap 1/8" }
measured bank {
  bay 1 planned 58", top 58-1/2", middle 58-1/4", bottom 58"
  bay 2 planned 60", clear 59"
}
`;

it('sets a measure beside what was planned', async () => {
  const { job, layout } = await openJob(JOB);
  const lines = (path: string) => measuredLines(path, layout.runs, job.measure.value);
  expect(lines('Measured:bank/MeasuredBay:1')).toEqual([
    'planned 58" clear',
    '58-1/2" at the top: 1/2" more',
    '58-1/4" at the middle: 1/4" more',
    '58" at the bottom: as planned',
    'slats 58-1/4" long; planned 57-3/4"',
  ]);
  expect(lines('Measured:bank/MeasuredBay:2')).toEqual([expect.stringContaining('not used')]);
  expect(lines('Measured:bank/MeasuredBay:9')).toEqual([]);
});
