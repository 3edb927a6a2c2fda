import { expect, it } from 'vitest';
import { openJobs, textAfter } from '../../tests/jobs/index.ts';

const BANK = `
board plank { width 3-1/2"; thickness 3/4" }
post pole { along 3-1/2"; through 3-1/2" }
pattern even(space = 3/4") { repeat plank; gap space; end anywhere }
run bank { length 16'; posts pole, 2 bays; height 4' to 6'; bottom 2" to 4"; fill even; slats on front face }
`;

async function told(text: string) {
  const opened = await openJobs({ '/bank.slat': BANK + text }).open('/bank.slat');
  const found = opened.findings.filter(({ code }) => code === 'place-seen');
  return { found, opened };
}

const SEAT = `place seat { at 5' along bank, 6' in front; width 4'; from 1' to 4' }`;

it('says how much is hidden and by which ways the rest is seen, and offers the gap that would do', async () => {
  const { found } = await told(
    `viewer path { at 5' along bank, 12' behind; eye 5' }\n${SEAT}\nhide seat from path 90 %`,
  );
  expect(found).toHaveLength(1);
  expect(found[0]?.message).toMatch(
    /^\d\d\.\d % of seat is hidden from path; this job asks for 90 %\. One sees .* % through the gaps/,
  );
  expect(found[0]?.message).toMatch(/A gap of .*" would do\.$/);
  expect(found[0]?.fixes).toHaveLength(1);
});

it('is content with what its own fix writes', async () => {
  const demand = `viewer path { at 5' along bank, 12' behind; eye 5' }\n${SEAT}\nhide seat from path 90 %`;
  const { found, opened } = await told(demand);
  const change = found[0]?.fixes[0]?.changes[0];
  if (!change) throw new Error('no fix');
  const mended = textAfter(opened.document, [change]);
  const again = await openJobs({ '/bank.slat': mended }).open('/bank.slat');
  expect(again.findings.filter(({ code }) => code === 'place-seen')).toEqual([]);
});

it('names the top that would hide what is seen over it: by similar triangles', async () => {
  const { found } = await told(
    `viewer balcony { at 5' along bank, 10' behind; eye 5'; floor up 10' }\n${SEAT}\nhide seat from balcony 99 %`,
  );
  // From 180 in up and 120 in off, the line to 48 in up and 72 in beyond is at 180 - 132 * 120 / 192 = 97-1/2 in.
  expect(found[0]?.message).toContain(`Nothing is seen over a top up 8' 1-1/2" from the datum on bank.`);
});

it('looks from the worst spot of a stretch', async () => {
  const { found } = await told(
    `viewer path { at 5' along bank, 12' behind; to 40' along bank, 12' behind; eye 5' }\n${SEAT}\nhide seat from path 90 %`,
  );
  expect(found[0]?.message).toMatch(/at worst at .* along bank; this job asks/);
  expect(found[0]?.message).toContain('past the ends');
});

it('asks for nothing that is met', async () => {
  const { found } = await told(
    `viewer path { at 5' along bank, 12' behind; eye 5' }\n${SEAT}\nhide seat from path 40 %`,
  );
  expect(found).toEqual([]);
});

it('offers gaps below those the fit may take where none of them hides enough, and is content with that', async () => {
  const banded = BANK.replace('end anywhere }', 'end anywhere; fit gaps 5/8" to 7/8" }').replace(
    `height 4' to 6'; bottom 2" to 4"`,
    `height 5' 6"; bottom 3"`,
  );
  const demand = `viewer path { at 5' along bank, 12' behind; eye 5' }\n${SEAT}\nhide seat from path 92 %`;
  const open = async (text: string) => {
    const opened = await openJobs({ '/bank.slat': text }).open('/bank.slat');
    return { opened, found: opened.findings.filter(({ code }) => code === 'place-seen') };
  };
  const { found, opened } = await open(banded + demand);
  expect(found[0]?.message).toMatch(/A gap of .*" would do, with `fit gaps .*" to 7\/8"`\.$/);
  const mended = textAfter(opened.document, found[0]?.fixes[0]?.changes ?? []);
  expect(mended).not.toBe(banded + demand);
  expect((await open(mended)).found).toEqual([]);
});
