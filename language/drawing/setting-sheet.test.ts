import { expect, it } from 'vitest';
import { openJobs } from '../../tests/jobs/index.ts';
import { settingSheet } from './setting-sheet.ts';

const JOB = `
job { measure inches to 1/16" }
board plank { width 3-1/2"; thickness 3/4" }
board batten { width 3-1/2"; thickness 3/4" }
post pole { along 3-1/2"; through 3-1/2" }
pattern even { repeat plank; gap 1/2"; end anywhere }
run "a & b" { length 24'; posts pole, 4 bays; height 6'; slats on front face; fill even; end gap 1/8"; BRACING }
`;

async function sheet(bracing: string) {
  const { job, layout } = await openJobs({ '/a.slat': JOB.replace('BRACING', bracing) }).open('/a.slat');
  const [run] = layout.runs;
  if (!run) throw new Error('there is no run');
  return settingSheet('setting out a & b', run, job.measure.value);
}

it('draws no sheet where nothing sets the posts', async () => {
  expect(await sheet('')).toBeUndefined();
});

it('draws every post, strip, brace and stake twice, and writes marks and lengths', async () => {
  const svg = (await sheet('temporary bracing batten')) ?? '';
  // Five posts, eight strips, ten braces, ten stakes; from the front and from above.
  expect(svg.match(/<polygon/g)).toHaveLength(2 * 33);
  // Three kinds of strips: of the first bay, of both in the middle, of the last.
  for (const text of ['2 × 72-13/16&quot;', '4 × 71&quot;', '3-1/2&quot;', '67-5/8&quot; clear', 'bays 2, 3'])
    expect(svg.replaceAll('"', '&quot;')).toContain(text);
  expect(svg).toContain('Braces of posts 1 to 5: along the run 71-1/4');
  expect(svg).toContain('setting out a &amp; b');
  expect(svg).not.toMatch(/NaN|Infinity|undefined/);
});
