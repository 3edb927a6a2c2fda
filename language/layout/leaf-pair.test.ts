import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  arbitraryInfill,
  board,
  patternOf,
  postOf,
  type RunParts,
  runOf,
  sourced,
} from '../../tests/specs/index.ts';
import type { GateSpec, RunSpec } from '../model/index.ts';
import { inches, type Ticks } from '../units/index.ts';
import { findOverlaps, findUnsupported, layOutRun, type Piece, type RunLayout } from './index.ts';

const SLAT = board('slat', inches(3.5), inches(0.75));
const FRAME = board('frame', inches(3.5), inches(1.5), 'rail');
const STAKE = postOf('stake', inches(3.5), inches(3.5));

type Parts = Pick<GateSpec, 'rails'> & {
  gap?: Ticks;
  active?: Ticks;
  opening?: Ticks;
  hinges?: 'left' | 'right';
  infill?: object;
};

/** A pair in a run of 16 feet, 60" high, its opening from 4 feet on. */
function pair(parts: Parts = {}, run: Partial<RunParts> = {}): RunSpec {
  const spec = runOf({
    length: inches(192),
    post: STAKE,
    spacing: { kind: 'at-most', limit: inches(96), measured: 'clear' },
    bottom: inches(2),
    height: inches(62),
    mounting: { kind: 'face', face: 'front' },
    pattern: patternOf('rows', [SLAT], { gap: inches(0.5) }),
    gates: [
      {
        name: 'cart',
        station: inches(48),
        opening: parts.opening ?? inches(80),
        hinges: parts.hinges ?? 'left',
        post: STAKE,
        frame: FRAME,
        pattern: patternOf('rows', [SLAT], { gap: inches(0.5) }),
        flip: { upright: true },
        ...parts.infill,
      },
    ],
    ...run,
  });
  const stated = {
    meetingGap: sourced(parts.gap ?? inches(0.5)),
    ...(parts.active === undefined ? {} : { active: sourced(parts.active) }),
    origin: spec.origin,
  };
  return {
    ...spec,
    gates: spec.gates.map((gate) => ({
      ...gate,
      pair: stated,
      ...(parts.rails ? { rails: parts.rails } : {}),
    })),
  };
}

const leafPieces = (run: RunLayout, side: 'left' | 'right') =>
  run.pieces.filter(({ key }) => key.startsWith(`bank/cart/${side}/`));

/** Corners as whole ticks, sorted; mirrored at half of `sum` when it is given. */
function corners({ solid }: Piece, sum?: number): string {
  return solid.vertices
    .map(([x, y, z]) => [sum === undefined ? x : sum - x, y, z].map((at) => Math.round(at)).join())
    .sort()
    .join(' ');
}

function boxOf({ solid }: Piece, sum?: number): readonly number[] {
  const xs = solid.vertices.map(([x]) => (sum === undefined ? x : sum - x));
  const others = ([1, 2] as const).map((axis) => solid.vertices.map((vertex) => vertex[axis]));
  return [xs, ...others].flatMap((all) => [Math.min(...all), Math.max(...all)]);
}

// By hand: 80" less two hinge gaps of 1/4" and 1/2" between: 79", so leaves of 39-1/2" from 48-1/4" to 87-3/4" and
// from 88-1/4" to 127-3/4".
it('divides the opening into two equal leaves', () => {
  const run = layOutRun(pair());
  expect(run.problems).toEqual([]);
  expect(run.leaves.map(({ gate, x0, x1 }) => [gate, x0, x1])).toEqual([
    ['cart (left leaf)', inches(48.25), inches(87.75)],
    ['cart (right leaf)', inches(88.25), inches(127.75)],
  ]);
  expect(run.leaves.map(({ spec }) => spec.hinges.value)).toEqual(['left', 'right']);
  const opening = run.leaves.reduce((sum, { spec }) => sum + spec.opening.value, 0);
  expect(opening).toBe(inches(80));
});

it('makes the active leaf as wide as stated, on the side of the hinges', () => {
  const run = layOutRun(pair({ active: inches(48), hinges: 'right' }));
  expect(run.problems).toEqual([]);
  expect(run.leaves.map(({ gate, width }) => [gate, width])).toEqual([
    ['cart (right leaf)', inches(48)],
    ['cart (left leaf)', inches(31)],
  ]);
  expect(run.leaves.map(({ spec }) => spec.half?.mirrors)).toEqual([false, false]);
  expect(findOverlaps(run)).toEqual([]);
  expect(findUnsupported(run)).toEqual([]);
});

it('names and labels the pieces of either leaf', () => {
  const run = layOutRun(pair({ rails: sourced({ kind: 'count', count: 3 }) }));
  const labels = new Map(run.pieces.map(({ key, label }) => [key, label]));
  expect(labels.get('bank/cart/left/stile-hinge')).toBe('G1L-SH');
  expect(labels.get('bank/cart/right/brace-2')).toBe('G1R-BR2');
  expect(new Set(labels.values()).size).toBe(run.pieces.length);
  // Each hangs on the post beside it.
  const hung = (side: 'left' | 'right') =>
    run.pieces.find(({ key }) => key === `bank/cart/${side}/stile-hinge`)?.supports;
  const [left, right] = run.posts.filter(({ gate }) => gate === 'cart').map(({ key }) => key);
  expect([hung('left'), hung('right')]).toEqual([[left], [right]]);
});

it('makes equal leaves mirror images, piece by piece, with nothing in one place and nothing in the air', () => {
  let built = 0;
  const opening = fc.integer({ min: inches(50), max: inches(110) });
  const rails = fc.constantFrom(undefined, 2, 3, 4);
  fc.assert(
    fc.property(arbitraryInfill, opening, fc.boolean(), rails, (infill, width, right, count) => {
      const spec = pair({
        opening: width,
        hinges: right ? 'right' : 'left',
        infill: { ...infill, flip: infill.flip },
        ...(count === undefined ? {} : { rails: sourced({ kind: 'count' as const, count }) }),
      });
      const run = layOutRun(spec);
      if (run.leaves.length !== 2) return;
      built++;
      const [a, b] = [leafPieces(run, 'left'), leafPieces(run, 'right')];
      expect(a.length).toBe(b.length);
      const sum = Math.min(...run.leaves.map(({ x0 }) => x0)) + Math.max(...run.leaves.map(({ x1 }) => x1));
      // What is centered between two edges an odd number of ticks apart lies a tick nearer one of them.
      const edge = ({ box }: { box: readonly number[] }, at: number) => Math.round((box[at] ?? 0) / 8);
      const byRole = (pieces: readonly Piece[], mirror?: number) =>
        pieces
          .map((piece) => ({
            role: piece.role,
            stock: piece.cut.stock,
            long: piece.cut.longPoint,
            box: boxOf(piece, mirror),
          }))
          .sort(
            (p, q) =>
              p.role.localeCompare(q.role) ||
              edge(p, 0) - edge(q, 0) ||
              edge(p, 2) - edge(q, 2) ||
              edge(p, 4) - edge(q, 4),
          );
      const left = byRole(a);
      const image = byRole(b, sum);
      for (const [index, one] of left.entries()) {
        const other = image[index];
        expect([other?.role, other?.stock, other?.long]).toEqual([one.role, one.stock, one.long]);
        for (const [at, value] of one.box.entries())
          expect(Math.abs(value - (other?.box[at] ?? Number.NaN))).toBeLessThanOrEqual(1.001);
      }
      expect(findOverlaps(run)).toEqual([]);
      expect(findUnsupported(run)).toEqual([]);
    }),
    { numRuns: 150 },
  );
  expect(built).toBeGreaterThan(60);
});

it('mirrors to the tick where lengths are on the tape', () => {
  const run = layOutRun(pair());
  const sum = inches(48.25 + 127.75);
  const image = leafPieces(run, 'right')
    .filter(({ role }) => role !== 'brace')
    .map((piece) => corners(piece, sum));
  const own = leafPieces(run, 'left')
    .filter(({ role }) => role !== 'brace')
    .map((piece) => corners(piece));
  expect(own.length).toBeGreaterThan(10);
  expect(image.sort()).toEqual(own.sort());
});

it('leaves no passive leaf where there is no room for one', () => {
  const run = layOutRun(pair({ active: inches(78) }));
  expect(run.problems.map(({ code }) => code)).toEqual(['leaf-too-small']);
  expect(run.leaves.map(({ gate }) => gate)).toEqual(['cart (left leaf)']);
});
