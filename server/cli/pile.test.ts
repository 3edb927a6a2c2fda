import { expect, it } from 'vitest';
import { folderWith, runHere } from './testing/run-here.ts';

/*
 * By hand: 2 bays of 900 mm between posts, slats on the front from the middle of the middle post to the outside of the
 * end posts: 1035 mm each, less 2 mm at the joint. 930 mm are 9 slats of 90 and 8 gaps of 15, so 18 slats, which end at every post. A board of
 * 2.1 m gives 2 (2 x 1034 + 3), so 5 boards give 10: one bay of 9, and 5 courses of 2; 8 slats are missing.
 */
const text = (boards: number) => `job "Small" { measure mm to 1 mm }
board slat-90 { width 90 mm; thickness 20 mm; lengths 2.1 m }
post stake { along 90 mm; through 90 mm; lengths 2 m }
pattern even(space = 15 mm) { repeat slat-90; gap space; end anywhere }
on hand {
  slat-90 ${boards} of 2.1 m
}
run side {
  length 2070 mm; posts stake, 2 bays; height 1000 mm; bottom 70 mm; embed 700 mm
  slats on front face; joints at every post; fill even
}
`;

it.each([
  [4, 0, 4, 10],
  [5, 1, 5, 8],
  [9, 2, 9, 0],
])('counts what %i boards on hand still give', async (boards, bays, courses, missing) => {
  const folder = folderWith({ 'small.slat': text(boards) });
  const { code, out } = await runHere(folder, 'pile', 'small.slat', '--json');
  expect(code).toBe(0);
  const [found] = JSON.parse(out).runs[0].patterns;
  expect(found).toMatchObject({
    pattern: 'even',
    bays: { can: bays, of: 2 },
    courses: { can: courses, of: 9 },
  });
  expect(found.missing.reduce((sum: number, { count }: { count: number }) => sum + count, 0)).toBe(missing);
});
