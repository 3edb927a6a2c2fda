import { expect, it } from 'vitest';
import { openJobs } from '../../tests/jobs/index.ts';
import { ceilToStep, formatLength, inches } from '../units/index.ts';
import { moreKerf } from './angled-kerf.ts';
import { pileOf } from './pile.ts';
import { piecesOf } from './planned-board.ts';
import { takeoffOf } from './takeoff.ts';

const SQUARE = { miter: 0, bevel: 0 };

it('takes a kerf over the cosine of the cut: at 45 degrees 1/8 in are 0.1768 in along the board, up to the mark', () => {
  const [kerf, tick] = [inches(1 / 8), 1];
  const at = (miter: number, bevel: number, step = tick) =>
    moreKerf({ ends: [SQUARE, { miter, bevel }] }, kerf, step);
  // 0.125 / cos 45 = 0.176777 in; 0.125 / cos 60 = 0.25 in.
  expect(at(45, 0)).toBe(Math.ceil(inches(1) * (0.125 / Math.SQRT1_2 - 0.125)));
  expect(at(0, -60)).toBeCloseTo(inches(0.125), -1);
  // Both at 45: the plane x = v + s has the normal (1, -1, -1), so the kerf goes by the root of 3.
  expect(at(45, 45)).toBe(Math.ceil(inches(1) * 0.125 * (Math.sqrt(3) - 1)));
  expect(at(0, 0)).toBe(0);
  expect(at(45, 0, inches(1 / 16))).toBe(inches(1 / 16));
});

const CORNER = `job "Corner" { saw kerf 1/8" }
board plank { width 3-1/2"; thickness 3/4"; lengths 8' $9 each, 10' $11 each, 12' $13 each }
post pole { along 3-1/2"; through 3-1/2"; lengths 8' $14 each }
pattern even { repeat plank; gap 1/2"; end anywhere }
run first { length 10'; posts pole, 2 bays; height 3'; bottom 4"; embed 2'; fill even; slats on front face }
run second { after first, turns left, inside angle 90°; corner miter; length 10'; posts pole, 2 bays; height 3'; bottom 4"
  embed 2'; fill even; slats on front face }`;

it('leaves room for the wider cuts of angled ends on every board', async () => {
  const { job, layout } = await openJobs({ '/a.slat': CORNER }).open('/a.slat');
  const { plans } = takeoffOf(layout, job, () => false);
  const boards = plans.flatMap((plan) => plan.boards).filter(({ stock }) => stock === 'plank');
  const angled = boards.filter((board) => piecesOf(board).some(({ more }) => more > 0));
  expect(angled.length).toBeGreaterThan(0);
  for (const board of angled) {
    const pieces = piecesOf(board);
    // A cut between two pieces is as wide as the steeper of their ends; the last piece needs none behind it.
    const gaps = pieces.slice(1).map((piece, at) => {
      const slopes = [pieces[at], piece].flatMap(
        (one) => one?.piece.cut.ends.map(({ bevel }) => bevel) ?? [],
      );
      return inches(1 / 8) / Math.cos((Math.max(...slopes.map(Math.abs)) * Math.PI) / 180);
    });
    const used = [...pieces.map(({ length }) => length), ...gaps].reduce((sum, each) => sum + each, 0);
    expect(used).toBeLessThanOrEqual(board.length);
  }
});

it('counts the wider cuts of angled ends on boards on hand too', async () => {
  const sawn = await openJobs({ '/a.slat': CORNER }).open('/a.slat');
  const angled = sawn.layout.runs[0]?.pieces.find(({ cut }) => cut.ends.some(({ bevel }) => bevel !== 0));
  const length = ceilToStep(angled?.cut.longPoint ?? 0, sawn.job.measure.value.step);
  // 1/8 in at 45 degrees are 0.1768 in along the board, up to the mark 3/16 in: 1/16 in more for each piece.
  const alike =
    sawn.layout.runs[0]?.pieces.filter((one) => one.cut.longPoint === angled?.cut.longPoint) ?? [];
  const missing = async (boards: number, board: number) => {
    const hand = `on hand { plank ${boards} of ${formatLength(board, sawn.job.measure.value)} }`;
    const { job, layout } = await openJobs({ '/a.slat': `${CORNER}\n${hand}` }).open('/a.slat');
    const run = layout.runs[0];
    return run && pileOf(run, job).missing.find((one) => one.length === length);
  };
  expect(length).toBeGreaterThan(0);
  expect(await missing(alike.length, length + inches(1 / 16))).toBeUndefined();
  expect(await missing(Math.ceil(alike.length / 2), 2 * length + inches(1 / 8))).toBeDefined();
  expect(await missing(Math.ceil(alike.length / 2), 2 * length + inches(1 / 4))).toBeUndefined();
});
