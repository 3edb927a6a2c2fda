import { expect, it } from 'vitest';
import { checked, fixed, screen } from './testing/checked.ts';

const FALLS = `bottom 2-1/2"; ground at 0' up 0", at 118-1/2" down 9"`;

/** Titles of what is offered for a gap that is too high. */
async function offered(text: string) {
  const high = await checked(text, 'clearance-high');
  const { fixes = [], moreFixes } = high.findings[0] ?? {};
  return { high, fixes: [...fixes, ...(moreFixes?.() ?? [])] };
}

it('offers to close the space under slats by what closes it, as it closes it', async () => {
  const wide = screen(['bottom 2-1/2"', FALLS]).replace(
    'board slat',
    'board sole { width 9-1/4"; thickness 1-1/2" }\nboard slat',
  );
  const { high, fixes } = await offered(wide.replace('bottom 2-1/2"', 'bottom 4"'));
  expect(fixes.map(({ title }) => title)).toContain('Write kick board sole, follows ground');
  for (const fix of fixes) {
    const after = await fixed(high, fix);
    expect(after.findings.filter(({ code }) => code === 'clearance-high')).toEqual([]);
    expect(after.open.layout.runs[0]?.problems).toEqual([]);
  }
});

it('offers a last course where that is enough', async () => {
  // Under the second bay the ground is down 3" to 5-1/2": a whole slat of 3-1/2" would come within 1-1/2" of it.
  const ground = `ground at 0' up 0", at 56" up 0", at 57" down 3", at 118-1/2" down 5-1/2"`;
  const { high, fixes } = await offered(screen(['bottom 2-1/2"', `bottom 2-1/2"; ${ground}`]));
  expect(fixes.map(({ title }) => title)).toEqual(['Write last course follows ground']);
  const after = await fixed(high, fixes[0]);
  expect(after.findings).toEqual([]);
  // By hand: at the middle of the post the ground is down 3.07", so from 2" to 2-1/2" over it are 2.57", on the tape
  // 2-9/16"; at the other end there is room for more than the board is wide.
  const taper = after.open.layout.runs[0]?.pieces.find(({ key }) => key === 'bank/b2/c13')?.cut.taper;
  expect(taper?.map((ticks) => ticks / 203_200)).toEqual([2.5625, 3.5]);
});

it('offers nothing that would not help', async () => {
  // The slats' own board is too narrow to fill a foot.
  const { high, fixes } = await offered(
    screen(['bottom 2-1/2"', 'bottom 14"'], ['height 50"', 'height 61-1/2"']),
  );
  expect(high.findings).toHaveLength(1);
  expect(fixes.filter(({ title }) => title.includes('kick'))).toEqual([]);
});

it('does not want a kick board kept off the ground', async () => {
  const kicked = screen(
    ['bottom 2-1/2"', `bottom 6"; kick board slat, 1/4" above ground`],
    ['height 50"', 'height 53-1/2"'],
  );
  expect((await checked(kicked, 'clearance-low')).findings).toEqual([]);
  expect((await checked(kicked, 'kick-no-room')).findings).toEqual([]);
});
