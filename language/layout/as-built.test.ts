import fc from 'fast-check';
import { expect, it } from 'vitest';
import { openJob } from '../../tests/jobs/index.ts';
import { inches } from '../units/index.ts';
import type { RunLayout } from './layout.ts';
import { findOverlaps } from './overlap.ts';
import type { Piece } from './piece.ts';
import { findUnsupported } from './support.ts';

const laid = async (
  mounting: string,
  measured: string,
  more = '',
  height = '50"',
  sound = true,
): Promise<RunLayout> => {
  const { layout } = await openJob(`job { measure inches to 1/16" }
board slat { width 3-1/2"; thickness 3/4" }
post stake { along 3-1/2"; through 3-1/2" }
rail bar { width 3-1/2"; thickness 1-1/2" }
cleat nib { width 3/4"; thickness 3/4" }
cap lid { flat; thickness 3/4"; overhang 1/2" }
pattern rows { repeat slat; gap 1/2"; end anywhere }
run bank {
  length 202"
  posts stake, 3 bays
  height ${height}; bottom 2-1/2"
  slats ${mounting}
  end gap 1/8"
  fill rows
  caps lid
  ${more}
}
measured bank {
  ${measured}
}
`);
  const [run] = layout.runs;
  if (!run || (sound && !run.sound)) throw new Error(JSON.stringify(run?.problems));
  return run;
};

const piece = ({ pieces }: RunLayout, key: string): Piece => {
  const found = pieces.find((one) => one.key === key);
  if (!found) throw new Error(`no piece ${key}`);
  return found;
};

/** Stations of a slat's two ends at its top and its bottom edge, in inches. */
function endsOf({ solid: { vertices } }: Piece): { top: number[]; bottom: number[] } {
  const x = (index: number) => (vertices[index]?.[0] ?? 0) / inches(1);
  return { top: [x(0), x(4)], bottom: [x(1), x(5)] };
}

const length = ([low = 0, high = 0]: number[]) => high - low;

// 202 less four posts of 3-1/2 is 188: three bays of 62-11/16, 62-5/8 and 62-11/16 at marks of 1/16.
const UNLIKE = 'bay 2 top 62-3/4", middle 62-1/2", bottom 62-1/4"';

it('chains marks from the first post and keeps what is not measured', async () => {
  const run = await laid('between posts', 'bay 1 clear 62"; bay 3 clear 63"');
  const planned = await laid('between posts', 'bay 9 clear 1"');
  const second = planned.bays[1]?.clear ?? 0;
  // By hand: 3-1/2 + 62 + 3-1/2, then bay 2 as planned, 3-1/2, 63, 3-1/2.
  expect(run.posts.map(({ from }) => from)).toEqual([
    0,
    inches(65.5),
    inches(69) + second,
    inches(69 + 3.5 + 63) + second,
  ]);
  expect(run.bays.map(({ clear }) => clear)).toEqual([inches(62), second, inches(63)]);
  const posts = run.posts.reduce((sum, { from, to }) => sum + to - from, 0);
  const clears = run.bays.reduce((sum, { clear }) => sum + clear, 0);
  expect(run.spec.length.value).toBe(posts + clears);
  expect(run.leans.size).toBe(0);
  expect(planned.problems.map(({ code }) => code)).toEqual(['measured-elsewhere']);
});

// The infill is 47-1/2 high, from 2-1/2 to 50; the clear grows from 62-1/4 to 62-3/4, so it is
// 62-1/4 + 1/2 (z - 2-1/2) / 47-1/2 at height z, and a slat is 1/4 shorter than that before marks.
it('makes slats as long as the bay is clear at their height', async () => {
  const run = await laid('between posts', UNLIKE);
  const slats = run.pieces.filter(({ role, bay }) => role === 'slat' && bay === 2);
  expect(slats).toHaveLength(12);
  for (const slat of slats) {
    const { top, bottom } = endsOf(slat);
    const z = (slat.solid.vertices[0]?.[2] ?? 0) / inches(1);
    const clear = (height: number) => 62.25 + (0.5 * (height - 2.5)) / 47.5;
    const given = clear(z) - 0.25 - length(top);
    // Its longest length is a mark of the tape; half of what that takes is at each end.
    expect(given).toBeGreaterThanOrEqual(-1e-4);
    expect(given).toBeLessThan(1 / 16);
    expect(clear(z - 3.5) - 0.25 - length(bottom)).toBeCloseTo(given, 4);
    expect(slat.cut.longPoint % inches(1 / 16)).toBe(0);
    // Half of the difference is at each end: atan(1/4 / 47-1/2) is 0.3016 degrees, in at the bottom.
    expect(slat.cut.ends.map(({ miter }) => miter)).toEqual([
      expect.closeTo(0.3016, 3),
      expect.closeTo(-0.3016, 3),
    ]);
  }
});

it('leans the posts of a bay by half of its difference each, and others not at all', async () => {
  const run = await laid('between posts', UNLIKE);
  expect([...run.leans].map(([key, { slope }]) => [key, slope])).toEqual([
    ['bank/p2', expect.closeTo(-0.25 / 47.5, 9)],
    ['bank/p3', expect.closeTo(0.25 / 47.5, 9)],
  ]);
  // Bays beside it are narrower or wider the other way round.
  const [top] = run.pieces.filter(({ role, bay }) => role === 'slat' && bay === 1);
  expect(top?.cut.ends.map(({ miter }) => Math.sign(Math.round(miter * 1000)))).toEqual([0, 1]);
});

it('lets posts of measured bays in a row lean so that every bay is as measured', async () => {
  const run = await laid('between posts', `bay 1 top 62-1/2", bottom 62-1/4"; ${UNLIKE}`);
  // By hand, over 47-1/2: leans differ by 1/4, then by 1/2; 0, 1/4, 3/4 less their mean of 1/3; p4 is plumb.
  const slopes = ['bank/p1', 'bank/p2', 'bank/p3'].map((key) => (run.leans.get(key)?.slope ?? 0) * 47.5);
  expect(slopes).toEqual([
    expect.closeTo(-1 / 3, 9),
    expect.closeTo(1 / 4 - 1 / 3, 9),
    expect.closeTo(3 / 4 - 1 / 3, 9),
  ]);
  expect(run.leans.has('bank/p4')).toBe(false);
});

it.each([
  ['between posts', 'cleats nib'],
  ['on front face', ''],
  ['on both faces', ''],
  ['on back face', 'battens slat'],
])('builds what leans so that it touches and does not overlap: %s', async (mounting, more) => {
  const bent = 'bay 2 top 62-3/4", middle 62-7/8", bottom 62-1/4"';
  for (const measured of [UNLIKE, bent, `bay 1 clear 62-1/2"; ${bent}; bay 3 top 62", bottom 62-1/2"`]) {
    const run = await laid(mounting, measured, more);
    expect(run.problems).toEqual([]);
    expect(findOverlaps(run)).toEqual([]);
    expect(findUnsupported(run)).toEqual([]);
  }
});

it('cuts no slat longer than the bay where it bends within the slat', async () => {
  // Tighter in the middle: 62-1/4 at mid height 25-3/4, which is in the sixth slat, from 29 down to 25-1/2.
  const run = await laid('between posts', 'bay 2 top 62-1/2", middle 62-1/4", bottom 62-1/2"', '', '49"');
  const over = run.pieces.filter((slat) => {
    const z = slat.solid.vertices.map((vertex) => vertex[2] / inches(1));
    return slat.bay === 2 && slat.role === 'slat' && Math.min(...z) < 25.75 && Math.max(...z) > 25.75;
  });
  expect(over.map(({ course }) => course)).toEqual([6]);
  for (const slat of over) {
    const { top, bottom } = endsOf(slat);
    const z = (slat.solid.vertices[0]?.[2] ?? 0) / inches(1);
    const at = length(bottom) + ((length(top) - length(bottom)) * (25.75 - (z - 3.5))) / 3.5;
    expect(at).toBeLessThanOrEqual(62.25 - 0.25 + 1e-6);
  }
});

it('leans posts as stated, and the others of measured bays by what is left', async () => {
  const lean = 'post 2 leans left 1/4" in 4\'';
  const alone = await laid('between posts', lean);
  expect([...alone.leans].map(([key, { slope }]) => [key, slope])).toEqual([['bank/p2', -0.25 / 48]]);
  // Bay 2 is 1/2 wider at the top in 47-1/2: post 3 leans right by that less 1/4 in 48.
  const run = await laid('between posts', `${lean}; ${UNLIKE}`);
  expect(run.leans.get('bank/p2')?.slope).toBeCloseTo(-0.25 / 48, 9);
  expect(run.leans.get('bank/p3')?.slope).toBeCloseTo(0.5 / 47.5 - 0.25 / 48, 9);
  expect(findOverlaps(run)).toEqual([]);
});

it('keeps upright slats and rails within the smallest clear', async () => {
  const run = await laid('on front face', UNLIKE, 'flip upright; rails bar');
  const [from, to] = run.bays[1]?.inner ?? [0, 0];
  expect((to - from) / inches(1)).toBeCloseTo(62.25, 3);
  expect(piece(run, 'bank/b2/rail-top').cut.longPoint).toBeLessThanOrEqual(inches(62.25));
  expect(findOverlaps(run)).toEqual([]);
});

it('leaves what was measured of another plan out', async () => {
  const run = await laid('between posts', 'bay 2 planned 60", clear 59"; bay 1 planned 62-11/16", clear 62"');
  expect(run.bays[0]?.clear).toBe(inches(62));
  expect(run.bays[1]?.clear).toBeGreaterThan(inches(62.5));
  expect(run.problems.map(({ code, args }) => [code, args.number, args.others])).toEqual([
    ['measured-elsewhere', 2, ''],
  ]);
});

it('lays out any measure without a number that is none', async () => {
  const clear = fc.oneof(fc.integer({ min: 1, max: 9999 }), fc.integer({ min: 1560, max: 1620 }));
  const mounting = fc.constantFrom('between posts', 'on front face', 'on both faces');
  await fc.assert(
    fc.asyncProperty(
      clear,
      clear,
      clear,
      mounting,
      fc.boolean(),
      async (top, middle, bottom, how, turned) => {
        const measured = `bay 2 top ${top} mm, middle ${middle} mm, bottom ${bottom} mm; post 1 leans left 1/4" in 4'`;
        const more = turned ? 'flip upright; rails bar; cleats nib' : '';
        const run = await laid(how, measured, more, '50"', false);
        const numbers = run.pieces.flatMap(({ solid, cut }) => [...solid.vertices.flat(), cut.longPoint]);
        expect(numbers.every(Number.isFinite)).toBe(true);
        const all = [...run.posts.map(({ from, to }) => to - from), ...run.bays.map((bay) => bay.clear)];
        if (run.sound) expect(all.reduce((sum, one) => sum + one, 0)).toBe(run.spec.length.value);
        else expect(run.problems.length).toBeGreaterThan(0);
      },
    ),
    { numRuns: 40 },
  );
});

const widthOf = (run: RunLayout | undefined, stock: string) =>
  run?.pieces.filter(({ cut }) => cut.stock === stock).map(({ cut }) => [cut.width, cut.thickness]);

it('leaves kick boards, fillers and boards in an offset in the plan as they were planned', async () => {
  const text = (measured: string) => `job { measure inches to 1/16" }
board slat { width 3-1/2"; thickness 3/4" }
board sole { width 5-1/2"; thickness 3/4" }
board edge { width 3-1/2"; thickness 1" }
board plug { width 5-1/2"; thickness 1" }
post stake { along 3-1/2"; through 3-1/2" }
pattern rows { repeat slat; gap 1/2"; end anywhere }
run quay {
  length 118-1/2"
  posts stake, 2 bays
  height 54"; bottom 6-1/2"
  slats on front face
  fill rows
  kick board sole
}
run mole {
  after quay, steps back 5", closed by filler plug
  length 118-1/2"
  posts stake, 2 bays
  height 54"; bottom 6-1/2"
  slats on front face
  fill rows
  ends at wall, 1" off
  scribed filler edge
}
${measured}`;
  const before = (await openJob(text(''))).layout.runs;
  const measured = ['sole', 'edge', 'plug'].map(
    (board) => `measured board ${board} { width 5"; thickness 7/8" }`,
  );
  const after = (await openJob(text(measured.join('\n')))).layout.runs;
  expect(before.map(({ planned }) => planned)).toEqual([undefined, undefined]);
  for (const [run, stock] of [
    [0, 'sole'],
    [1, 'edge'],
    [1, 'plug'],
  ] as const) {
    const planned = widthOf(before[run], stock);
    expect(planned?.length).toBeGreaterThan(0);
    expect(widthOf(after[run], stock)?.map(([, thickness]) => thickness)).toEqual(
      planned?.map(() => inches(7 / 8)),
    );
    expect(widthOf(after[run]?.planned, stock)).toEqual(planned);
  }
});
