import { expect, it } from 'vitest';
import { openJob } from '../../tests/jobs/index.ts';
import { mm, toMm } from '../units/index.ts';
import type { RunLayout } from './layout.ts';

const job = (second: string, first = 'height 1775 mm; bottom 60 mm', slats = 'alternate faces') => `
job { measure mm to 1 mm }
board reed { width 90 mm; thickness 20 mm; lengths 3 m }
board slim { width 40 mm; thickness 20 mm; lengths 3 m }
post stake { along 90 mm; through 90 mm; lengths 3 m, 4 m }
pattern reeds { repeat reed; gap 40 mm; end anywhere }
pattern mixed { repeat reed, slim; gap 10 mm; end anywhere }
run bank { length 3 m; posts stake, 2 bays; ${first}; slats on ${slats}; fill reeds }
run meadow { length 3 m; posts stake, 2 bays; slats on ${slats}; lines as bank; ${second} }
`;

const linesOf = (run: RunLayout | undefined, side: 'front' | 'back') =>
  run?.pieces
    .filter((piece) => piece.role === 'slat' && piece.bay === 1 && piece.side === side)
    .map(({ solid }) => toMm(Math.max(...solid.vertices.map(([, , z]) => z))))
    .sort((a, b) => b - a);

it('goes on five pitches lower on both faces', async () => {
  // Hand-worked: 13 boards by turns, 65 mm from top to top; the front begins at 1775, the back at 1710.
  // 650 mm lower they begin at 1125 and 1060, and end at 60 - 650 = -590.
  const { layout } = await openJob(job('ground down 650 mm; height 1775 mm; bottom 60 mm'));
  const [bank, meadow] = layout.runs;
  const down = (tops: readonly number[] | undefined) => tops?.map((top) => top - 650);
  expect(linesOf(bank, 'front')?.[0]).toBe(1_775);
  expect(linesOf(meadow, 'front')).toEqual(down(linesOf(bank, 'front')));
  expect(linesOf(meadow, 'back')).toEqual(down(linesOf(bank, 'back')));
  expect(meadow?.bottom).toBe(mm(-590));
  expect(meadow?.problems).toEqual([]);
});

it('goes on up and down as far as its own band lets it', async () => {
  // Hand-worked: tops at 980 - 130 k. Between 0 and 1300 the boards 20..110, 150..240, ..., 1190..1280 fit: ten.
  const { layout } = await openJob(
    job('height 1200 mm to 1300 mm; bottom 0 mm to 130 mm', 'height 890 mm; bottom 20 mm', 'front face'),
  );
  const tops = linesOf(layout.runs[1], 'front');
  expect(tops).toEqual(Array.from({ length: 10 }, (_, k) => 1_280 - 130 * k));
  expect(layout.runs[1]?.fits[0]?.chosen?.bottom).toBe(mm(20));
});

it('says why it cannot', async () => {
  const why = async (second: string) =>
    (await openJob(job(second, 'height 890 mm; bottom 20 mm', 'front face'))).layout.runs[1]?.problems.map(
      ({ code, args }) => [code, args.why],
    );
  expect(await why('height 890 mm; bottom 20 mm; fill mixed')).toEqual([['lines-elsewhere', 'pattern']]);
  expect(await why('height 100 mm; bottom 30 mm')).toEqual([['lines-elsewhere', 'none']]);
  expect(await why('height 890 mm; bottom 20 mm')).toEqual([]);
});
