import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  arbitraryRunSpec,
  bicycleCourt,
  board,
  compostBay,
  leafBetween,
  originOf,
  patternOf,
  postOf,
  sourced,
  teaTerrace,
} from '../../tests/specs/index.ts';
import { facesOf, type InfillSpec, type RunSpec } from '../model/index.ts';
import { feet, inches, METRIC, mm, type Ticks } from '../units/index.ts';
import type { Piece, RunLayout } from './index.ts';
import { layOutRun } from './index.ts';

const bounds = ({ solid }: Piece, axis: 0 | 1 | 2): [Ticks, Ticks] => {
  const at = solid.vertices.map((vertex) => vertex[axis]);
  return [Math.min(...at), Math.max(...at)];
};

const pieceOf = (layout: RunLayout, key: string): Piece => {
  const piece = layout.pieces.find((each) => each.key === key);
  if (!piece) throw new Error(`${key} is none of ${layout.pieces.map((each) => each.key).join(' ')}`);
  return piece;
};

const slatsOf = (layout: RunLayout, bay: number) =>
  layout.pieces.filter((piece) => piece.role === 'slat' && piece.bay === bay);

// Invented job, worked out by hand: ground 650 below the datum, slats from 50 to 1790 above it, post tops 30 higher,
// so posts stand 1820 above ground, half of that in the ground: 910, and are 2730 long. The leaf is
// 1000 - 10 - 10 = 980 wide and as high as the infill, 1740; stiles 45 wide leave rails 980 - 90 = 890.
function meadow(): RunSpec {
  const larch = board('larch', mm(90), mm(20));
  const gate = {
    name: 'gate',
    station: mm(1450),
    opening: mm(1000),
    hingeGap: mm(10),
    latchGap: mm(10),
    post: postOf('spruce-140', mm(140), mm(90)),
    frame: board('frame', mm(45), mm(90), 'rail'),
    brace: null,
    pattern: patternOf('even', [larch], { gap: mm(42) }),
    flip: { upright: true },
  };
  return bicycleCourt({
    name: 'meadow',
    measure: METRIC,
    length: mm(3900),
    post: postOf('spruce-90', mm(90), mm(90)),
    spacing: { kind: 'at-most', limit: mm(1300), measured: 'clear' },
    ground: mm(-650),
    bottom: mm(50),
    height: mm(1790),
    tops: mm(30),
    mounting: { kind: 'face', face: 'front' },
    pattern: patternOf('even', [larch], { gap: mm(42) }),
    remedies: [],
    endGap: 0,
    gates: [gate],
  });
}

it('works out the meadow run as by hand', () => {
  const layout = layOutRun(meadow());
  expect(layout.problems).toEqual([]);
  expect([layout.top, layout.bottom, layout.ground]).toEqual([1140, -600, -650].map(mm));
  expect(layout.embed).toMatchObject({ value: mm(910), origin: { why: 'default' } });
  expect(pieceOf(layout, 'meadow/p1').cut).toMatchObject({ stock: 'spruce-90', longPoint: mm(2730) });
  // 13 slats of 90 and 12 gaps of 42 are 1674; the next would need 132 more and there are 66.
  expect(layout.fits[0]).toMatchObject({ leftover: mm(1740 - 1674), chosen: undefined });
  expect(slatsOf(layout, 1)).toHaveLength(13);
  // Over the end post, the bay and the whole gate post: 90 + 1220 + 140.
  expect(slatsOf(layout, 1).map(({ cut }) => cut.longPoint)).toEqual(Array(13).fill(mm(1450)));
  expect(bounds(pieceOf(layout, 'meadow/b1/c01'), 2)).toEqual([mm(1050), mm(1140)]);
});

it('works out the meadow gate as by hand', () => {
  const layout = layOutRun(meadow());
  expect(layout.leaves).toMatchObject([
    { width: mm(980), height: mm(1740), bay: 2, x0: mm(1460), x1: mm(2440) },
  ]);
  expect(pieceOf(layout, 'meadow/gate/stile-hinge').cut.longPoint).toBe(mm(1740));
  expect(pieceOf(layout, 'meadow/gate/rail-top').cut.longPoint).toBe(mm(890));
  // 7 slats of 90 and 6 gaps of 42 are 882; 98 are left, 49 at each edge.
  const slats = slatsOf(layout, 2);
  expect(slats.map((slat) => bounds(slat, 0)[0] - mm(1460))).toEqual(
    [49, 181, 313, 445, 577, 709, 841].map(mm),
  );
  expect(slats.map(({ cut }) => cut.longPoint)).toEqual(Array(7).fill(mm(1740)));
  // In one plane with the run's slats.
  expect(slats.map((slat) => bounds(slat, 1))).toEqual(Array(7).fill([mm(-65), mm(-45)]));
  expect(bounds(pieceOf(layout, 'meadow/gate/rail-top'), 1)).toEqual([mm(-45), mm(45)]);
});

it('keeps a leaf whose run has no face for its slats in the middle', () => {
  const layout = layOutRun(bicycleCourt());
  const depths = layout.pieces
    .filter(({ gate, role }) => gate && role !== 'post')
    .map((piece) => bounds(piece, 1));
  const [front, back] = [Math.min(...depths.map(([a]) => a)), Math.max(...depths.map(([, b]) => b))];
  expect(back - front).toBe(inches(1.5 + 0.75));
  expect(Math.abs(front + back)).toBeLessThanOrEqual(1);
});

it('puts level slats on the same lines in every bay', () => {
  const layout = layOutRun(bicycleCourt());
  const lines = (bay: number) => slatsOf(layout, bay).map((slat) => bounds(slat, 2));
  const line = layout.bays.filter(({ gate }) => !gate);
  expect(line.length).toBeGreaterThan(2);
  for (const { number } of line) expect(lines(number)).toEqual(lines(line[0]?.number ?? 0));
});

it('cuts slats between posts to the clear bay less an end gap at each end', () => {
  const layout = layOutRun(bicycleCourt());
  for (const bay of layout.bays) {
    if (bay.gate) continue;
    for (const slat of slatsOf(layout, bay.number)) {
      expect(slat.cut.longPoint).toBe(bay.clear - inches(1 / 4));
      expect(bounds(slat, 0)).toEqual([bay.from + inches(1 / 8), bay.to - inches(1 / 8)]);
      expect(bounds(slat, 1)).toEqual([-inches(3 / 8), inches(3 / 8)]);
    }
    expect(layout.pieces.filter(({ bay: at, role }) => at === bay.number && role === 'cleat')).toHaveLength(
      4,
    );
  }
});

it('joints slats on a face over the middle of the posts, one end gap apart', () => {
  const layout = layOutRun(teaTerrace());
  const ends = layout.bays.map(({ number }) => bounds(pieceOf(layout, `quay/b${number}/c01`), 0));
  expect(ends[0]?.[0]).toBe(0);
  expect(ends.at(-1)?.[1]).toBe(mm(7200));
  for (const [index, [from]] of ends.entries()) {
    const before = ends[index - 1]?.[1];
    if (before === undefined) continue;
    const post = layout.posts[index];
    // Cuts are rounded down to whole millimeters, so a joint may be wider by less than that at each end.
    expect(from - before).toBeGreaterThanOrEqual(mm(3));
    expect(from - before).toBeLessThan(mm(5));
    expect(Math.abs((from + before) / 2 - ((post?.from ?? 0) + (post?.to ?? 0)) / 2)).toBeLessThanOrEqual(
      mm(0.5),
    );
  }
});

it('sets posts of any depth flush with the face that slats lie on', () => {
  const spec = bicycleCourt({ mounting: { kind: 'face', face: 'back' } });
  const gates = spec.gates.map((gate) => ({
    ...gate,
    post: sourced(postOf('deep', inches(5.5), inches(5.5))),
  }));
  const layout = layOutRun({ ...spec, gates });
  for (const post of layout.pieces.filter(({ role }) => role === 'post')) {
    expect(bounds(post, 1)[1]).toBe(inches(1.75));
  }
});

it('turns an upright pattern so that its first slat is where its top edge goes', () => {
  const first = (topEdge: 'left' | 'right', over = false) => {
    const layout = layOutRun(compostBay({ flip: { upright: true, topEdge, over }, pattern: unlike }));
    return [1, 2].map((course) => pieceOf(layout, `compost/b1/c0${course}`).cut.stock);
  };
  expect(first('left')).toEqual(['wide', 'narrow']);
  expect(first('right')).not.toEqual(['wide', 'narrow']);
  expect(first('right', true)).toEqual(['wide', 'narrow']);
  expect(first('left', true)).toEqual(first('right'));
});

it('reads a level pattern from the bottom when it is turned over, and leaves what is over at the bottom', () => {
  const upright = layOutRun(bicycleCourt({ pattern: unlike, remedies: [], bottom: inches(2), gates: [] }));
  const over = layOutRun(
    bicycleCourt({ pattern: unlike, remedies: [], bottom: inches(2), gates: [], flip: { over: true } }),
  );
  const stocks = (layout: RunLayout) => slatsOf(layout, 1).map(({ cut }) => cut.stock);
  expect(stocks(over)).toEqual(stocks(upright).toReversed());
  expect(bounds(pieceOf(over, 'court/b1/c01'), 2)[1]).toBe(over.top);
  expect(bounds(pieceOf(upright, 'court/b1/c01'), 2)[1]).toBe(upright.top);
});

const unlike = patternOf(
  'unlike',
  [board('wide', inches(5.5), inches(0.75)), board('narrow', inches(1.5), inches(0.75))],
  { gap: inches(0.5), end: { kind: 'whole' } },
);

it('raises the bottom of the run, and of its gate, when the ends move', () => {
  const spec = bicycleCourt({
    pattern: patternOf('even', [board('b', inches(5.5), inches(0.75))], { gap: inches(0.5) }),
  });
  const layout = layOutRun(spec);
  // 12 slats of 5-1/2 and 11 gaps of 1/2 are 71-1/2, too high; 11 are 65-1/2, too low for 68 to 70: no moving.
  expect(layout.fits[0]?.chosen?.kind).not.toBe('move-ends');
  const moved = layOutRun({ ...spec, bottom: sourced({ low: inches(2), high: inches(7) }) });
  expect(moved.fits[0]?.chosen?.kind).toBe('move-ends');
  expect(moved.bottom).toBe(inches(72 - 65.5));
  expect(moved.leaves[0]).toMatchObject({ z0: moved.bottom, z1: moved.top });
  expect(Math.min(...slatsOf(moved, 1).map((slat) => bounds(slat, 2)[0]))).toBe(moved.bottom);
});

it('fits upright slats for each clear width that occurs', () => {
  // (100 ft less 8 posts) / 7 is on no mark, so bays differ by a sixteenth.
  const layout = layOutRun(compostBay({ length: feet(100), spacing: { kind: 'bays', count: 7 } }));
  expect(new Set(layout.bays.map(({ clear }) => clear)).size).toBe(layout.fits.length);
  expect(layout.fits.flatMap(({ bays }) => bays).toSorted()).toEqual([1, 2, 3, 4, 5, 6, 7]);
});

it('braces a leaf from the low hinge corner, and not where there is no room', () => {
  const layout = layOutRun(bicycleCourt());
  const brace = pieceOf(layout, 'court/cycles/brace');
  const [leaf] = layout.leaves;
  expect(brace.solid.vertices[0]?.[0]).toBeCloseTo((leaf?.x0 ?? 0) + inches(3.5), -5);
  expect(brace.solid.vertices[0]?.[2]).toBeCloseTo((leaf?.z0 ?? 0) + inches(3.5), -5);
  const between = leafBetween();
  const gates = between.gates.map((gate) => ({ ...gate, brace: gate.frame }));
  const unbraced = layOutRun({ ...between, gates });
  expect(unbraced.problems.map(({ code }) => code)).toEqual(['brace-no-room']);
  expect(unbraced.pieces.some(({ role }) => role === 'brace')).toBe(false);
  expect(unbraced.leaves).toHaveLength(1);
});

it('names and labels every piece once, a gate called like a bay too', () => {
  const spec = bicycleCourt();
  const layout = layOutRun({ ...spec, gates: spec.gates.map((gate) => ({ ...gate, name: 'b1' })) });
  for (const what of ['key', 'label'] as const) {
    expect(new Set(layout.pieces.map((piece) => piece[what])).size).toBe(layout.pieces.length);
  }
  expect(layout.pieces.map(({ label }) => label)).toEqual(
    expect.arrayContaining(['P1', 'B1-01', 'B1-CLF', 'G1-SH', 'G1-SL', 'G1-RT', 'G1-BR', 'G1-01']),
  );
});

it('escapes what would part a key', () => {
  const layout = layOutRun(teaTerrace({ name: 'north/east' }));
  expect(layout.key).toBe('north%2Feast');
  expect(layout.pieces[0]?.key).toBe('north%2Feast/p1');
});

const sum = (parts: readonly number[]) => parts.reduce((total, part) => total + part, 0);

/** Length that spans cover together. */
function unionOf(spans: readonly (readonly [Ticks, Ticks])[]): Ticks {
  let reached = -Infinity;
  let covered = 0;
  for (const [from, to] of [...spans].sort((a, b) => a[0] - b[0])) {
    covered += Math.max(0, to - Math.max(from, reached));
    reached = Math.max(reached, to);
  }
  return covered;
}

it('fills the infill with slats, trim and openings, to the tick', () => {
  fc.assert(
    fc.property(arbitraryRunSpec, (spec) => {
      const layout = layOutRun({ ...spec, gates: [] });
      if (!layout.sound) return;
      const { upright } = spec.infill.flip;
      for (const bay of layout.bays) {
        const boards = layout.pieces.filter(
          ({ bay: at, role }) => at === bay.number && (role === 'slat' || role === 'trim'),
        );
        if (boards.length === 0) continue;
        const axis = upright ? 0 : 2;
        const gaps = layout.openings.filter(({ bay: at }) => at === bay.number);
        // Slats on both faces lie in front of one another.
        const two = facesOf(spec.infill.mounting.value).length === 2;
        const wood = two
          ? unionOf(boards.map((board) => bounds(board, axis)))
          : sum(boards.map(({ cut }) => cut.width));
        const filled = wood + sum(gaps.map((gap) => (upright ? gap.x1 - gap.x0 : gap.z1 - gap.z0)));
        expect(filled).toBe(upright ? bay.clear : layout.top - layout.bottom);
      }
    }),
    { numRuns: 200 },
  );
});

it('gives whole corners to all but braces, lengths on the tape, and no number that is none', () => {
  fc.assert(
    fc.property(arbitraryRunSpec, (spec) => {
      for (const { solid, cut, role, from } of layOutRun(spec).pieces) {
        const all = [...solid.vertices.flat(), cut.longPoint, cut.shortPoint, cut.width, cut.thickness];
        expect(all.every(role === 'brace' ? Number.isFinite : Number.isSafeInteger)).toBe(true);
        expect(cut.shortPoint).toBeGreaterThan(0);
        expect(from.length).toBeGreaterThan(1);
        if (role !== 'post') expect(cut.longPoint % spec.measure.step).toBe(0);
      }
    }),
    { numRuns: 200 },
  );
});

it.each<[string, (spec: RunSpec) => RunSpec, boolean]>([
  ['no-size', (spec) => ({ ...spec, length: sourced(0) }), false],
  ['no-size', (spec) => ({ ...spec, post: sourced(postOf('p', inches(3), 0)) }), false],
  ['no-size', (spec) => ({ ...spec, length: sourced(Number.NaN) }), false],
  ['no-height', (spec) => ({ ...spec, bottom: sourced({ low: feet(6), high: feet(7) }) }), false],
  ['too-many-pieces', (spec) => tall(spec), false],
  ['bay-too-narrow', (spec) => ({ ...spec, spacing: sourced({ kind: 'bays', count: 55 }) }), false],
  ['cleats-miss', (spec) => ({ ...spec, post: sourced(postOf('thin', inches(3), inches(0.75))) }), false],
  ['cleats-missing', (spec) => withInfill(spec, { cleat: undefined }), false],
  ['end-gap-too-wide', (spec) => withInfill(spec, { endGap: sourced(inches(1)) }), false],
  ['rails-missing', () => compostBay({ rail: undefined }), false],
  ['too-low-for-rails', () => compostBay({ height: inches(10.5) }), false],
  ['leaf-too-small', (spec) => withGate(spec, { frame: sourced(board('f', inches(22), inches(1))) }), true],
  ['brace-too-wide', (spec) => withGate(spec, { brace: sourced(board('b', inches(40), inches(1))) }), true],
])('tells %s', (code, change, sound) => {
  const layout = layOutRun(change(bicycleCourt()));
  expect(layout.problems.map((problem) => problem.code)).toContain(code);
  expect(layout.sound).toBe(sound);
  expect(layout.pieces.length > 0).toBe(sound);
});

// By hand. In 100 ft, 3 in of which are below, slats of 1/16" and gaps of 1/32" make 1197 / (3/32) = 12 768 lines and as
// many gaps but one, each with two spacers: 38 302 pieces. In two bays that is more than 50 000, the slats alone are not.
it.each([
  ['between', []],
  ['grooves', ['too-many-pieces']],
] as const)('counts spacers among the pieces: %s', (kind, told) => {
  const pattern = patternOf('hair', [board('hair', inches(1 / 16), inches(0.75))], { gap: inches(1 / 32) });
  const mounting = sourced(kind === 'between' ? { kind } : { kind, depth: sourced(inches(0.5)), room: 0 });
  const { problems } = layOutRun({
    ...withInfill(leafBetween(), { pattern, mounting, fit: { remedies: [], origin: originOf('fit') } }),
    gates: [],
    height: sourced({ low: feet(100), high: feet(100) }),
  });
  expect(problems.map(({ code }) => code)).toEqual(told);
});

const none = sourced(0);
const thin = board('thin', inches(3), 0);
const sill = { clearance: sourced(0), follows: false, origin: originOf('kick') };
const channel = { kind: 'channel', name: 'u', origin: originOf('u'), lengths: [] } as const;
const inch = sourced(inches(1));

it.each<[string, (spec: RunSpec) => RunSpec]>([
  ['thickness of thin', (spec) => ({ ...spec, kick: { ...sill, stock: sourced(thin) } })],
  [
    'space under the kick board',
    (spec) => ({
      ...spec,
      kick: { ...sill, stock: sourced(board('k', inches(3), 1)), clearance: sourced(-1) },
    }),
  ],
  ['least width of the last course', (spec) => ({ ...spec, lastFollows: none })],
  [
    'thickness of thin',
    (spec) => ({ ...spec, filler: { stock: sourced(thin), least: sourced(1), origin: originOf('filler') } }),
  ],
  [
    'gap at the wall',
    (spec) => ({ ...spec, walls: { end: { origin: originOf('wall'), off: sourced(-1) } } }),
  ],
  [
    'depth of the grooves',
    (spec) => withInfill(spec, { mounting: sourced({ kind: 'grooves', depth: none, room: 1 }) }),
  ],
  [
    'width of the grooves',
    (spec) => withInfill(spec, { mounting: sourced({ kind: 'grooves', depth: inch, width: none, room: 1 }) }),
  ],
  [
    'wall of u',
    (spec) =>
      withInfill(spec, {
        mounting: sourced({
          kind: 'channels',
          channel: sourced({ ...channel, width: inch, thickness: inch, wall: none }),
        }),
      }),
  ],
])('tells of no size: %s', (what, change) => {
  const { problems, sound } = layOutRun(change(compostBay()));
  expect(sound).toBe(false);
  expect(problems.map(({ code, args }) => [code, args.what])).toEqual([['no-size', what]]);
});

function withInfill(spec: RunSpec, change: Partial<InfillSpec>): RunSpec {
  return { ...spec, infill: { ...spec.infill, ...change } };
}

function withGate(spec: RunSpec, change: Partial<RunSpec['gates'][number]>): RunSpec {
  return { ...spec, gates: spec.gates.map((gate) => ({ ...gate, ...change })) };
}

/** Ever so many slats a sixteenth wide. */
function tall(spec: RunSpec): RunSpec {
  const pattern = patternOf('hair', [board('hair', inches(1 / 16), inches(0.75))], { gap: 0 });
  return { ...withInfill(spec, { pattern }), height: sourced({ low: feet(90), high: feet(90) }) };
}
