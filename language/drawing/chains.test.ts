import fc from 'fast-check';
import { expect, it } from 'vitest';
import { IMPERIAL, METRIC, mm } from '../units/index.ts';
import { type Chain, chain } from './chains.ts';
import { leafChains } from './leaf-chains.ts';
import { dimensionChains } from './run-chains.ts';
import { randomRun } from './testing/random-runs.ts';
import { runByHand } from './testing/run-by-hand.ts';
import { unequalChains } from './testing/unequal-chains.ts';

it('prints differences of rounded marks, so that roundings do not pile up', () => {
  const parts = { key: 'thirds', side: 'top', kind: 'posts' } as const;
  // 1000 mm in three equal bays on a tape marked in millimeters: marks at 333 and 667.
  const thirds = chain(parts, [0, mm(1000) / 3, (2 * mm(1000)) / 3, mm(1000)].map(Math.round), 0, METRIC);
  expect(thirds.texts).toEqual(['333', '334', '333']);
});

it('counts boundaries that fall together once, in whatever order they come', () => {
  const parts = { key: 'posts', side: 'top', kind: 'posts' } as const;
  expect(chain(parts, [mm(50), 0, mm(50), mm(20)], 0, METRIC).texts).toEqual(['20', '30']);
});

it('adds every chain of any run up, as printed, to its parent', () => {
  fc.assert(
    fc.property(randomRun, (hand) => {
      const run = runByHand(hand);
      const { measure } = run.spec;
      expect(unequalChains(dimensionChains(run, measure), measure)).toEqual([]);
      for (const leaf of run.leaves) {
        expect(unequalChains(leafChains(run, leaf, measure), measure)).toEqual([]);
      }
    }),
    { numRuns: 150 },
  );
});

it('tells a chain that does not add up', () => {
  const broken: Chain[] = [
    { key: 'length', side: 'top', kind: 'overall', at: [0, 100], marks: [0, 100], texts: [`10"`] },
    {
      key: 'posts',
      parent: 'length',
      side: 'top',
      kind: 'posts',
      at: [0, 50, 100],
      marks: [0, 50, 100],
      texts: [`5"`, `4-15/16"`],
    },
  ];
  expect(unequalChains(broken, IMPERIAL)).toHaveLength(1);
});

it('starts at station 0 and at the ground', () => {
  fc.assert(
    fc.property(randomRun, (hand) => {
      const run = runByHand(hand);
      const chains = dimensionChains(run, run.spec.measure);
      expect(chains.find((one) => one.key === 'posts')?.marks[0]).toBe(0);
      expect(chains.find((one) => one.key === 'infill')?.marks[0]).toBe(0);
    }),
    { numRuns: 30 },
  );
});
