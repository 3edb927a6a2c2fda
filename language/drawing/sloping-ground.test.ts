import { expect, it } from 'vitest';
import { postsOnly, sourced } from '../../tests/specs/index.ts';
import { layOutRun } from '../layout/index.ts';
import { feet, inches } from '../units/index.ts';
import { elevationOf } from './elevation.ts';

// By hand, with the bottom 2 above the ground at station 0: it falls 12 over 120, so by 0.35 at 3-1/2, the left end of the
// bay, and by 11.65 at 116-1/2, the right one; clearances 2.35 and 13.65, to the nearest sixteenth 2-3/8 and 13-5/8.
it('dimensions the clearance at both ends of a bay over falling ground', () => {
  const level = postsOnly(feet(10), { spacing: { kind: 'bays', count: 1 } });
  const levels = [
    { station: 0, level: 0, origin: level.origin },
    { station: feet(10), level: -inches(12), origin: level.origin },
  ];
  const run = layOutRun({ ...level, ground: sourced(0), levels });
  const labels = elevationOf(run, level.measure).labels.filter(({ key }) => key.includes('/clearance-'));
  expect(labels).toHaveLength(2);
  const [tight, roomy] = labels;
  // By hand: at 116-1/2" the ground is 11.65" down; slats end 2" up. Half way between is 4.825" down.
  expect(roomy?.y).toBeCloseTo(4.825 * 25.4, 1);
  // At 3-1/2" it is 0.35" down: too little room for a text, which goes below the ground instead.
  expect(tight?.y).toBeGreaterThan(0.35 * 25.4);
  expect(tight?.shift[1]).toBeLessThan(-1);
  expect(labels.map(({ text }) => text)).toEqual(['2-3/8"', '1\' 1-5/8"']);
  expect(
    elevationOf(layOutRun(level), level.measure).labels.some(({ key }) => key.includes('/clearance-')),
  ).toBe(false);
});
