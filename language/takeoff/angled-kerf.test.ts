import { expect, it } from 'vitest';
import { openJobs } from '../../tests/jobs/index.ts';
import { ceilToStep, formatLength, inches } from '../units/index.ts';
import { moreKerf } from './angled-kerf.ts';
import { pileOf } from './pile.ts';
import { cutsOf, piecesOf } from './planned-board.ts';
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
  const angled = boards.filter((board) => piecesOf(board).some(({ ends }) => ends !== undefined));
  expect(angled.length).toBeGreaterThan(0);
  for (const board of angled) {
    // One by one along the board: where each end is at either face, by its bevel over 3/4 in, and a kerf along the cut.
    const pieces = board.parts.flatMap(({ at, strips }) =>
      strips.flatMap((strip) => strip.pieces.map((one) => ({ one, at: at + one.at }))),
    );
    const edges = pieces.map(({ one, at }) => {
      const [first = 0, second = 0] = one.ends?.map(({ through }) => through) ?? [];
      const [low, high] = [at + Math.abs(first) / 2, at + one.length - Math.abs(second) / 2];
      return [-0.5, 0.5].map((face) => [low + first * face, high + second * face] as const);
    });
    for (const [at, faces] of edges.entries()) {
      for (const [low, high] of faces) {
        expect(low).toBeGreaterThanOrEqual(-1e-6);
        expect(high).toBeLessThanOrEqual(board.length + 1e-6);
      }
      const before = edges[at - 1];
      const steepest = Math.max(
        ...[pieces[at - 1], pieces[at]].map((piece, k) => Math.abs(piece?.one.ends?.[1 - k]?.through ?? 0)),
      );
      const kerf = inches(1 / 8) * Math.hypot(1, steepest / inches(3 / 4));
      for (const [face, [low]] of faces.entries())
        if (before) expect(low - (before[face]?.[1] ?? 0)).toBeGreaterThanOrEqual(kerf - 1e-3);
    }
  }
});

it('lays mitered slats so that their bevels meet, where that takes one board instead of two', async () => {
  // Slats of 60-1/4 in. Tip to tip two take 120.5 and a cut of 0.177 in; with parallel bevels over 3/4 in 0.75 less: 119.93.
  const text = (material: string) => `job "Corner" { saw kerf 1/8" }
${material}
board plank { width 3-1/2"; thickness 3/4"; lengths 10' $11 each${material === '' ? '' : '; made of stuff'} }
post pole { along 3-1/2"; through 3-1/2"; lengths 8' $14 each }
pattern even { repeat plank; gap 1/2"; end anywhere }
run first { length 4' 11-1/2"; posts pole, 1 bays; height 3'; bottom 4"; embed 2'; fill even; slats on front face }
run second { after first, turns left, inside angle 90°; corner miter; length 4' 11-1/2"; posts pole, 1 bays; height 3'
  bottom 4"; embed 2'; fill even; slats on front face }`;
  const planks = async (material: string) => {
    const { job, layout } = await openJobs({ '/a.slat': text(material) }).open('/a.slat');
    return takeoffOf(layout, job, () => false).plans.find(({ bought }) => bought.name === 'plank');
  };
  const wood = await planks('');
  const slats = wood?.demands.reduce((sum, { count }) => sum + count, 0) ?? 0;
  expect(wood?.demands.flatMap(({ wanted }) => wanted.map(({ length }) => length))).toEqual([inches(60.25)]);
  expect(wood?.boards).toHaveLength(slats / 2);
  expect(wood).toMatchObject({ proven: true, cost: { minor: 1100 * (slats / 2) } });
  // A cut of its own for each slat: the bevels of two are one cut, and each is cut off square.
  expect(wood?.boards.map(cutsOf)).toEqual(wood?.boards.map(() => 2));
  // With the same face up no bevels meet, and that is the most that can be said.
  const composite = await planks('material stuff { kind composite }');
  expect(composite?.boards).toHaveLength(slats);
  expect(composite?.proven).toBe(false);
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
