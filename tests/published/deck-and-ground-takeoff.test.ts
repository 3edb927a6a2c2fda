import { expect, it } from 'vitest';
import { coatedOf, planCuts, takeoffOf } from '../../language/takeoff/index.ts';
import { mm, toMm } from '../../language/units/index.ts';
import { openJob } from '../jobs/index.ts';

// What a job worked by hand takes: slats by turns on both faces of a deck's edge and of a ground run in line with it.
// Every figure stands beside its formula; prices are invented.

const JOB = `job { measure mm to 1 mm }
board lath { width 90 mm; thickness 20 mm; lengths 3 m €2.10 per meter, 3.6 m €2.10 per meter, 4.2 m €2.10 per meter }
post slim { along 90 mm; through 90 mm; lengths 2.4 m, 3 m }
pattern shadow { repeat lath; gap 42 mm; end anywhere }
run upper {
  length 4200 mm; posts slim, 3 bays; embed 300 mm
  height 1800 mm; bottom 60 mm
  slats on alternate faces; fill shadow
}
`;

const { job, layout, run } = await openJob(JOB);
const takeoff = takeoffOf(layout, job, () => false);
const slats = takeoff.plans.find(({ bought }) => bought.name === 'lath');

it('lays 26 lines of 4200 in two pieces each, as a board of 4200 is trimmed: 109.2 m, and buys no more than 26 boards of 4.2 m at 8.82', () => {
  expect(toMm(slats?.demands[0]?.total ?? 0)).toBeLessThanOrEqual(26 * 4200);
  expect(slats?.proven).toBe(true);
  expect(run('upper').pieces.filter(({ role }) => role === 'slat')).toHaveLength(26 * 2);
  expect(slats?.cost?.minor).toBeLessThanOrEqual(26 * 882);
  expect(slats?.cost?.currency).toBe('EUR');
  expect(slats?.cost?.minor).toBe(
    [...(slats?.buy ?? [])].reduce((sum, [length, count]) => sum + (count * toMm(length) * 210) / 1000, 0),
  );
});

it('counts two screws at each crossing of slats of 90 mm, and a tenth more', () => {
  // 26 lines of two pieces, over three posts and over two: 26 x 5 x 2 = 260; 286 with a tenth more.
  expect(takeoff.items.find(({ name }) => name === 'screw')).toMatchObject({ net: 260, count: 286 });
});

it('gets three pieces of 24 in and one of 23-5/8 from 96 in with a kerf of 1/8 (geometry)', () => {
  const pieces = (fourth: number) => [
    { label: 'a', length: 24, count: 3 },
    { label: 'b', length: fourth, count: 1 },
  ];
  const boards = (fourth: number) => {
    const plan = planCuts({ kerf: 1 / 8, pieces: pieces(fourth), stock: [{ length: 96, price: 1 }] });
    return 'boards' in plan ? plan.boards.length : 0;
  };
  // 3 x 24 + 3 x 1/8 = 72-3/8, and 96 less that is 23-5/8.
  expect(boards(23.625)).toBe(1);
  expect(boards(24)).toBe(2);
});

it('coats faces and edges: (26 x 4.2 + 52 x 1.45 + 14 x 1.74) m x 2 (0.09 + 0.02) m = 45.97 m2', () => {
  const [slat] = run('upper').pieces.filter(({ role }) => role === 'slat');
  if (!slat) throw new Error('no slat');
  const area = (count: number, length: number) =>
    count * coatedOf({ ...slat, cut: { ...slat.cut, longPoint: mm(length) } }, run('upper'));
  const inches2 = area(26, 4200) + area(52, 1450) + area(14, 1740);
  expect((inches2 * 25.4 ** 2) / 1e6).toBeCloseTo(45.97, 2);
});
