import { expect, it } from 'vitest';
import { takeoffOf } from '../../language/takeoff/index.ts';
import { openJobs } from '../../tests/jobs/index.ts';
import { ticketsOf } from './tickets.ts';

const STOCK = `
board plank { width 3-1/2"; thickness 3/4"; lengths 8' }
post pole { along 3-1/2"; through 3-1/2"; lengths 8' }
pattern even { repeat plank; gap 1/2"; end anywhere }
`;
const run = (name: string, length: string) =>
  `run ${name} { length ${length}; posts pole, 2 bays; height 4'; bottom 4"; embed 2'; fill even; slats on front face }\n`;

async function sheet(text: string) {
  const { job, layout } = await openJobs({ '/bank.slat': STOCK + text }).open('/bank.slat');
  const sheets = ticketsOf(
    takeoffOf(layout, job, () => false),
    job,
  );
  return sheets.find(({ name }) => name === 'cut-plank.svg')?.text ?? '';
}

// Boards meet over the middle post: 12 ft go as 6 ft and 6 ft, 14 ft as 7 ft and 7 ft, less half a joint of 1/8" each.
it('names the run under each piece where there are several, as each numbers its own bays', async () => {
  const two = await sheet(run('bank', "12'") + run('lane', "14'"));
  expect(two).toContain('>5&apos; 11-15/16&quot;, bank<');
  expect(two).toContain('>6&apos; 11-15/16&quot;, lane<');
  expect(two).not.toContain('>5&apos; 11-15/16&quot;<');
  const one = await sheet(run('bank', "12'"));
  expect(one).toContain('>5&apos; 11-15/16&quot;<');
  expect(one).not.toContain(', bank<');
});
