import { expect, it } from 'vitest';
import { board, patternOf, postOf, runOf, sourced } from '../../tests/specs/index.ts';
import { findOverlaps, findUnsupported, layOutRun } from '../layout/index.ts';
import { METRIC, mm } from '../units/index.ts';
import { clearWhenOpen, handOf, leafDiagonal } from './index.ts';

const LARCH = board('larch', mm(90), mm(20));

/** A leaf of 980 by 1740 in an opening of 1000, 10 at each side: 20 mm slats on both faces of a frame 90 deep. */
function run(hinges: 'left' | 'right' = 'left', opensTo?: string, latch?: number) {
  const spec = runOf({
    measure: METRIC,
    length: mm(3900),
    post: postOf('spruce', mm(90), mm(90)),
    spacing: { kind: 'at-most', limit: mm(1300), measured: 'clear' },
    bottom: mm(50),
    height: mm(1790),
    mounting: { kind: 'alternate' },
    pattern: patternOf('even', [LARCH], { gap: mm(42) }),
    gates: [
      {
        name: 'gate',
        station: mm(1450),
        opening: mm(1000),
        hinges,
        hingeGap: mm(10),
        latchGap: mm(10),
        post: postOf('wide', mm(140), mm(90)),
        frame: board('frame', mm(45), mm(90), 'rail'),
        brace: null,
        pattern: patternOf('even', [LARCH], { gap: mm(42) }),
        flip: { upright: true },
        mounting: { kind: 'alternate' },
      },
    ],
  });
  const gates = spec.gates.map((gate) => ({
    ...gate,
    ...(opensTo === undefined ? {} : { opensTo: sourced(opensTo) }),
    ...(latch === undefined ? {} : { latchPost: sourced(postOf('slim', mm(latch), mm(90))) }),
  }));
  const out = layOutRun({ ...spec, gates });
  const [leaf] = out.leaves;
  if (!leaf) throw new Error('there is no leaf');
  return { out, leaf, pieces: out.pieces.filter(({ gate, role }) => gate === 'gate' && role !== 'post') };
}

// Worked by hand: sqrt(980^2 + 1740^2) = 1997.0 and atan(1740 / 980) = 60.6 degrees.
it('has the diagonal and its angle', () => {
  const { leaf } = run();
  const { length, angle } = leafDiagonal(leaf);
  expect(length / mm(1)).toBeCloseTo(1997.0, 1);
  expect(angle).toBeCloseTo(60.6, 1);
});

// By hand: 1000 less 10 beside the hinges less 90 + 20 + 20 of leaf that stands in the way.
it('leaves what hinge gap and thickness do not take', () => {
  const { leaf, pieces } = run();
  expect(clearWhenOpen(leaf, pieces)).toBe(mm(860));
});

it('has a hand for one at the front', () => {
  expect(handOf(run('left').leaf, 'garden')).toBeUndefined();
  expect(handOf(run('left', 'garden').leaf, 'garden')).toEqual({ hand: 'left', way: 'pulled' });
  expect(handOf(run('right', 'lane').leaf, 'garden')).toEqual({ hand: 'right', way: 'pushed' });
});

it.each(['left', 'right'] as const)(
  'hangs from a wide post and shuts on a slim one, hinges on the %s',
  (side) => {
    const { out } = run(side, undefined, 95);
    const widths = out.posts.flatMap(({ gate, from, to }) => (gate ? [(to - from) / mm(1)] : []));
    expect(widths).toEqual(side === 'left' ? [140, 95] : [95, 140]);
    expect(out.problems).toEqual([]);
    expect(findOverlaps(out)).toEqual([]);
    expect(findUnsupported(out)).toEqual([]);
  },
);
