import { expect, it } from 'vitest';
import { board, jobOf, patternOf, postOf, runOf, sourced } from '../../../tests/specs/index.ts';
import { layOutRun } from '../../layout/index.ts';
import { inches } from '../../units/index.ts';
import { gateFigures } from './gates.ts';

/** A leaf 40" by 60" with a frame of 3-1/2" by 1-1/2" and so many rails. */
function sag(count: number) {
  const slat = board('slat', inches(3.5), inches(0.75));
  const spec = runOf({
    length: inches(144),
    post: postOf('stake', inches(3.5), inches(3.5)),
    spacing: { kind: 'at-most', limit: inches(96), measured: 'clear' },
    bottom: inches(2),
    height: inches(62),
    mounting: { kind: 'face', face: 'front' },
    pattern: patternOf('rows', [slat], { gap: inches(0.5) }),
    gates: [
      {
        name: 'gate',
        station: inches(50),
        opening: inches(40.75),
        post: postOf('stake', inches(3.5), inches(3.5)),
        frame: board('frame', inches(3.5), inches(1.5), 'rail'),
        pattern: patternOf('rows', [slat], { gap: inches(0.5) }),
        flip: { upright: true },
      },
    ],
  });
  const hung = {
    ...spec,
    gates: spec.gates.map((gate) => ({ ...gate, rails: sourced({ kind: 'count' as const, count }) })),
  };
  const run = layOutRun(hung);
  const [figures] = gateFigures(run, jobOf([hung]));
  const working = figures?.workings.find(({ code }) => code === 'gate-sag');
  const modulus = working?.inputs.find(({ symbol }) => symbol === 'E')?.value;
  const stiffness = typeof modulus === 'object' ? modulus.value : 0;
  return {
    weight: figures?.wet ?? 0,
    stiffness,
    sag: working?.figure.value ?? 0,
    braces: run.pieces.filter(({ role }) => role === 'brace').length,
  };
}

// By hand: inside 40 - 7 = 33 wide. One brace: rise 60 - 7 = 53. Two: clear heights (60 - 10.5) / 2 = 24.75 each. A brace
// alone drops W L / (2 E A sin2 a), A = 5.25 in2 (statics of a bar, as in the formula's own test); two alike, each with
// half the load, by half of that.
it.each([
  [2, 1, 53],
  [3, 2, 24.75],
])('shares the drop of a leaf with %i rails among its %i braces', (rails, braces, rise) => {
  const told = sag(rails);
  expect(told.braces).toBe(braces);
  const length = Math.hypot(33, rise);
  const alone = (told.weight * length) / (2 * told.stiffness * 5.25 * (rise / length) ** 2);
  expect(told.sag).toBeCloseTo(alone / braces, 6);
});
