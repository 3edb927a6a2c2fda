import { expect, it } from 'vitest';
import { cutOffAngle, openShareAtAngle, seeThrough } from '../../language/figures/index.ts';
import type { RunLayout } from '../../language/layout/index.ts';
import { inches, toInches } from '../../language/units/index.ts';
import { openJob } from '../jobs/index.ts';

// Worked figures of the trade, written as jobs and read back from the pieces. Each says what it rests on.

const STOCK = `
board picket { width 5-1/2"; thickness 3/4" }
board small { width 3-1/2"; thickness 3/4" }
board tiny { width 1-1/2"; thickness 3/4" }
board siding { width 9-1/2"; thickness 3/4" }
post four { along 3-1/2"; through 3-1/2" }
rail bar { width 3-1/2"; thickness 1-1/2" }
`;

async function run(pattern: string, statements: string): Promise<RunLayout> {
  const { findings, run: only } = await openJob(
    `${STOCK}pattern rows { ${pattern} }\nrun line { posts four, 1 bays; slats on front face; fill rows\n${statements}\n}`,
  );
  expect(findings.filter(({ severity }) => severity === 'error')).toEqual([]);
  return only();
}

/** Widths of openings between slats of the first bay, in inches. */
function gaps({ openings }: RunLayout, axis: 'x' | 'z'): number[] {
  return openings
    .filter(({ between, bay }) => between && bay === 1)
    .map(({ x0, x1, z0, z1 }) => toInches(axis === 'x' ? x1 - x0 : z1 - z0));
}

it('divides 240 inches between posts of 3-1/2 into four bays of 55-5/8 (geometry)', async () => {
  // 240 less five posts of 3-1/2 leaves 222-1/2; by 4 it is 55-5/8, and three bays would be 75-1/3, over 66.
  const { run: only } = await openJob(
    `${STOCK}pattern rows { repeat picket; gap 1/2"; end anywhere }
run line { length 240"; posts four, at most 66" clear; height 6'; slats on front face; fill rows }`,
  );
  expect(only().posts).toHaveLength(5);
  expect(only().bays.map(({ clear }) => clear)).toEqual([1, 2, 3, 4].map(() => inches(55.625)));
});

it('spaces twelve pickets of 5-1/2 in 96 inches, gaps inside only (common practice)', async () => {
  // (96 - 12 * 5-1/2) / 11 = 2.727.
  const line = await run(
    'repeat picket; gap 2-3/4"; end anywhere; fit gaps 2-1/4" to 3"',
    'length 103"; height 4\'; rails bar; flip upright',
  );
  const found = gaps(line, 'x');
  expect(found).toHaveLength(11);
  for (const gap of found) expect(gap).toBeCloseTo(2.727, 3);
  expect(found.reduce((sum, gap) => sum + gap, 12 * 5.5)).toBeCloseTo(96, 9);
});

it('spaces them with half a gap at each end, so that panels read on (common practice)', async () => {
  // (96 - 12 * 5-1/2) / 12 = 2-1/2, with 1-1/4 at each end.
  const line = await run(
    'repeat picket; gap 2-3/4"; edge gap half; end anywhere; fit gaps 2-1/4" to 3"',
    'length 103"; height 4\'; rails bar; flip upright',
  );
  expect(gaps(line, 'x')).toEqual(Array.from({ length: 11 }, () => 2.5));
  const edges = line.openings.filter(({ between }) => !between).map(({ x0, x1 }) => toInches(x1 - x0));
  expect(edges).toEqual([1.25, 1.25]);
});

it('divides 61 inches into six courses of 10-1/6, as siding is laid out (common practice)', async () => {
  // 61 / 10 = 6.1, rounded to 6; 61 / 6 = 10-1/6 a course. Here a course is a board and its gap.
  const line = await run(
    'repeat siding; gap 1/2"; edge gap half; end anywhere; fit gaps 1/4" to 1"',
    'length 8\'; height 63"; bottom 2"',
  );
  const slats = line.pieces.filter(({ role }) => role === 'slat');
  expect(slats).toHaveLength(Math.round(61 / 10));
  for (const gap of gaps(line, 'z')) expect(gap + 9.5).toBeCloseTo(61 / 6, 4);
});

it('is 12.5 % open straight on at slats of 3-1/2 and gaps of 1/2, 5.7 % from 20 degrees, shut from 33.7 (geometry)', async () => {
  const line = await run(
    'repeat small; gap 1/2"; edge gap half; end anywhere',
    'length 6\'; height 50"; bottom 2"',
  );
  const slats = line.pieces.filter(({ role }) => role === 'slat');
  expect(seeThrough(line.openings, slats)).toBeCloseTo(0.125, 9);
  const [opening] = line.openings.filter(({ between }) => between);
  const gap = (opening?.z1 ?? 0) - (opening?.z0 ?? 0);
  const [width, depth] = [slats[0]?.cut.width ?? 0, opening?.depth ?? 0];
  expect(cutOffAngle(gap, depth)).toBeCloseTo(33.69, 2);
  expect(openShareAtAngle(gap, width, depth, 20)).toBeCloseTo(0.057, 3);
});

it('looks the same from behind when it reads alike from either end, and only then (geometry)', async () => {
  const widths = async (repeat: string) => {
    const line = await run(
      `repeat ${repeat}; gap 1/2"; end whole`,
      'length 103"; height 4\'; rails bar; flip upright',
    );
    const slats = line.pieces.filter(({ role, bay }) => role === 'slat' && bay === 1);
    const left = (piece: (typeof slats)[number]) => Math.min(...piece.solid.vertices.map(([x]) => x));
    return slats.toSorted((a, b) => left(a) - left(b)).map(({ cut }) => toInches(cut.width));
  };
  // From behind, left and right change places. Wide, small, tiny are a, b, c.
  const palindrome = await widths('picket, small, tiny, small, picket');
  expect(palindrome.length % 5).toBe(0);
  expect(palindrome.length).toBeGreaterThan(5);
  expect(palindrome.toReversed()).toEqual(palindrome);
  const oneWay = await widths('picket, small, tiny, picket, small, tiny');
  expect(oneWay.length).toBeGreaterThan(5);
  expect(oneWay.toReversed()).not.toEqual(oneWay);
});
