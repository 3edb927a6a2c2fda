import { expect, it } from 'vitest';
import { checked, fixed, screen } from './testing/checked.ts';

/** Level, falling 9", and falling 9" in steps. */
const FALLING = `ground at 0' up 0", at 118-1/2" down 9"`;

it.each([
  ['1"', ''],
  ['1"', FALLING],
  ['1"', `${FALLING}; slope in steps`],
])('raises a bottom of %s, with %s, to what is usual', async (bottom, ground) => {
  const text = screen(['bottom 2-1/2"', `bottom ${bottom}; ${ground}`]);
  const low = await checked(text, 'clearance-low');
  const [fix] = low.findings[0]?.fixes ?? [];
  expect(fix?.title).toBe('Write bottom 2"');
  expect((await fixed(low, fix)).findings.filter(({ code }) => code === 'clearance-low')).toEqual([]);
});

it('lowers a bottom over level ground to what is usual', async () => {
  const high = await checked(screen(['bottom 2-1/2"', 'bottom 8"']), 'clearance-high');
  const [fix] = high.findings[0]?.fixes ?? [];
  expect(fix?.title).toBe('Write bottom 6"');
  expect((await fixed(high, fix)).findings.filter(({ code }) => code === 'clearance-high')).toEqual([]);
});
