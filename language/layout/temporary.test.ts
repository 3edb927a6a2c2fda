import fc from 'fast-check';
import { expect, it } from 'vitest';
import { board, originOf, patternOf, postOf, runOf, sourced } from '../../tests/specs/build.ts';
import type { BracingSpec, Mounting, RunSpec } from '../model/index.ts';
import { inches, type Ticks, toInches } from '../units/index.ts';
import { findOverlaps } from './overlap.ts';
import type { Piece } from './piece.ts';
import { layOutRun } from './run.ts';

const batten = board('batten', inches(3.5), inches(0.75));
const peg = board('peg', inches(1.5), inches(1.5));

function bracingOf(given: Partial<BracingSpec> = {}): BracingSpec {
  return {
    board: sourced(batten),
    stake: sourced(peg),
    stakeLength: sourced(inches(24)),
    low: sourced(inches(6)),
    again: false,
    origin: originOf('bracing'),
    ...given,
  };
}

interface Given extends Partial<Omit<RunSpec, 'length' | 'height' | 'bottom'>> {
  readonly long?: number;
  readonly mounting?: Mounting;
  readonly bays?: number;
}

// Posts of 3-1/2 and four bays: 24 ft less five posts are 270-1/2, four bays of 67-5/8.
function fence({
  long = 288,
  bays = 4,
  mounting = { kind: 'face', face: 'front' },
  ...given
}: Given = {}): RunSpec {
  const spec = runOf({
    length: inches(long),
    post: postOf('p', inches(3.5), inches(3.5)),
    spacing: { kind: 'bays', count: bays },
    height: inches(72),
    bottom: inches(2),
    pattern: patternOf('one', [board('slat', inches(5.5), inches(1))], { gap: inches(0.5) }),
    mounting,
    endGap: inches(0.125),
    ...(mounting.kind === 'between' ? { cleat: board('nib', inches(0.75), inches(0.75), 'cleat') } : {}),
  });
  return { ...spec, bracing: bracingOf(), ...given };
}

const temporary = (spec: RunSpec) => layOutRun(spec).temporary;
const find = (pieces: readonly Piece[], key: string) => pieces.find((piece) => piece.key === key);
const inch = (ticks: Ticks | undefined) => toInches(ticks ?? Number.NaN);
const range = (piece: Piece | undefined, axis: 0 | 1 | 2) => {
  if (!piece) throw new Error('there is no such piece');
  const all = piece.solid.vertices.map((vertex) => vertex[axis]);
  return [toInches(Math.min(...all)), toInches(Math.max(...all))];
};

it('marks strips on a face with the clear width and the overlap of slats', () => {
  const { pieces } = temporary(fence());
  // By hand. Bay 1: slats lie on all of post 1, and to the middle of post 2 less half of 1/8: 3-1/2 + 67-5/8 + 1-3/4 - 1/16.
  const first = find(pieces, 'bank/b1/strip-top')?.cut;
  expect(inch(first?.longPoint)).toBe(72.8125);
  expect(first?.marks?.map(inch)).toEqual([3.5, 71.125]);
  // Bay 2 is marked 1-11/16 in from both ends.
  const second = find(pieces, 'bank/b2/strip-bottom')?.cut;
  expect(second?.marks?.map(inch)).toEqual([1.6875, 69.3125]);
  expect(inch(second?.longPoint)).toBe(71);
  // The top one ends with the posts, the other begins 6 above the ground; both on the front, before y = -1-3/4.
  expect(range(find(pieces, 'bank/b1/strip-top'), 2)).toEqual([68.5, 72]);
  expect(range(find(pieces, 'bank/b1/strip-bottom'), 2)).toEqual([6, 9.5]);
  expect(range(find(pieces, 'bank/b1/strip-top'), 1)).toEqual([-2.5, -1.75]);
});

it('cuts strips to the clear width where slats stand between posts', () => {
  const strips = temporary(fence({ mounting: { kind: 'between' } })).pieces.filter(
    ({ role }) => role === 'strip',
  );
  expect(strips).toHaveLength(8);
  for (const { cut } of strips) {
    expect(inch(cut.longPoint)).toBe(67.625);
    expect(cut.marks).toBeUndefined();
  }
});

it('makes braces as long as their height and their way out ask for', () => {
  // By hand: posts are 72 above ground, so braces meet them 48 up, and stand 48 out, 3-1/2 above the ground. The rise
  // is 44-1/2 on 48: 42.833 degrees, cosine 0.73333, sine 0.67988. The end, plumb at the far edge of the post, is
  // (48 + 1.75 + 1.75 x 0.67988) / 0.73333 = 69.464 from the stake's middle, which it goes 1-3/4 past: 71.214, on the tape 71-1/4.
  const run = layOutRun(fence());
  const pieces = [...run.pieces, ...run.temporary.pieces];
  const brace = find(pieces, 'bank/p2/brace-along')?.cut;
  expect(inch(brace?.longPoint)).toBe(71.25);
  expect(Math.abs(brace?.ends[1].miter ?? 0)).toBeCloseTo(42.833, 2);
  expect(brace?.ends[0]).toEqual({ miter: 0, bevel: 0 });
  const middle = (key: string, axis: 0 | 1 | 2) => {
    const [low = 0, high = 0] = range(find(pieces, key), axis);
    return (low + high) / 2;
  };
  expect(middle('bank/p2', 0) - middle('bank/p2/stake-along', 0)).toBeCloseTo(48, 6);
  expect(middle('bank/p2/stake-across', 1) - middle('bank/p2', 1)).toBeCloseTo(48, 6);
  // Nothing of it is in the ground, and it ends where the post does.
  expect(range(find(pieces, 'bank/p2/brace-along'), 2)[0]).toBeGreaterThan(0);
  expect(range(find(pieces, 'bank/p2/brace-along'), 0)[1]).toBeCloseTo(
    range(find(pieces, 'bank/p2'), 0)[1] ?? 0,
    6,
  );
  // A third of the stake stands out.
  expect(range(find(pieces, 'bank/p2/stake-along'), 2)).toEqual([-16, 8]);
});

it('takes heights and distances as stated', () => {
  const { pieces, braced } = temporary(
    fence({ bracing: bracingOf({ up: sourced(inches(40)), out: sourced(inches(30)) }) }),
  );
  expect(braced.map(({ up, out }) => [inch(up), inch(out)])).toEqual(Array(5).fill([40, 30]));
  // By hand: 36-1/2 on 30 is a slope of 1.21667, cosine 0.63498, sine 0.77256: (30 + 1.75 + 1.352) / 0.63498 = 52.131, and 1-3/4.
  expect(inch(find(pieces, 'bank/p3/brace-across')?.cut.longPoint)).toBe(53.9375);
});

it('reaches farther where the ground falls away beside the run', () => {
  // By hand: toward the back it falls 1 in 8, 6 at 48: the rise is 50-1/2, 46.453 degrees.
  const { pieces } = temporary(fence({ across: sourced(-1 / 8) }));
  expect(Math.abs(find(pieces, 'bank/p1/brace-across')?.cut.ends[1].miter ?? 0)).toBeCloseTo(46.453, 2);
  expect(Math.abs(find(pieces, 'bank/p1/brace-along')?.cut.ends[1].miter ?? 0)).toBeCloseTo(42.833, 2);
});

it('keeps all of it out of the pieces of the screen', () => {
  const [with_, without] = [layOutRun(fence()), layOutRun({ ...fence(), bracing: undefined } as RunSpec)];
  expect(with_.pieces).toEqual(without.pieces);
  expect(with_.openings).toEqual(without.openings);
  expect(without.temporary.pieces).toEqual([]);
});

it('goes the other way where a wall, a pool or a pipe is', () => {
  const wall = { off: sourced(inches(2)), origin: originOf('wall') };
  const walled = temporary(fence({ walls: { start: wall } }));
  expect(walled.blocked).toEqual([]);
  const foot = range(find(walled.pieces, 'bank/p1/stake-along'), 0)[0] ?? 0;
  expect(foot).toBeGreaterThan(0);
  const pool = temporary(fence({ pool: { ...sourced<'front' | 'back'>('back') } }));
  expect(pool.blocked).toEqual([]);
  expect(range(find(pool.pieces, 'bank/p2/stake-across'), 1)[1]).toBeLessThan(0);
  // Post 2 is from 71-1/8 on; its foot would be at 24-7/8.
  const pipe = { from: inches(20), to: inches(30), origin: originOf('pipe') };
  const piped = temporary(fence({ noHoles: [pipe] }));
  expect(piped.blocked).toEqual([]);
  expect(range(find(piped.pieces, 'bank/p2/stake-along'), 0)[0]).toBeGreaterThan(72);
});

it('tells of a foot that has no place either way', () => {
  const line = (y: number) => ({ y: inches(y), origin: originOf('line') });
  const { blocked } = temporary(fence({ propertyLines: [line(40), line(-40)] }));
  expect(blocked.map(({ post, axis, why }) => [post, axis, why])).toEqual(
    [1, 2, 3, 4, 5].map((post) => [post, 'across', 'property']),
  );
});

it('tells of strips and braces that do not go under the post tops', () => {
  const told = (given: Partial<BracingSpec>) =>
    layOutRun(fence({ bracing: bracingOf(given) })).problems.map(({ code, args }) => [code, args.what]);
  expect(told({ high: sourced(inches(70)) })).toEqual([['bracing-no-room', 'strips']]);
  expect(told({ high: sourced(inches(68.5)) })).toEqual([]);
  expect(told({ up: sourced(inches(73)) })).toEqual([['bracing-no-room', 'brace']]);
  expect(told({ up: sourced(inches(3)) })).toEqual([['bracing-no-room', 'brace']]);
});

it('gives posts at a deck strips alone', () => {
  const origin = originOf('deck');
  const deck = {
    name: 'd',
    origin,
    statement: origin,
    hold: { value: 'outside-rim' as const, origin },
    surface: sourced(inches(24)),
    boards: sourced(inches(1)),
    joist: { thickness: inches(1.5), depth: inches(7.25), origin },
    joists: [],
    rim: sourced(inches(1.5)),
    blocking: [],
  };
  const roles = temporary(fence({ deck })).pieces.map(({ role }) => role);
  expect(new Set(roles)).toEqual(new Set(['strip']));
  expect(roles).toHaveLength(8);
});

it('gives every bay its strips and every post its braces, and nothing is in the way of anything', () => {
  const given = fc.record({
    long: fc.integer({ min: 90, max: 500 }),
    bays: fc.integer({ min: 1, max: 6 }),
    kind: fc.constantFrom<Mounting>(
      { kind: 'face', face: 'front' },
      { kind: 'face', face: 'back' },
      { kind: 'both' },
      { kind: 'between' },
    ),
    fall: fc.integer({ min: -6, max: 6 }),
    out: fc.option(fc.integer({ min: 20, max: 50 }), { nil: undefined }),
  });
  fc.assert(
    fc.property(given, ({ long, bays, kind, fall, out }) => {
      const spec = fence({
        long,
        bays,
        mounting: kind,
        across: sourced(fall / 48),
        bracing: bracingOf(out === undefined ? {} : { out: sourced(inches(out)) }),
      });
      const run = layOutRun(spec);
      fc.pre(run.sound);
      const { pieces, blocked } = run.temporary;
      for (const bay of run.bays)
        for (const end of ['top', 'bottom']) {
          const cut = find(pieces, `${bay.key}/strip-${end}`)?.cut;
          const [from = 0, to = cut?.longPoint ?? 0] = cut?.marks ?? [];
          expect(to - from).toBe(bay.clear);
          expect(from).toBeGreaterThanOrEqual(0);
          expect(to).toBeLessThanOrEqual(cut?.longPoint ?? 0);
        }
      for (const { key } of run.posts)
        for (const axis of ['along', 'across']) {
          expect(find(pieces, `${key}/brace-${axis}`)).toBeDefined();
          expect(find(pieces, `${key}/stake-${axis}`)).toBeDefined();
        }
      expect(new Set(pieces.map(({ label }) => label)).size).toBe(pieces.length);
      if (blocked.length > 0) return;
      const posts = run.pieces.filter(({ role }) => role === 'post');
      expect(findOverlaps({ pieces: [...posts, ...pieces], spec })).toEqual([]);
    }),
    { numRuns: 60 },
  );
});
