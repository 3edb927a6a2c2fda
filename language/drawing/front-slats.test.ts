import { expect, it } from 'vitest';
import { board, patternOf, postOf, runOf } from '../../tests/specs/index.ts';
import { layOutRun } from '../layout/index.ts';
import type { Mounting } from '../model/index.ts';
import { METRIC, mm } from '../units/index.ts';
import { elevationOf } from './elevation.ts';
import { dimensionChains } from './run-chains.ts';

const run = (mounting: Mounting) =>
  layOutRun(
    runOf({
      measure: METRIC,
      length: mm(2000),
      post: postOf('post', mm(90), mm(90)),
      spacing: { kind: 'bays', count: 1 },
      bottom: mm(60),
      height: mm(1800),
      mounting,
      pattern: patternOf('even', [board('larch', mm(90), mm(20))], {
        gap: mm(42),
        end: { kind: 'anywhere' },
      }),
    }),
  );

const groupsOf = (mounting: Mounting) => elevationOf(run(mounting), METRIC).groups;

it('draws slats of the back as farther ones where they show between those of the front', () => {
  const groups = groupsOf({ kind: 'alternate' });
  const far = groups.filter(({ style }) => style === 'slat-far');
  expect(far.flatMap(({ hits }) => hits.map(({ piece }) => piece)).sort()).toEqual(
    Array.from({ length: 13 }, (_, i) => `bank/b1/back-c${String(i + 1).padStart(2, '0')}`),
  );
  const near = groups.find(({ style }) => style === 'slat');
  expect(near?.hits).toHaveLength(13);
  expect(far[0]?.depth).toBeGreaterThan(near?.depth ?? Infinity);
});

it('leaves slats of the back out where the same lines of the front hide them', () => {
  expect(groupsOf({ kind: 'both' }).filter(({ style }) => style === 'slat-far')).toEqual([]);
  expect(groupsOf({ kind: 'face', face: 'back' }).some(({ style }) => style === 'slat')).toBe(true);
});

it('dimensions the face that is looked at', () => {
  const chain = dimensionChains(run({ kind: 'alternate' }), METRIC).find(({ key }) => key === 'slats');
  // From the bottom: the space below the front's last slat, half a pitch, and then slat and gap by turns.
  expect(chain?.texts.slice(0, 4)).toEqual(['66', '90', '42', '90']);
});
