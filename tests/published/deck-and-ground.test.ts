import { expect, it } from 'vitest';
import { faceOverlap, seeThroughFrom } from '../../language/figures/index.ts';
import type { Piece, RunLayout } from '../../language/layout/index.ts';
import { toMm } from '../../language/units/index.ts';
import { openJob } from '../jobs/index.ts';

// A job worked by hand: a screen at a deck's edge and one on the ground in line with it, slats by turns on both
// faces. Every figure stands beside its formula. Datum at the deck's surface, ground 650 below.

const JOB = `job { measure mm to 1 mm }
board lath { width 90 mm; thickness 20 mm; lengths 3 m, 3.6 m, 4.2 m }
post slim { along 90 mm; through 90 mm; lengths 2.4 m, 3 m }
post broad { along 140 mm; through 90 mm; lengths 3 m }
rail frame-rail { width 45 mm; thickness 90 mm; lengths 3 m }
pattern shadow { repeat lath; gap 42 mm; end anywhere }
deck planks { surface up 0 mm; boards 28 mm; joists 45 mm by 240 mm, 400 mm on center; ground down 650 mm }
run upper {
  on planks, posts outside rim
  placed at 0 m, 0 m bearing 90°
  length 4200 mm; posts slim, 3 bays
  height 1800 mm; bottom 60 mm; tops 30 mm above slats
  slats on alternate faces; fill shadow
}
run lower {
  placed at 4220 mm, 0 m bearing 90°
  length 3900 mm; posts slim, at most 1280 mm clear
  ground down 650 mm; embed 910 mm
  height 1790 mm; bottom 50 mm; tops 30 mm above slats
  slats on alternate faces; fill shadow
}
gate wicket in lower {
  opening 1000 mm from 1450 mm; posts broad; hinges on left
  hinge gap 10 mm; latch gap 10 mm
  frame frame-rail; brace none
  slats on alternate faces; flip upright
}
`;

const open = await openJob(JOB);
const upper = open.run('upper');
const lower = open.run('lower');

/** Lowest edges of slats of one bay on one face, from the lowest up, in millimeters. */
function bottoms({ pieces }: RunLayout, bay: number, side: Piece['side'], axis: 0 | 2 = 2): number[] {
  return pieces
    .filter((piece) => piece.role === 'slat' && piece.bay === bay && piece.side === side)
    .map(({ solid }) => toMm(Math.min(...solid.vertices.map((vertex) => vertex[axis]))))
    .sort((a, b) => a - b);
}

const every = (from: number, pitch: number, count: number) =>
  Array.from({ length: count }, (_, i) => from + i * pitch);

it('has no error, and says what a deck post asks', () => {
  expect(open.findings.filter(({ severity }) => severity === 'error')).toEqual([]);
  expect(open.findings.map(({ code }) => code)).toContain('deck-post-connection');
});

it('divides the deck edge: (4200 - 90) / 3 = 1370 from middle to middle, 1280 clear', () => {
  expect(upper.posts.map(({ from, to }) => toMm((from + to) / 2))).toEqual([45, 1415, 2785, 4155]);
  expect(upper.bays.map(({ clear }) => toMm(clear))).toEqual([1280, 1280, 1280]);
});

it('divides the ground run: 90 + 1220 + 140 + 1000 + 140 + 1220 + 90 = 3900', () => {
  expect(lower.posts.map(({ from, to }) => [toMm(from), toMm(to)])).toEqual([
    [0, 90],
    [1310, 1450],
    [2450, 2590],
    [3810, 3900],
  ]);
});

it('lays 13 slats on each face: H = (n + 1/2) w + (n - 1/2) g = 13.5 x 90 + 12.5 x 42 = 1740', () => {
  // Pitch 90 + 42 = 132, the back half of that higher.
  expect(bottoms(upper, 1, 'front').length + bottoms(upper, 1, 'back').length).toBe(26);
  const faces = [bottoms(upper, 1, 'front'), bottoms(upper, 1, 'back')].sort(
    (a, b) => (a[0] ?? 0) - (b[0] ?? 0),
  );
  expect(faces).toEqual([every(60, 132, 13), every(126, 132, 13)]);
  expect(toMm(upper.top)).toBe(1800);
});

it('carries the same lines down by five whole pitches: 5 x 132 = 660 = 650 + 60 - 50', () => {
  for (const bay of [1, 3]) {
    const faces = [bottoms(lower, bay, 'front'), bottoms(lower, bay, 'back')].sort(
      (a, b) => (a[0] ?? 0) - (b[0] ?? 0),
    );
    expect(faces).toEqual([every(-600, 132, 13), every(-534, 132, 13)]);
  }
  expect([toMm(lower.top), toMm(lower.top - lower.ground)]).toEqual([1140, 1790]);
  const shared = bottoms(lower, 1, 'front').filter((z) => bottoms(upper, 1, 'front').includes(z));
  // The front ends with the higher slat.
  expect(shared).toEqual(every(126, 132, 8));
});

it('cuts slats over the posts: 90 + 1220 + 140 = 1450, 52 of them', () => {
  const slats = lower.pieces.filter(({ role, gate }) => role === 'slat' && gate === undefined);
  expect(new Set(slats.map(({ cut }) => toMm(cut.longPoint)))).toEqual(new Set([1450]));
  expect(slats).toHaveLength(52);
});

it('hangs a leaf of 1000 - 10 - 10 = 980 by 1740 with edges of (980 - 7.5 x 90 - 6.5 x 42) / 2 = 16', () => {
  const [leaf] = lower.leaves;
  expect([toMm(leaf?.width ?? 0), toMm(leaf?.height ?? 0)]).toEqual([980, 1740]);
  const x0 = toMm(leaf?.x0 ?? 0);
  const faces = (['front', 'back'] as const)
    .map((side) => bottoms(lower, 2, side, 0).map((x) => x - x0))
    .sort((a, b) => (a[0] ?? 0) - (b[0] ?? 0));
  expect(faces).toEqual([every(16, 132, 7), every(82, 132, 7)]);
  const slats = lower.pieces.filter(({ role, gate }) => role === 'slat' && gate === 'wicket');
  expect(slats.map(({ cut }) => toMm(cut.longPoint))).toEqual(Array.from({ length: 14 }, () => 1740));
});

it('makes deck posts 1800 + 30 + 28 + 240 = 2098 and end posts on the ground 1140 + 650 + 30 + 910 = 2730', () => {
  const long = ({ pieces }: RunLayout) =>
    pieces.filter(({ role }) => role === 'post').map(({ cut }) => toMm(cut.longPoint));
  expect(long(upper)).toEqual([2098, 2098, 2098, 2098]);
  expect([long(lower)[0], long(lower)[3]]).toEqual([2730, 2730]);
});

it('overlaps by (90 - 42) / 2 = 24, and is seen through from atan(24 / 90) = 14.93 degrees on', () => {
  const { overlap = 0, cavity = 0 } = faceOverlap(upper.pieces) ?? {};
  expect([toMm(overlap), toMm(cavity)]).toEqual([24, 90]);
  expect(seeThroughFrom(overlap, cavity)).toBeCloseTo(14.93, 2);
});
