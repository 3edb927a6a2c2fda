import fc from 'fast-check';
import { expect, it } from 'vitest';
import { bicycleCourt, board, patternOf, postOf, type RunParts, runOf } from '../../tests/specs/index.ts';
import type { FlipSpec, Remedy, RunSpec } from '../model/index.ts';
import { feet, inches, METRIC, mm, type Ticks } from '../units/index.ts';
import { findOverlaps, findUnsupported, layOutRun, type Piece, type RunLayout } from './index.ts';

const LARCH = board('larch', mm(90), mm(20));

/** Slats by turns on both faces of 90 mm posts on ground 650 below the datum, 50 to 1790 above it: 1740 high. */
function ground(parts: Partial<RunParts> = {}): RunSpec {
  return runOf({
    measure: METRIC,
    length: mm(3900),
    post: postOf('spruce', mm(90), mm(90)),
    spacing: { kind: 'at-most', limit: mm(1300), measured: 'clear' },
    ground: mm(-650),
    bottom: mm(50),
    height: mm(1790),
    mounting: { kind: 'alternate' },
    pattern: patternOf('even', [LARCH], { gap: mm(40) }),
    remedies: [{ kind: 'gaps', low: mm(35), high: mm(50) }],
    ...parts,
  });
}

const slats = (run: RunLayout, side: Piece['side'], bay = 1) =>
  run.pieces.filter((piece) => piece.role === 'slat' && piece.side === side && piece.bay === bay);

const lows = (pieces: readonly Piece[], axis: 0 | 2): number[] =>
  pieces
    .map(({ solid }) => Math.min(...solid.vertices.map((vertex) => vertex[axis])) / mm(1))
    .sort((a, b) => a - b);

const flip = (parts: Partial<FlipSpec>): Partial<FlipSpec> => parts;

// A worked example of common practice: w 90, H 1740, H = (n + 1/2) w + (n - 1/2) g. n 13 gives g = 42 exactly, so a
// pitch of 132, faces shifted by (w + g) / 2 = 66 and overlapping by (w - g) / 2 = 24.
const BEGINS_AT_BOTTOM = [-600, -468, -336, -204, -72, 60, 192, 324, 456, 588, 720, 852, 984];
const ENDS_AT_TOP = [-534, -402, -270, -138, -6, 126, 258, 390, 522, 654, 786, 918, 1050];

it('fits thirteen slats on each face of a 1740 mm screen, 42 mm apart', () => {
  const run = layOutRun(ground());
  expect(run.problems).toEqual([]);
  expect(run.fits[0]?.chosen).toMatchObject({ kind: 'gaps', count: 13, gap: mm(42) });
  expect(lows(slats(run, 'front'), 2)).toEqual(ENDS_AT_TOP);
  expect(lows(slats(run, 'back'), 2)).toEqual(BEGINS_AT_BOTTOM);
  expect(run.top).toBe(mm(1140));
});

it('begins the front at the bottom when the pattern is turned over', () => {
  const run = layOutRun(ground({ flip: flip({ over: true }) }));
  expect(lows(slats(run, 'front'), 2)).toEqual(BEGINS_AT_BOTTOM);
  expect(lows(slats(run, 'back'), 2)).toEqual(ENDS_AT_TOP);
});

it('has the same heights above a deck, from a sweep gap of 60', () => {
  const run = layOutRun(ground({ ground: 0, bottom: mm(60), height: mm(1800), flip: flip({ over: true }) }));
  expect(lows(slats(run, 'front'), 2)).toEqual(Array.from({ length: 13 }, (_, i) => 60 + 132 * i));
  expect(lows(slats(run, 'back'), 2)).toEqual(Array.from({ length: 13 }, (_, i) => 126 + 132 * i));
});

it('closes as written where the gap is right already', () => {
  const run = layOutRun(ground({ pattern: patternOf('even', [LARCH], { gap: mm(42) }), remedies: [] }));
  expect(run.fits[0]?.chosen).toMatchObject({ kind: 'as-drawn', count: 13 });
});

it('offers counts with their gaps, none with less than 20 mm of overlap, and each comes true', () => {
  const none = layOutRun(ground({ remedies: [] })).fits[0];
  expect(none?.chosen).toBeUndefined();
  const gaps = none?.choices.filter(({ kind }) => kind === 'gaps') ?? [];
  // n 12 would need 53.5 mm, an overlap of 18.3: not offered. n 14 needs 32.2 (both by the formula above).
  expect(gaps.map(({ count }) => count).slice(0, 2)).toEqual([13, 14]);
  expect(gaps.map(({ count }) => count)).not.toContain(12);
  expect((gaps[1]?.gap ?? 0) / mm(1)).toBeCloseTo(32.22, 2);
  expect(gaps[0]?.changes).toEqual([expect.objectContaining({ text: 'fit gaps 42 mm to 42 mm' })]);
});

it('moves the bottom within its band at the stated gap', () => {
  const run = layOutRun(
    ground({ bottom: { low: mm(50), high: mm(100) }, remedies: [{ kind: 'move-ends' }] }),
  );
  // 13.5 * 90 + 12.5 * 40 = 1715: 25 less than 1740.
  expect(run.fits[0]?.chosen).toMatchObject({ kind: 'move-ends', count: 13, bottom: mm(75) });
  expect(lows(slats(run, 'back'), 2)[0]).toBe(-575);
});

it('is closed straight on, and open where the faces do not overlap', () => {
  expect(layOutRun(ground()).openings).toEqual([]);
  const wide = layOutRun(ground({ pattern: patternOf('wide', [LARCH], { gap: mm(110) }), remedies: [] }));
  const between = wide.openings.filter((one) => one.between && one.bay === 1);
  expect(between.length).toBeGreaterThan(3);
  for (const { z0, z1, depth } of between) {
    expect(z1 - z0).toBe(mm(10));
    expect(depth).toBe(mm(130));
  }
});

it('names slats of the back apart from those of the front', () => {
  const run = layOutRun(ground());
  const names = new Map(run.pieces.map(({ key, label }) => [key, label]));
  expect(names.get('bank/b2/c07')).toBe('B2-07');
  expect(names.get('bank/b2/back-c07')).toBe('B2-B07');
  expect(names.size).toBe(run.pieces.length);
  expect(new Set(names.values()).size).toBe(run.pieces.length);
});

it('puts the same lines on both faces, as deep as both and what is between them', () => {
  const run = layOutRun(ground({ mounting: { kind: 'both' } }));
  expect(lows(slats(run, 'front'), 2)).toEqual(lows(slats(run, 'back'), 2));
  const single = layOutRun(ground({ mounting: { kind: 'face', face: 'front' } }));
  expect(run.openings.map(({ z0, z1 }) => [z0, z1])).toEqual(single.openings.map(({ z0, z1 }) => [z0, z1]));
  expect(new Set(run.openings.map(({ depth }) => depth))).toEqual(new Set([mm(130)]));
});

// The leaf of the same example: 980 wide with 7 slats on each face at the fence's 42 mm: 7.5 * 90 + 6.5 * 42 = 948,
// so 32 are left and 16 go to each edge (common practice, worked by hand).
it('turns the same slats upright in a leaf as thick as the screen', () => {
  const run = layOutRun(
    ground({
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
          pattern: patternOf('even', [LARCH], { gap: mm(42) }),
          flip: { upright: true },
          mounting: { kind: 'alternate' },
        },
      ],
    }),
  );
  expect(run.problems).toEqual([]);
  const leaf = run.leaves[0];
  const at = (side: Piece['side']) =>
    lows(
      run.pieces.filter((piece) => piece.gate === 'gate' && piece.role === 'slat' && piece.side === side),
      0,
    ).map((x) => x - (leaf?.x0 ?? 0) / mm(1));
  expect(at('front')).toEqual([16, 148, 280, 412, 544, 676, 808]);
  expect(at('back')).toEqual([82, 214, 346, 478, 610, 742, 874]);
  const depths = run.pieces
    .filter(({ gate, role }) => gate === 'gate' && role !== 'post')
    .flatMap(({ solid }) => solid.vertices.map(([, y]) => y));
  expect([Math.min(...depths), Math.max(...depths)]).toEqual([mm(-65), mm(65)]);
  expect(findOverlaps(run)).toEqual([]);
  expect(findUnsupported(run)).toEqual([]);
});

it('refuses several boards on alternate faces, and posts of several depths', () => {
  const strip = board('strip', mm(45), mm(20));
  const mixed = layOutRun(ground({ pattern: patternOf('mixed', [LARCH, strip], { gap: mm(40) }) }));
  expect(mixed.sound).toBe(false);
  expect(mixed.problems).toMatchObject([{ code: 'alternate-boards', args: { boards: 'larch, strip' } }]);
  const gate = {
    name: 'gate',
    station: mm(1450),
    opening: mm(1000),
    post: postOf('deep', mm(140), mm(140)),
    frame: board('frame', mm(45), mm(45), 'rail'),
    pattern: patternOf('even', [LARCH], { gap: mm(42) }),
  };
  for (const kind of ['both', 'alternate'] as const)
    expect(layOutRun(ground({ mounting: { kind }, gates: [gate] })).problems).toMatchObject([
      { code: 'post-depths', args: { post: 'deep', depth: '140 mm', usual: '90 mm' } },
    ]);
  expect(layOutRun(bicycleCourt()).problems).toEqual([]);
});

// Plain arithmetic on the pieces: whatever closes, both faces have as many slats, begin and end as they should, and
// their slats and gaps and the half pitch left over sum to the height.
it('fills any height from edge to edge on both faces, with nothing in one place and nothing in the air', () => {
  const size = (low: Ticks, high: Ticks) => fc.integer({ min: low, max: high });
  const remedy: Remedy = { kind: 'gaps', low: inches(1 / 8), high: inches(6) };
  fc.assert(
    fc.property(
      size(inches(1.5), inches(6)),
      size(inches(1 / 8), inches(5)),
      size(feet(3), feet(7)),
      fc.boolean(),
      fc.boolean(),
      (width, gap, height, over, upright) => {
        const run = layOutRun(
          runOf({
            length: feet(13),
            post: postOf('post', inches(3.5), inches(3.5)),
            spacing: { kind: 'at-most', limit: feet(6), measured: 'clear' },
            bottom: inches(2),
            height: inches(2) + height,
            rail: board('rail', inches(3.5), inches(1.5), 'rail'),
            mounting: { kind: 'alternate' },
            flip: { over, upright },
            pattern: patternOf('even', [board('board', width, inches(1))], { gap }),
            remedies: [remedy],
          }),
        );
        expect(run.problems).toEqual([]);
        expect(findOverlaps(run)).toEqual([]);
        expect(findUnsupported(run)).toEqual([]);
        const fit = run.fits[0];
        if (!fit?.chosen) return;
        const axis = upright ? 0 : 2;
        const [bay] = run.bays;
        const [from, to] = upright ? [bay?.from ?? 0, bay?.to ?? 0] : [run.bottom, run.top];
        const spans = (side: Piece['side']) =>
          slats(run, side)
            .map(({ solid }) => solid.vertices.map((vertex) => vertex[axis]))
            .map((at) => [Math.min(...at), Math.max(...at)] as const)
            .sort((a, b) => a[0] - b[0]);
        const [front, back] = [spans('front'), spans('back')];
        expect([front.length, back.length]).toEqual([fit.chosen.count, fit.chosen.count]);
        // Level, the pattern reads from the top: the front ends there, unless it is turned over.
        const [first, last] = (upright ? !over : over) ? [front, back] : [back, front];
        expect([first[0]?.[0], last.at(-1)?.[1]]).toEqual([from + fit.chosen.lead, to - fit.chosen.tail]);
        const shift = (width + fit.chosen.gap) / 2;
        for (const [index, [low]] of first.entries())
          expect(Math.abs((last[index]?.[0] ?? 0) - low - shift)).toBeLessThanOrEqual(1);
      },
    ),
    { numRuns: 60, seed: 5 },
  );
});
