import { expect, it } from 'vitest';
import type { Piece } from '../../language/layout/index.ts';
import { toInches } from '../../language/units/index.ts';
import { openOffset } from './made-offset.ts';

const slats = (pieces: readonly Piece[]) => pieces.filter(({ role }) => role === 'slat');
const cleats = (pieces: readonly Piece[]) => pieces.filter(({ role }) => role === 'cleat');
const sixteenthsBelow = (inches: number) => Math.floor(inches * 16 + 1e-9) / 16;
const range = (piece: Piece, axis: 0 | 1 | 2) => {
  const all = piece.solid.vertices.map((vertex) => toInches(vertex[axis]));
  return [Math.min(...all), Math.max(...all)];
};

it('stands the posts of a return behind one another, and its slats between them', async () => {
  const { layout, bridge } = await openOffset({ place: 'after quay, steps back 18", closed by return' });
  // In line: the second run begins where the last post of the first does, 120 - 3-1/2.
  expect(layout.places.get('mole')?.origin.map(toInches)).toEqual([116.5, 18, 0]);
  expect(slats(bridge)).toHaveLength(10);
  for (const slat of slats(bridge)) {
    // 18 between the middles less two halves of 3-1/2 is 14-1/2; an end gap of 1/8 at each end: 14-1/4.
    expect(toInches(slat.cut.longPoint)).toBe(14.25);
    // In the second run's frame its post begins at -1-3/4, the one before ends at -18 + 1-3/4.
    expect(range(slat, 1)).toEqual([-16.125, -1.875]);
    // 3/4 in the middle of 3-1/2.
    expect(range(slat, 0)).toEqual([1.375, 2.125]);
    expect(slat.supports).toHaveLength(4);
  }
  expect(cleats(bridge).map((cleat) => range(cleat, 1))).toEqual([
    [-16.25, -15.5],
    [-16.25, -15.5],
    [-2.5, -1.75],
    [-2.5, -1.75],
  ]);
});

it('turns a return the other way where the run steps forward', async () => {
  const { layout, bridge } = await openOffset({ place: 'after quay, steps forward 18", closed by return' });
  expect(layout.places.get('mole')?.origin.map(toInches)).toEqual([116.5, -18, 0]);
  for (const slat of slats(bridge)) expect(range(slat, 1)).toEqual([1.875, 16.125]);
  // Its front is at the right of one who walks from the first run to the second: before 1-3/8, where slats begin.
  const front = cleats(bridge).filter(({ side }) => side === 'front');
  for (const cleat of front) expect(range(cleat, 0)).toEqual([0.625, 1.375]);
});

it('puts a return between the sides of the posts where there is no room between their faces', async () => {
  const { layout, bridge } = await openOffset({ place: 'after quay, steps back 4-1/2", closed by return' });
  // Side by side, as far apart as a slat is thick.
  expect(layout.places.get('mole')?.origin.map(toInches)).toEqual([120.75, 4.5, 0]);
  expect(cleats(bridge)).toEqual([]);
  for (const slat of slats(bridge)) {
    // From the front of one post, -4-1/2 - 1-3/4, to the back of the other, 1-3/4: 8.
    expect(range(slat, 1)).toEqual([-6.25, 1.75]);
    expect(range(slat, 0)).toEqual([-0.75, 0]);
    expect(slat.supports).toEqual(['quay/p3', 'mole/p1']);
  }
});

it.each([['front face'], ['back face'], ['both faces']])(
  'puts a return between the sides of the posts where slats lie on the %s',
  async (face) => {
    const { bridge } = await openOffset(
      { place: 'after quay, steps back 18", closed by return', slats: `slats on ${face}` },
      { slats: `slats on ${face}` },
    );
    expect(slats(bridge)).toHaveLength(10);
    for (const slat of slats(bridge)) expect(range(slat, 1)).toEqual([-19.75, 1.75]);
  },
);

it.each([
  // Middle to middle 6, posts 3-1/2: 2-1/2 between them; 5-1/2 wide it has 1-1/2 on each.
  ['6"', 'wide', [[-5.75, -0.25]], false],
  // Wider than from outer face to outer face, 6 + 3-1/2 = 9-1/2: ripped to that.
  ['6"', 'big', [[-7.75, 1.75]], true],
  // 4-1/2 between the posts leave 1/2 on each, too little: two meet in the middle, 4 before the post's middle.
  [
    '8"',
    'wide',
    [
      [-9.5, -4],
      [-4, 1.5],
    ],
    false,
  ],
])('closes %s with a filler of %s', async (step, board, y, ripped) => {
  const { bridge, codes, layout } = await openOffset({
    place: `after quay, steps back ${step}, closed by filler ${board}`,
  });
  expect(codes).not.toContain('bridge-impossible');
  expect(toInches(layout.places.get('mole')?.origin[0] ?? 0)).toBe(120.75);
  expect(bridge.map((piece) => range(piece, 1))).toEqual(y);
  for (const piece of bridge) {
    expect(piece.cut.ripped).toBe(ripped);
    expect(range(piece, 0)).toEqual([-0.75, 0]);
    // Over the height of the slats: 2 to 60.
    expect(range(piece, 2)).toEqual([2, 60]);
    expect(toInches(piece.cut.longPoint)).toBe(58);
  }
});

// Worked out by hand: the middles of the posts' sides are `on` apart along the runs and `step` across.
it.each([
  // tan a = 10/48: a = 11.7683 degrees, cos a = 0.978980; (48 - 2/8) / cos a + 3/4 tan a = 48.7753 + 0.1563.
  ['back', '48"', '10"', 11.7683, 48.9315, 0.3125],
  ['forward', '48"', '10"', 11.7683, 48.9315, 0.3125],
  // tan a = 3/4: a = 36.8699 degrees, cos a = 0.8; (16 - 1/4) / 0.8 + 3/4 * 3/4 = 19.6875 + 0.5625.
  ['back', '16"', '12"', 36.8699, 20.25, 1.125],
])('sets a panel %s at the angle of %s along and %s across', async (way, on, step, angle, tips, taper) => {
  const { bridge, layout, codes } = await openOffset({
    place: `after quay, ${on} on, steps ${way} ${step}, closed by panel`,
  });
  expect(codes.filter((code) => /bridge|offset|overlap/.test(code))).toEqual([]);
  expect(toInches(layout.places.get('mole')?.origin[0] ?? 0)).toBe(120 + Number.parseFloat(on));
  const sign = way === 'back' ? 1 : -1;
  expect(slats(bridge)).toHaveLength(10);
  for (const { cut } of slats(bridge)) {
    expect(toInches(cut.longPoint)).toBe(sixteenthsBelow(tips));
    // Long points and short points differ at both ends by the thickness times the tangent.
    expect(toInches(cut.longPoint - cut.shortPoint)).toBeCloseTo(taper, 4);
    for (const end of cut.ends) {
      expect(end.bevel).toBeCloseTo(sign * angle, 3);
      expect(end.miter).toBe(0);
    }
  }
  for (const cleat of cleats(bridge)) {
    expect(cleat.cut.edge).toBeCloseTo(angle, 3);
    // One edge lies on the side of its post: four corners of it, at 0 or at the space before that.
    const x = cleat.solid.vertices.map((vertex) => toInches(vertex[0]));
    const side = cleat.key.includes('-left-') ? -Number.parseFloat(on) : 0;
    expect(x.filter((at) => Math.abs(at - side) < 1e-6)).toHaveLength(4);
    // What the bevel takes from its narrow face: 3/4 tan a of the width, measured along the panel.
    const [wide, narrow] = [0, 3].map((corner) => {
      const [a, b] = [cleat.solid.vertices[corner], cleat.solid.vertices[corner === 0 ? 1 : 2]];
      return Math.hypot(...[0, 1].map((axis) => toInches((b?.[axis] ?? 0) - (a?.[axis] ?? 0))));
    });
    expect(Math.max(wide ?? 0, narrow ?? 0)).toBeCloseTo(0.75, 6);
    expect(Math.min(wide ?? 0, narrow ?? 0)).toBeCloseTo(0.75 - 0.75 * Math.tan((angle * Math.PI) / 180), 4);
  }
});

it('keeps the courses of a bridge on the lines of the run', async () => {
  for (const bridged of ['steps back 18", closed by return', '4\' on, steps back 10", closed by panel']) {
    const { bridge, run } = await openOffset({ place: `after quay, ${bridged}` });
    const lines = run('mole').courses.get(1) ?? [];
    expect(slats(bridge).map((slat) => [slat.course, ...range(slat, 2)])).toEqual(
      lines.map(({ number, start, end }) => [number, toInches(end), toInches(start)]),
    );
    expect(lines).toEqual(run('quay').courses.get(2));
  }
});

it('closes only the height at which both posts stand and both runs have slats', async () => {
  const low = { height: "4'" };
  const panel = await openOffset({ place: 'after quay, steps back 18", closed by return' }, low);
  const heights = slats(panel.bridge).map((slat) => range(slat, 2)[1]);
  expect(Math.max(...heights.map((z) => z ?? 0))).toBeLessThanOrEqual(48);
  expect(heights.length).toBeGreaterThan(5);
  const filler = await openOffset({ place: 'after quay, steps back 6", closed by filler big' }, low);
  expect(filler.bridge.map((piece) => range(piece, 2))).toEqual([[2, 48]]);
});

// By hand. Slats of the second run end 2" above its highest ground, 10 of them, 1/3" apart. In its first bay the ground
// lies 8" to 5" lower: one more course goes in there, 1-2/3 + 5 - 2 = 4-2/3 wide at its narrow end. What closes the
// offset goes another way, and is made of the level courses alone.
it.each([
  'steps back 18", closed by return',
  'steps back 4-1/2", closed by return',
  '4\' on, steps back 18", closed by panel',
])('leaves a course that is ripped to the ground to its bay: %s', async (place) => {
  const { run, bridge, codes } = await openOffset(
    {
      place: `after quay, ${place}`,
      more: `ground at 0' down 8", at 5' down 5", at 10' down 0"; slope level top; last course follows ground`,
    },
    { height: `5' 10"`, more: 'ground down 10"' },
  );
  expect(codes).not.toContain('bridge-impossible');
  const tapered = run('mole').pieces.filter(({ cut }) => cut.taper);
  expect(tapered.map(({ key }) => key)).toEqual(['mole/b1/c11']);
  expect(toInches(Math.min(...(tapered[0]?.cut.taper ?? [])))).toBeCloseTo(4.67, 1);
  expect(bridge.filter(({ cut }) => cut.taper)).toEqual([]);
  expect(slats(bridge)).toHaveLength(10);
});
