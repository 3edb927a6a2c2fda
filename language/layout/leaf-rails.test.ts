import { expect, it } from 'vitest';
import {
  board,
  type GateParts,
  patternOf,
  postOf,
  type RunParts,
  runOf,
  sourced,
} from '../../tests/specs/index.ts';
import type { LeafRails } from '../model/index.ts';
import { METRIC, mm, type Ticks } from '../units/index.ts';
import { findOverlaps, findUnsupported, layOutRun, type Piece, type RunLayout } from './index.ts';

const LARCH = board('larch', mm(90), mm(20));
const LINES = patternOf('lines', [LARCH], { gap: mm(42) });

/** A leaf of 980 by 1740, 50 above ground, hung with 10 mm at each side; frame of 45 by 90 on edge. */
function hung(
  rails: LeafRails | undefined,
  gate: Partial<GateParts> = {},
  run: Partial<RunParts> = {},
): RunLayout {
  const spec = runOf({
    measure: METRIC,
    length: mm(3900),
    post: postOf('spruce', mm(90), mm(90)),
    spacing: { kind: 'at-most', limit: mm(1300), measured: 'clear' },
    ground: mm(-650),
    bottom: mm(50),
    height: mm(1790),
    mounting: { kind: 'alternate' },
    pattern: LINES,
    gates: [
      {
        name: 'gate',
        station: mm(1450),
        opening: mm(1000),
        hingeGap: mm(10),
        latchGap: mm(10),
        post: postOf('wide', mm(140), mm(90)),
        frame: board('frame', mm(45), mm(90), 'rail'),
        brace: null,
        pattern: LINES,
        flip: { upright: true },
        mounting: { kind: 'alternate' },
        ...gate,
      },
    ],
    ...run,
  });
  return layOutRun({
    ...spec,
    gates: spec.gates.map((one) => (rails ? { ...one, rails: sourced(rails) } : one)),
  });
}

const leafOf = (run: RunLayout) => run.pieces.filter(({ gate, role }) => gate === 'gate' && role !== 'post');

const reach = ({ solid }: Piece, axis: 0 | 1 | 2): [number, number] => {
  const all = solid.vertices.map((vertex) => vertex[axis]);
  return [Math.min(...all), Math.max(...all)];
};

const named = (run: RunLayout, key: string): Piece | undefined =>
  run.pieces.find((piece) => piece.key === `bank/gate/${key}`);

const middle = (piece: Piece | undefined): Ticks | undefined => {
  if (!piece) return undefined;
  const [low, high] = reach(piece, 2);
  return (low + high) / 2;
};

// By hand: n = 7 slats of 90 with 42 between take (n + 1/2) 90 + (n - 1/2) 42 = 675 + 273 = 948 of the 980, which
// leaves 16 at each edge. Front from 16 in steps of 132; back half a pitch farther, from 16 + 66 = 82.
it('puts seven slats on each face of a leaf with three rails, sixteen from its edges', () => {
  const run = hung({ kind: 'count', count: 3 });
  expect(run.problems).toEqual([]);
  const [leaf] = run.leaves;
  expect([leaf?.width, leaf?.height]).toEqual([mm(980), mm(1740)]);
  const lefts = (side: Piece['side']) =>
    leafOf(run)
      .filter((piece) => piece.role === 'slat' && piece.side === side)
      .map((piece) => (reach(piece, 0)[0] - (leaf?.x0 ?? 0)) / mm(1));
  expect(lefts('front')).toEqual([16, 148, 280, 412, 544, 676, 808]);
  expect(lefts('back')).toEqual([82, 214, 346, 478, 610, 742, 874]);
  const rails = leafOf(run).filter(({ role }) => role === 'rail');
  expect(rails.map(({ key, label }) => [key, label])).toEqual([
    ['bank/gate/rail-top', 'G1-RT'],
    ['bank/gate/rail-middle-1', 'G1-RM1'],
    ['bank/gate/rail-bottom', 'G1-RB'],
  ]);
  // Between stiles of 45: 980 - 90.
  expect(rails.map(({ cut }) => cut.longPoint)).toEqual([mm(890), mm(890), mm(890)]);
  // (1740 - 3 * 45) / 2 = 802.5 clear above and below: on the tape's marks, 802 below.
  const [low] = reach(rails[1] as Piece, 2);
  expect((low - (leaf?.z0 ?? 0)) / mm(1)).toBe(45 + 802);
  // Frame 90 deep and a slat on each face: 130 through, as the run.
  const depths = leafOf(run).flatMap((piece) => reach(piece, 1));
  expect((Math.max(...depths) - Math.min(...depths)) / mm(1)).toBe(130);
  expect(findOverlaps(run)).toEqual([]);
  expect(findUnsupported(run)).toEqual([]);
  for (const slat of leafOf(run).filter(({ role }) => role === 'slat'))
    expect(slat.supports).toContain('bank/gate/rail-middle-1');
});

it('places middle rails by their middle above ground, and carries courses of the run on', () => {
  const at = hung({ kind: 'at', heights: [sourced(mm(600)), sourced(mm(1200))] });
  expect(middle(named(at, 'rail-middle-1'))).toBe(mm(-650 + 1200));
  expect(middle(named(at, 'rail-middle-2'))).toBe(mm(-650 + 600));
  const on = hung({ kind: 'courses', courses: [4, 9] });
  expect(on.problems).toEqual([]);
  const lines = on.courses.get(1) ?? [];
  for (const [rail, number] of [
    [1, 4],
    [2, 9],
  ] as const) {
    const course = lines.find((one) => one.number === number);
    expect(course).toBeDefined();
    expect(middle(named(on, `rail-middle-${rail}`))).toBe(((course?.start ?? 0) + (course?.end ?? 0)) / 2);
  }
});

it.each(['left', 'right'] as const)('braces every space between rails, up from the %s hinges', (hinges) => {
  const run = hung({ kind: 'count', count: 3 }, { brace: board('bar', mm(70), mm(45)), hinges });
  expect(run.problems).toEqual([]);
  for (const [name, above, below] of [
    ['brace-1', 'rail-top', 'rail-middle-1'],
    ['brace-2', 'rail-middle-1', 'rail-bottom'],
  ] as const) {
    const brace = named(run, name);
    expect(brace?.role).toBe('brace');
    const vertices = brace?.solid.vertices ?? [];
    const lowest = vertices.reduce((best, one) => (one[2] < best[2] ? one : best));
    const leaf = run.leaves[0];
    const center = ((leaf?.x0 ?? 0) + (leaf?.x1 ?? 0)) / 2;
    expect(lowest[0] < center).toBe(hinges === 'left');
    expect(Math.max(...vertices.map(([, , z]) => z))).toBeLessThanOrEqual(
      reach(named(run, above) as Piece, 2)[0] + 1,
    );
    expect(lowest[2]).toBeGreaterThanOrEqual(reach(named(run, below) as Piece, 2)[1] - 1);
  }
  expect(findOverlaps(run)).toEqual([]);
  expect(findUnsupported(run)).toEqual([]);
});

it('tells why a middle rail cannot be where it is stated, and builds the leaf without it', () => {
  const why = (run: RunLayout) => run.problems.map(({ code, args }) => [code, args.why]);
  const cases: [RunLayout, string][] = [
    [hung({ kind: 'at', heights: [sourced(mm(1780))] }), 'outside'],
    [hung({ kind: 'at', heights: [sourced(mm(600)), sourced(mm(630))] }), 'meets'],
    [hung({ kind: 'courses', courses: [40] }), 'no-course'],
    [
      hung(
        { kind: 'count', count: 3 },
        { mounting: { kind: 'between' }, cleat: board('nib', mm(20), mm(15), 'cleat') },
      ),
      'between',
    ],
  ];
  for (const [run, reason] of cases) {
    expect(why(run)).toEqual([['rail-misplaced', reason]]);
    expect(run.leaves).toHaveLength(1);
    expect(findOverlaps(run)).toEqual([]);
  }
});

it('looks through a leaf above and below its middle rail, not through it', () => {
  const single = { kind: 'face', face: 'front' } as const;
  const plain = hung(undefined, { mounting: single }).openings.filter(({ gate }) => gate === 'gate');
  const run = hung({ kind: 'count', count: 3 }, { mounting: single });
  const own = run.openings.filter(({ gate }) => gate === 'gate');
  const area = (all: typeof own) => all.reduce((sum, o) => sum + (o.x1 - o.x0) * (o.z1 - o.z0), 0);
  const across = plain.reduce((sum, o) => sum + o.x1 - o.x0, 0);
  expect(area(plain) - area(own)).toBe(across * mm(45));
  expect(new Set(own.map(({ key }) => key)).size).toBe(own.length);
});
