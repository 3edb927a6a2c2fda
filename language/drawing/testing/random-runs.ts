/** Random runs to be laid out by hand, for the property tests of this folder. */
import fc from 'fast-check';
import { IMPERIAL, METRIC, TICKS_PER_INCH, TICKS_PER_MM } from '../../units/index.ts';
import type { HandRun } from './run-by-hand.ts';

const measure = fc.constantFrom(
  IMPERIAL,
  METRIC,
  { unit: 'inches', step: TICKS_PER_INCH / 32 } as const,
  { unit: 'cm', step: 5 * TICKS_PER_MM } as const,
  { unit: 'm', step: 10 * TICKS_PER_MM } as const,
);

/** Ticks between two lengths in millimeters, mostly on no step of any measure. */
function length(low: number, high: number): fc.Arbitrary<number> {
  return fc.integer({ min: low * TICKS_PER_MM, max: high * TICKS_PER_MM });
}

const gate = fc.record({
  at: fc.nat(),
  name: fc.constantFrom('orchard', 'north/south', 'p1', '"><script>alert(1)</script>'),
  hinges: fc.constantFrom('left' as const, 'right' as const),
  upright: fc.boolean(),
});

/** Runs of one to twelve bays, level or upright, with or without a gate, in any measure. */
export const randomRun: fc.Arbitrary<HandRun> = fc
  .record({
    name: fc.constantFrom('bank', 'long bank', 'a/b', '<b>&"\''),
    measure,
    bays: fc.array(length(150, 2400), { minLength: 1, maxLength: 12 }),
    post: length(30, 150),
    bottom: length(0, 200),
    widths: fc.array(length(15, 190), { minLength: 1, maxLength: 4 }),
    gap: length(3, 60),
    upright: fc.boolean(),
    onFace: fc.boolean(),
    ground: length(-600, 600),
    tops: fc.oneof(fc.constant(0), length(1, 100)),
    gate: fc.option(gate, { nil: undefined }),
  })
  .map(({ gate: hung, ...hand }) => ({
    ...hand,
    gate: hung ? { ...hung, bay: 1 + (hung.at % hand.bays.length) } : undefined,
  }));
