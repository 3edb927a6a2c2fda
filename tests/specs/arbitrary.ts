import fc from 'fast-check';
import type { FlatStock, Mounting, PostSpacing, Remedy, RunSpec } from '../../language/model/index.ts';
import { feet, IMPERIAL, inches, METRIC, type Measure, mm, type Ticks } from '../../language/units/index.ts';
import { board, type GateParts, type InfillParts, patternOf, postOf, runOf } from './build.ts';

// Lengths are whole sixteenths or millimeters, or now and then off every mark, as a length from the other
// system is. Ranges hold what is built and a little more: a spec may be one that cannot be built.

export const arbitraryMeasure: fc.Arbitrary<Measure> = fc.constantFrom(IMPERIAL, METRIC);

/** A length between two, in ticks: mostly on the marks of a tape. */
function length(low: Ticks, high: Ticks): fc.Arbitrary<Ticks> {
  const marks = (step: Ticks) =>
    fc.integer({ min: Math.ceil(low / step), max: Math.floor(high / step) }).map((count) => count * step);
  return fc.oneof(
    { weight: 4, arbitrary: marks(inches(1 / 16)) },
    { weight: 4, arbitrary: marks(mm(1)) },
    { weight: 1, arbitrary: fc.integer({ min: low, max: high }) },
  );
}

const slats: fc.Arbitrary<readonly FlatStock[]> = fc
  .array(fc.tuple(length(inches(1), inches(6)), fc.boolean()), { minLength: 1, maxLength: 4 })
  .map((widths) =>
    widths.map(([width, thin], index) => board(`slat-${index}`, width, inches(thin ? 5 / 8 : 3 / 4))),
  );

const remedies: fc.Arbitrary<readonly Remedy[]> = fc.subarray<Remedy>([
  { kind: 'move-ends' },
  { kind: 'gaps', low: inches(1 / 8), high: inches(1.5) },
  { kind: 'short-repeat' },
  { kind: 'rip-last' },
  { kind: 'trim', edge: 'bottom' },
]);

const mounting: fc.Arbitrary<Mounting> = fc.constantFrom(
  { kind: 'between' },
  { kind: 'face', face: 'front' },
  { kind: 'face', face: 'back' },
  { kind: 'both' },
  { kind: 'alternate' },
);

export const arbitraryInfill: fc.Arbitrary<InfillParts> = fc
  .record({
    repeat: slats,
    gap: length(0, inches(2)),
    edgeGap: fc.oneof(fc.constant(0), length(0, inches(1))),
    whole: fc.boolean(),
    upright: fc.boolean(),
    right: fc.boolean(),
    over: fc.boolean(),
    remedies,
    mounting,
    cleat: fc.tuple(length(inches(1 / 2), inches(1.5)), length(inches(3 / 8), inches(1))),
    endGap: length(0, inches(3 / 8)),
  })
  .map((drawn) => ({
    pattern: patternOf('drawn', drawn.repeat, {
      gap: drawn.gap,
      edgeGap: drawn.edgeGap,
      end: { kind: drawn.whole ? 'whole' : 'anywhere' },
    }),
    flip: {
      upright: drawn.upright,
      topEdge: drawn.right ? ('right' as const) : ('left' as const),
      over: drawn.over,
    },
    remedies: drawn.remedies,
    // By turns on both faces there is one board.
    mounting:
      drawn.mounting.kind === 'alternate' && drawn.repeat.length > 1 ? { kind: 'both' } : drawn.mounting,
    cleat: board('cleat', ...drawn.cleat, 'cleat'),
    endGap: drawn.endGap,
  }));

/** A gate whose opening begins `station` from a run's 0. */
export function arbitraryGateSpec(name: string, station: Ticks): fc.Arbitrary<GateParts> {
  return fc
    .record({
      infill: arbitraryInfill,
      opening: length(inches(28), inches(60)),
      left: fc.boolean(),
      gaps: fc.tuple(length(0, inches(1 / 2)), length(0, inches(3 / 4))),
      post: fc.tuple(length(inches(3), inches(6)), length(inches(3), inches(6))),
      frame: fc.tuple(length(inches(2), inches(4)), length(inches(1.25), inches(2))),
      brace: fc.oneof(
        fc.constant(null),
        fc.constant(undefined),
        fc.tuple(length(inches(1), inches(4)), length(inches(1 / 4), inches(1.5))),
      ),
    })
    .map(({ infill, opening, left, gaps, post, frame, brace }) => ({
      ...infill,
      name,
      station,
      opening,
      hinges: left ? ('left' as const) : ('right' as const),
      hingeGap: gaps[0],
      latchGap: gaps[1],
      post: postOf(`post-${name}`, ...post),
      frame: board(`frame-${name}`, ...frame, 'rail'),
      brace: brace && board(`brace-${name}`, ...brace),
    }));
}

const spacing: fc.Arbitrary<PostSpacing> = fc.oneof(
  fc.record({
    kind: fc.constant('at-most' as const),
    limit: length(inches(20), feet(9)),
    measured: fc.constantFrom('clear' as const, 'on-center' as const),
  }),
  fc.record({ kind: fc.constant('bays' as const), count: fc.integer({ min: 1, max: 12 }) }),
  fc.record({ kind: fc.constant('posts' as const), count: fc.integer({ min: 2, max: 12 }) }),
  fc.uniqueArray(fc.integer({ min: 1, max: 11 }), { maxLength: 4 }).map((twenties) => ({
    kind: 'stations' as const,
    stations: twenties
      .sort((a, b) => a - b)
      .map((count) => ({
        value: count * inches(20),
        origin: { uri: 'file:///specs/made.slat', path: 'run bank/posts', why: 'stated' as const },
      })),
  })),
);

/** A straight level run, with or without gates. Most can be built; those that cannot say so when laid out. */
export const arbitraryRunSpec: fc.Arbitrary<RunSpec> = fc
  .record({
    infill: arbitraryInfill,
    measure: arbitraryMeasure,
    length: length(feet(6), feet(26)),
    spacing,
    post: fc.tuple(length(inches(3), inches(6)), length(inches(3), inches(6))),
    bottom: fc.tuple(length(0, inches(4)), length(0, inches(4))),
    height: fc.tuple(length(inches(30), inches(80)), length(0, inches(4))),
    tops: fc.oneof(fc.constant(0), length(0, inches(4))),
    ground: length(-inches(30), inches(30)),
    rail: fc.tuple(length(inches(2), inches(4)), length(inches(1.25), inches(2))),
    gates: fc.oneof(
      fc.constant([]),
      fc.tuple(arbitraryGateSpec('orchard', inches(40))),
      fc.tuple(arbitraryGateSpec('orchard', inches(40)), arbitraryGateSpec('b2', inches(140))),
    ),
  })
  .map((drawn) =>
    runOf({
      ...drawn.infill,
      measure: drawn.measure,
      length: drawn.length,
      spacing: drawn.spacing,
      post: postOf('post', ...drawn.post),
      bottom: { low: drawn.bottom[0], high: drawn.bottom[0] + drawn.bottom[1] },
      height: { low: drawn.height[0], high: drawn.height[0] + drawn.height[1] },
      tops: drawn.tops,
      ground: drawn.ground,
      rail: board('rail', ...drawn.rail, 'rail'),
      gates: drawn.gates,
    }),
  );
