import { expect, it } from 'vitest';
import { board, patternOf, postOf, runOf } from '../../tests/specs/index.ts';
import { layOutRun } from '../layout/index.ts';
import { METRIC, mm } from '../units/index.ts';
import { faceOverlap, seeThroughFrom } from './index.ts';

// Common practice: the overlap is (w - g) / 2, one sees through from atan(overlap / cavity). Boards of 90 with gaps
// of 42 on posts 90 through: 24 over 90 is 14.93 degrees.
it('is 24 mm and 14.9 degrees for 90 mm boards 42 mm apart on 90 mm posts', () => {
  const run = layOutRun(
    runOf({
      measure: METRIC,
      length: mm(2000),
      post: postOf('post', mm(90), mm(90)),
      spacing: { kind: 'bays', count: 1 },
      bottom: mm(60),
      height: mm(1800),
      mounting: { kind: 'alternate' },
      pattern: patternOf('even', [board('larch', mm(90), mm(20))], { gap: mm(42) }),
    }),
  );
  expect(faceOverlap(run.pieces)).toMatchObject({ overlap: mm(24), cavity: mm(90) });
  expect(seeThroughFrom(24, 90)).toBeCloseTo(14.93, 2);
});

/** Whether any of many parallel lines, `angle` off straight on, passes both faces: an independent count. */
function passes(width: number, gap: number, thickness: number, cavity: number, angle: number): boolean {
  const pitch = width + gap;
  const slope = Math.tan((angle * Math.PI) / 180);
  const inSlat = (z: number, from: number) => (((z - from) % pitch) + pitch) % pitch < width;
  const free = (y: number, start: number, from: number) => !inSlat(start + y * slope, from);
  for (let i = 0; i < 4000; i++) {
    const start = (i / 4000) * pitch;
    const depths = [0, 0.25, 0.5, 0.75, 1].map((part) => part * thickness);
    const front = depths.every((y) => free(y, start, 0));
    if (front && depths.every((y) => free(thickness + cavity + y, start, pitch / 2))) return true;
  }
  return false;
}

it.each([
  [90, 42, 20, 90],
  [5.5, 4, 0.75, 3.5],
  [5.5, 2, 0.75, 3.5],
])(
  'opens where lines cast through boards %d wide, %d apart, %d thick, %d between begin to pass',
  (...size) => {
    const [width, gap, , cavity] = size;
    const angle = seeThroughFrom((width - gap) / 2, cavity);
    expect(passes(...size, angle - 0.3)).toBe(false);
    expect(passes(...size, angle + 0.3)).toBe(true);
  },
);

it('gives a figure for faces that do not overlap or touch', () => {
  expect([seeThroughFrom(0, 90), seeThroughFrom(-3, 90), seeThroughFrom(24, 0)]).toEqual([0, 0, 90]);
  expect(faceOverlap([])).toBeUndefined();
});
