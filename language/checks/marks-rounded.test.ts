import { expect, it } from 'vitest';
import { allJobs, openAll } from '../../tests/jobs/index.ts';
import { inches, mm } from '../units/index.ts';
import { greatestRounding } from './marks-rounded.ts';
import { checked, screen } from './testing/checked.ts';

const found = (step: string, more = '') =>
  checked(
    screen(['to 1/16"', `to ${step}${more}`], ['gap 1/2"', 'gap 7/16"'], ['height 50"', 'height 49-5/16"']),
    'marks-rounded',
  );

// Pitches of 3-15/16 from 49-5/16 down: edges fall on every sixteenth, so that quarters are up to 1/8 off.
it('tells marks that are over a thirty-second off the edges', async () => {
  expect((await found('1/16"')).findings).toEqual([]);
  const { findings, messages } = await found('1/4"');
  expect(findings.map(({ at }) => at.path)).toEqual(['Job/MeasureStatement']);
  expect(messages[0]).toContain('Rounded to 1/4", the marks of slats in bank are up to 1/8" off');
  expect((await found('1/4"', '; threshold marks-rounded 1/8"')).findings).toEqual([]);
});

// Marks from one zero: none is farther off than half a step, however many there are before it.
it.each(allJobs)(
  '$name: no mark is farther off than half a step, so that no error adds up',
  async ({ path }) => {
    const { job, layout } = await openAll().open(path);
    const { step, unit } = job.measure.value;
    for (const run of layout.runs) expect(greatestRounding(run, step)).toBeLessThanOrEqual(step / 2);
    const fine = unit === 'inches' || unit === 'feet' ? inches(1 / 16) : mm(2);
    if (step <= fine)
      for (const run of layout.runs) expect(greatestRounding(run, step)).toBeLessThanOrEqual(fine / 2);
  },
);
