import { expect, it } from 'vitest';
import { openJobs } from '../../../tests/jobs/index.ts';
import { workingsOf } from '../workings.ts';

const TEXT = `
board plank { width 3-1/2"; thickness 3/4" }
post pole { along 3-1/2"; through 3-1/2" }
pattern even { repeat plank; gap 1/2"; end anywhere }
run bank { length 16'; posts pole, 2 bays; height 3'; bottom 2"; fill even; slats on front face }
viewer porch { at 5' along bank, 10' behind; eye 5' }
viewer path { at 0" along bank, 10' behind; to 16' along bank, 10' behind }
place seat { at 5' along bank, 10' in front; width 1'; from 0" to 2' }
hide seat from porch 60 %
`;

async function told() {
  const { layout, job } = await openJobs({ '/bank.slat': TEXT }).open('/bank.slat');
  return workingsOf(layout, job).filter(({ code }) => code === 'privacy');
}

it('tells of every pair of viewer and place, by the ways it is seen, and of what is asked', async () => {
  const [porch, path] = await told();
  expect((await told()).map(({ where }) => where.label)).toEqual(['seat from porch', 'seat from path']);
  const steps = new Map(porch?.steps.map(({ says, value }) => [says, value?.value ?? 0]));
  // By similar triangles past the far top edge of the slats: 1 - (60 - 240 * 24 / 122.5) / 24 (see sight.test.ts).
  expect(steps.get('seen over the top')).toBeCloseTo(100 * (1 - (60 - (240 * 24) / 122.5) / 24), 6);
  const seen = [...steps]
    .filter(([says]) => says.startsWith('seen'))
    .reduce((sum, [, value]) => sum + value, 0);
  expect((porch?.figure.value ?? 0) + seen).toBeCloseTo(100, 6);
  expect(porch?.limit).toMatchObject({ value: 60, is: 'at least' });
  // Half way from 60 in to 24 in, over a top half way.
  expect(steps.get('top of bank over which nothing would be seen, from the datum')).toBeCloseTo(
    (60 + 24) / 2,
    6,
  );
  expect(path?.limit).toBeUndefined();
  expect(path?.steps.map(({ says }) => says)).toContain('worst spot, of the way walked');
});
