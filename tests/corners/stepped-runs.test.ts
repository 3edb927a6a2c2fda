import { expect, it } from 'vitest';
import { feet, inches, mm } from '../../language/units/index.ts';
import { openJobs, textAfter } from '../jobs/index.ts';

const STOCK = `
board wide { width 5-1/2"; thickness 1" }
board thin { width 5-1/2"; thickness 3/4" }
post p4 { along 3-1/2"; through 3-1/2" }
cleat stop { width 3/4"; thickness 3/4" }
pattern plain(slat = wide) { repeat slat; gap 1/2"; end anywhere; fit gaps 1/4" to 1" }
`;

const run = (name: string, place: string, slat = 'wide') => `
run ${name} {
  ${place}
  length 10'
  height 5'; bottom 2"
  posts p4, 2 bays
  slats between posts; cleats stop
  fill plain(slat = ${slat})
}
`;

const opened = (second: string, first = '', slat?: string) =>
  openJobs({}).open('/made/job.slat', `${STOCK}${run('quay', first)}${run('mole', second, slat)}`);

// Plane geometry: from the end of the first run, square off its line; toward the back is left of one who walks it.
it.each([
  ['after quay, steps back 6"', `placed at 3', 4'`, [feet(13), feet(4) + inches(6)]],
  ['after quay, steps forward 6"', `placed at 3', 4'`, [feet(13), feet(4) - inches(6)]],
  // Going north, the back is to the west.
  ['after quay, steps back 6"', `placed at 3', 4' bearing 0°`, [feet(3) - inches(6), feet(14)]],
  ['after quay, 2" on, steps back 150 mm', `placed at 3', 4'`, [feet(13) + inches(2), feet(4) + mm(150)]],
])('sets a run off the line of the one before: %s, %s', async (second, first, [east = 0, north = 0]) => {
  const job = await opened(second, first);
  expect(job.findings.map(({ code }) => code)).not.toContain('plane-offset');
  const { layout } = job;
  const place = layout.places.get('mole');
  expect(place?.origin[0]).toBeCloseTo(east, 3);
  expect(place?.origin[1]).toBeCloseTo(north, 3);
  expect(place?.bearing).toBe(layout.places.get('quay')?.bearing);
  // Three posts each, none of them shared.
  const posts = layout.runs.map(({ pieces }) => pieces.filter(({ role }) => role === 'post').length);
  expect(posts).toEqual([3, 3]);
});

it('tells a stated step that is hardly one, and mends it', async () => {
  const { open } = openJobs({});
  const text = `${STOCK}${run('quay', '')}${run('mole', 'after quay, steps back 1/2"')}`;
  const job = await open('/made/job.slat', text);
  const found = job.findings.filter(({ code }) => code === 'plane-offset');
  expect(found.map(({ message }) => message.includes('1/2" off'))).toEqual([true]);
  const [fix] = found[0]?.fixes ?? [];
  const after = textAfter(job.document, fix?.changes ?? []);
  expect(after).toContain('after quay, steps back 1"\n');
  expect((await open('/made/job.slat', after)).findings.map(({ code }) => code)).not.toContain(
    'plane-offset',
  );
});

it('sets a run with thinner slats back by as much as makes a clear step', async () => {
  const { open } = openJobs({});
  const text = `${STOCK}${run('quay', '')}${run('mole', 'after quay', 'thin')}`;
  const job = await open('/made/job.slat', text);
  const [fix] = job.findings.find(({ code }) => code === 'plane-offset')?.fixes ?? [];
  // Fronts stand 1/2 in and 3/8 in before the middle: 1 in between them is a step of 1 - 1/8 in.
  expect(fix?.title).toBe('Set mole back by 7/8", with a post of its own');
  const mended = await open('/made/job.slat', textAfter(job.document, fix?.changes ?? []));
  expect(mended.findings.map(({ code }) => code)).not.toContain('plane-offset');
});

it('has no corner at a step', async () => {
  const job = await opened('after quay, steps back 6"; corner miter');
  expect(job.findings.map(({ code }) => code)).toContain('placement-unclear');
});
