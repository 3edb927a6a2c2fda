import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  arbitraryRunSpec,
  board,
  jobOf,
  patternOf,
  postOf,
  type RunParts,
  runOf,
  sourced,
} from '../../tests/specs/index.ts';
import type { CornerKind, RunSpec } from '../model/index.ts';
import { degrees, feet, inches, type Ticks } from '../units/index.ts';
import { cornerOf, cornerTrouble, levelFace } from './corner.ts';
import {
  createLayoutMemo,
  findOverlaps,
  findUnsupported,
  type Layout,
  layOutJob,
  overlap,
  type Piece,
  type Solid,
  toPlan,
} from './index.ts';

// Plane trigonometry is the basis: two lines that turn by t meet at an inside angle of 180 - t, the miter halves
// it, and a strip s thick is s tan(t/2) longer on its outside (R. A. Calter, "Technical Mathematics"; any handbook
// of joinery). Figures worked by hand stand beside each check.

const post = postOf('fir-4x4', inches(3.5), inches(3.5));
const slat = board('cedar', inches(5.5), inches(0.75));

function run(name: string, parts: Partial<RunParts> = {}): RunSpec {
  return runOf({
    name,
    length: feet(10),
    post,
    spacing: { kind: 'bays', count: 2 },
    height: inches(60),
    bottom: inches(6),
    mounting: { kind: 'face', face: 'front' },
    pattern: patternOf('even', [slat], { gap: inches(0.5) }),
    endGap: inches(1 / 8),
    ...parts,
  });
}

function after(first: string, spec: RunSpec, turn: number, corner: CornerKind = 'post'): RunSpec {
  const origin = spec.origin;
  return {
    ...spec,
    placement: { kind: 'after', run: first, turn: sourced(turn), corner: sourced(corner), origin },
  };
}

const lay = (turn: number, corner: CornerKind, parts: Partial<RunParts> = {}) =>
  layOutJob(jobOf([run('north', parts), after('north', run('east', parts), turn, corner)]));

/** A solid of a run where it stands on the plan. */
function standing(layout: Layout, key: string, { vertices }: Solid): Solid {
  const frame = layout.places.get(key);
  if (!frame) throw new Error(`${key} has no place`);
  return { vertices: vertices.map(([x, y, z]) => [...toPlan(frame, x, y), z] as const) };
}

const course = (layout: Layout, of: number, which: 'first' | 'last'): Piece => {
  const slats = layout.runs[of]?.pieces.filter((piece) => piece.role === 'slat' && piece.course === 1) ?? [];
  const found = which === 'first' ? slats[0] : slats.at(-1);
  if (!found) throw new Error('no slat');
  return found;
};

const span = (piece: Piece): [Ticks, Ticks] => {
  const x = piece.solid.vertices.map((vertex) => vertex[0]);
  return [Math.min(...x), Math.max(...x)];
};

const square = {
  turn: 90,
  post: { x: [inches(116.5), inches(120)], y: [-inches(1.75), inches(1.75)] },
  first: inches(0.75),
  second: inches(0.75),
  face: 'front',
  plane: -inches(1.75),
} as const;

it('works out a square corner as by hand', () => {
  // The tape of the second run is hooked over the post's front face; its middle line is the post's own.
  const miter = cornerOf({ ...square, kind: 'miter' });
  expect(miter).toMatchObject({
    at: [inches(118.25), -inches(1.75)],
    along: inches(3.5),
    depth: [-inches(1.75), inches(1.75)],
  });
  // 45 degrees: as much longer on the outside as the slat is thick.
  expect(miter.ends.first?.at).toBe(inches(120));
  expect(miter.ends.first?.slope).toBeCloseTo(1, 9);
  expect(miter.ends.second?.at).toBe(0);
  expect(miter.ends.second?.slope).toBeCloseTo(-1, 9);
  // The first run's slats go past by the thickness of those that stop against them.
  const butt = cornerOf({ ...square, kind: 'butt' });
  expect(butt.ends).toEqual({ first: { at: inches(120.75), slope: 0 }, second: { at: 0, slope: 0 } });
  const lap = cornerOf({ ...square, kind: 'lap' });
  expect(lap.ends).toEqual({ first: { at: inches(120), slope: 0 }, second: { at: -inches(0.75), slope: 0 } });
});

it('cuts both slats at 22-1/2 degrees where runs turn by 45', () => {
  const { ends, at, along } = cornerOf({ ...square, turn: 45, kind: 'miter' });
  expect(degrees(Math.atan(ends.first?.slope ?? 0))).toBeCloseTo(22.5, 9);
  expect(degrees(Math.atan(ends.second?.slope ?? 0))).toBeCloseTo(-22.5, 9);
  expect(ends.first?.at).toBeCloseTo(inches(120), 3);
  // A square post 3-1/2 in wide, seen cornerwise, is 3.5 x sqrt 2 = 4.9497 in; its outer corner is halfway.
  expect(along).toBe(Math.ceil(inches(3.5) * Math.SQRT2));
  expect(ends.second?.at).toBeCloseTo(inches(3.5) / Math.SQRT2, 3);
  // The first corner met is (116.5, -1.75) in; from there to the second run's middle line.
  expect(Math.hypot(at[0] - inches(116.5), at[1] + inches(1.75))).toBeLessThan(inches(3.5));
  const layout = lay(45, 'miter');
  const [first, second] = [course(layout, 0, 'last'), course(layout, 1, 'first')];
  expect(first.cut.ends[1].bevel).toBeCloseTo(-22.5, 6);
  expect(second.cut.ends[0].bevel).toBeCloseTo(22.5, 6);
  for (const { cut } of [first, second]) {
    // 0.75 in x tan 22.5 = 0.3107 in between long and short point, whole ticks rounded down.
    const tan = Math.SQRT2 - 1;
    expect(Math.abs(cut.longPoint - cut.shortPoint - inches(0.75) * tan)).toBeLessThanOrEqual(2);
  }
});

it.each<[CornerKind, number, number, number, number]>([
  // Ends of the slats at the corner, in inches: first run's, second run's; and their angles of saw.
  ['post', 120, 0, 0, 0],
  ['miter', 120.75, -0.75, -45, 45],
  ['butt', 120.75, 0, 0, 0],
  ['lap', 120, -0.75, 0, 0],
])('makes a corner %s of slats on the front face', (kind, end, start, firstCut, secondCut) => {
  const layout = lay(90, kind);
  expect(layout.runs.map(({ problems }) => problems)).toEqual([[], []]);
  const [first, second] = [course(layout, 0, 'last'), course(layout, 1, 'first')];
  // A square cut may give up less than a mark of the tape.
  expect(Math.abs(span(first)[1] - inches(end))).toBeLessThan(inches(1 / 16));
  expect(span(second)[0]).toBeCloseTo(inches(start), 3);
  expect(first.cut.ends[1].bevel).toBeCloseTo(firstCut, 9);
  expect(second.cut.ends[0].bevel).toBeCloseTo(secondCut, 9);
  for (const layouts of layout.runs) expect(findUnsupported(layouts)).toEqual([]);
});

it('shares the corner post: counted in both, made once, bays behind it', () => {
  const layout = lay(90, 'post');
  const [north, east] = layout.runs;
  expect(east?.posts[0]).toMatchObject({ number: 1, key: 'north/p3', from: 0, to: inches(3.5) });
  expect(east?.bays[0]?.from).toBe(inches(3.5));
  const posts = layout.runs.flatMap(({ pieces }) => pieces.filter(({ role }) => role === 'post'));
  expect(posts.map(({ key }) => key)).toEqual(['north/p1', 'north/p2', 'north/p3', 'east/p2', 'east/p3']);
  expect(layout.joints).toEqual([
    { first: 'north', second: 'east', kind: 'post', turn: 90, post: 'north/p3' },
  ]);
  // In both frames it is the same post.
  const [borrowed] = east?.borrowed ?? [];
  const own = north?.pieces.find(({ key }) => key === 'north/p3');
  if (!borrowed || !own) throw new Error('no corner post');
  const there = standing(layout, 'east', borrowed.solid).vertices;
  for (const [at, vertex] of standing(layout, 'north', own.solid).vertices.entries())
    for (const axis of [0, 1, 2] as const) expect(there[at]?.[axis]).toBeCloseTo(vertex[axis], 3);
});

it('places runs by point and bearing, and those that follow', () => {
  const origin = sourced(0).origin;
  const placed: RunSpec = {
    ...run('north'),
    placement: { kind: 'at', east: sourced(feet(2)), north: sourced(feet(3)), bearing: sourced(0), origin },
  };
  const layout = layOutJob(
    jobOf(
      [after('north', run('east'), -90, 'post'), placed].map((one) => ({
        ...one,
        infill: { ...one.infill, mounting: sourced({ kind: 'face', face: 'back' } as const) },
      })),
    ),
  );
  expect(layout.places.get('north')).toEqual({ origin: [feet(2), feet(3), 0], bearing: 0 });
  const east = layout.places.get('east');
  // Going north and turning right is going east. Its 0 is the west face of the post, which is 10 ft up the run.
  expect(east?.bearing).toBe(90);
  expect(east?.origin[0]).toBeCloseTo(feet(2) - inches(1.75), 3);
  expect(east?.origin[1]).toBeCloseTo(feet(13) - inches(1.75), 3);
});

it('gives no place to runs that stand alone', () => {
  expect(layOutJob(jobOf([run('a'), run('b')])).places.size).toBe(0);
});

it.each<[number, CornerKind, 'front' | 'back', string | undefined]>([
  [90, 'post', 'front', undefined],
  [-90, 'post', 'front', 'inside'],
  [-90, 'miter', 'back', undefined],
  [0, 'post', 'front', undefined],
  [0, 'lap', 'front', 'straight'],
  [20, 'butt', 'front', 'cut'],
  [20, 'miter', 'front', undefined],
])('turning by %s with corner %s and slats on the %s face: %s', (turn, kind, face, trouble) => {
  const parts = { mounting: { kind: 'face', face } } as const;
  const second = after('north', run('east', parts), turn, kind);
  expect(cornerTrouble(run('north', parts), second)).toBe(trouble);
  const layout = layOutJob(jobOf([run('north', parts), second]));
  expect(layout.runs[1]?.problems.map(({ code, args }) => `${code} ${args.why}`)).toEqual(
    trouble ? [`corner-slats ${trouble}`] : [],
  );
});

it('lays out no neighbor again unless the corner changes', () => {
  const memo = createLayoutMemo();
  const [north, east] = [run('north'), after('north', run('east'), 90, 'miter')];
  const before = layOutJob(jobOf([north, east]), memo);
  expect(memo.laidOut).toBe(2);
  const longer = layOutJob(jobOf([north, { ...east, length: sourced(feet(12)) }]), memo);
  expect(memo.laidOut).toBe(3);
  expect(longer.runs[0]).toBe(before.runs[0]);
  // Where the first run stands is nothing to either.
  const at = {
    kind: 'at',
    east: sourced(feet(5)),
    north: sourced(0),
    bearing: sourced(45),
    origin: north.origin,
  } as const;
  layOutJob(
    jobOf([
      { ...north, placement: at },
      { ...east, length: sourced(feet(12)) },
    ]),
    memo,
  );
  expect(memo.laidOut).toBe(4);
  layOutJob(jobOf([{ ...north, placement: at }, { ...after('north', run('east'), 80, 'miter') }]), memo);
  expect(memo.laidOut).toBe(6);
});

const kinds = fc.constantFrom<CornerKind>('post', 'lap', 'butt', 'miter');

it('lets no two pieces share a place, whatever the angle, and closes every miter', () => {
  fc.assert(
    fc.property(
      kinds,
      fc.integer({ min: 5, max: 150 }),
      fc.boolean(),
      fc.boolean(),
      (kind, angle, left, between) => {
        const face = left ? ('front' as const) : ('back' as const);
        const cleat = board('stop', inches(0.75), inches(0.75), 'cleat');
        const parts: Partial<RunParts> = between
          ? { mounting: { kind: 'between' }, cleat }
          : { mounting: { kind: 'face', face } };
        const layout = lay(left ? angle : -angle, between ? 'post' : kind, parts);
        const [north, east] = layout.runs;
        if (!north || !east) throw new Error('two runs');
        if (!east.sound) {
          expect(east.problems[0]).toMatchObject({
            code: 'corner-slats',
            args: { why: expect.stringMatching(/^(cut|sharp)$/) },
          });
          return;
        }
        expect([...findOverlaps(north), ...findOverlaps(east)]).toEqual([]);
        const near = (one: typeof north) => one.pieces.map((piece) => standing(layout, one.key, piece.solid));
        const others = near(east);
        for (const a of near(north)) for (const b of others) expect(overlap(a, b)).toBe(false);
        if (between || kind !== 'miter') return;
        // Ends 4 to 7 of the first slat are ends 0 to 3 of the second: all four corners of the cut meet.
        const end = standing(layout, 'north', course(layout, 0, 'last').solid).vertices.slice(4);
        const start = standing(layout, 'east', course(layout, 1, 'first').solid).vertices.slice(0, 4);
        for (const [at, vertex] of end.entries())
          for (const axis of [0, 1, 2] as const)
            expect(Math.abs((start[at]?.[axis] ?? Infinity) - vertex[axis])).toBeLessThan(2);
      },
    ),
    { numRuns: 60 },
  );
});

it('adds up and keeps apart for any two runs that meet', () => {
  let compared = 0;
  fc.assert(
    fc.property(
      arbitraryRunSpec,
      arbitraryRunSpec,
      kinds,
      fc.constantFrom(0, 12, 45, 90, 120, -12, -45, -90, -120),
      (one, other, kind, turn) => {
        const first = { ...one, name: 'first' };
        // Filled as the first, so that they can meet: on a face, outside the turn.
        const { infill, rail } = one;
        const second = { ...other, name: 'second', infill, ...(rail ? { rail } : {}), gates: [] };
        const face = levelFace(infill);
        const out = face === 'front' ? Math.abs(turn) : face === 'back' ? -Math.abs(turn) : turn;
        const corner = face === undefined || turn === 0 ? 'post' : kind;
        const layout = layOutJob(jobOf([first, after('first', second, out, corner)]));
        const [a, b] = layout.runs;
        if (!a?.sound || !b?.sound || !b.joints.start) return;
        compared++;
        for (const run of [a, b]) {
          const all = [...run.posts, ...run.bays].map(({ from, to }) => [from, to] as const);
          all.sort((p, q) => p[0] - q[0] || p[1] - q[1]);
          for (const [at, [from]] of all.entries()) expect(from).toBe(at === 0 ? 0 : all[at - 1]?.[1]);
          expect(all.at(-1)?.[1]).toBe(run.spec.length.value);
          expect(findOverlaps(run)).toEqual([]);
          const numbers = run.pieces.flatMap(({ solid, cut }) => [
            ...solid.vertices.flat(),
            cut.longPoint,
            cut.shortPoint,
          ]);
          expect(numbers.every(Number.isFinite)).toBe(true);
        }
        // Gates may hang beside the corner, and a leaf may be deeper than its post: only what stands in bays counts.
        const fixed = (run: typeof a) =>
          run.pieces
            .filter(({ gate, role }) => gate === undefined || role === 'post')
            .map((piece) => ({ key: piece.key, solid: standing(layout, run.key, piece.solid) }));
        const near = fixed(a).filter(({ solid }) => reaches(solid, fixed(b)));
        for (const mine of near)
          for (const theirs of fixed(b))
            if (overlap(mine.solid, theirs.solid)) expect.fail(`${mine.key} is in ${theirs.key}`);
      },
    ),
    { numRuns: 150 },
  );
  expect(compared).toBeGreaterThan(15);
});

/** Whether a solid's box on the plan touches that of any other. */
function reaches(solid: Solid, others: readonly { solid: Solid }[]): boolean {
  const box = ({ vertices }: Solid) =>
    ([0, 1] as const).map((axis) => {
      const all = vertices.map((vertex) => vertex[axis]);
      return [Math.min(...all), Math.max(...all)] as const;
    });
  const own = box(solid);
  return others.some((other) =>
    box(other.solid).every(([low, high], axis) => {
      const mine = own[axis];
      return mine !== undefined && low < mine[1] && mine[0] < high;
    }),
  );
}

it('saws both slats of a turn of 45 degrees at 22-1/2 degrees', () => {
  // By hand: a miter halves the turn, 45 / 2.
  const { ends } = cornerOf({ ...square, turn: 45, kind: 'miter' });
  const sawn = (slope = 0) => (Math.atan(Math.abs(slope)) * 180) / Math.PI;
  expect(sawn(ends.first?.slope)).toBeCloseTo(22.5, 9);
  expect(sawn(ends.second?.slope)).toBeCloseTo(22.5, 9);
});
