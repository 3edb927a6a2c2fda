import { expect, it } from 'vitest';
import { inches, toInches } from '../units/index.ts';
import { makeCable } from './cable.ts';

const about = {
  key: 'c',
  label: 'c',
  role: 'cable',
  run: 'r',
  side: 'middle',
  supports: [],
  from: [],
} as const;
const inside = { x: [0, inches(36)], z: [0, inches(48)] } as const;

// A rope 3/16" thick in a frame 36" by 48" inside, which is 3, 4, 5: 60" from corner to corner. Its square end comes as
// near to a corner as half its thickness times 4/3: 60 - 2 (3/32 x 4/3) = 59.75".
it.each(['left', 'right'] as const)(
  'runs from the top at hinges on the %s to the foot at the latch',
  (hinges) => {
    const y = [0, inches(3 / 16)] as const;
    const { cut, solid } = makeCable(about, { inside, y, hinges, step: inches(1 / 16) });
    expect(toInches(cut.longPoint)).toBe(59.75);
    const ends = [solid.vertices.slice(0, 4), solid.vertices.slice(4)].map((corners) =>
      ([0, 2] as const).map((axis) => corners.reduce((sum, at) => sum + toInches(at[axis]), 0) / 4),
    );
    const [top, foot] = ends;
    const across = hinges === 'left' ? 1 : -1;
    const from = hinges === 'left' ? 0 : 36;
    expect(top?.[0]).toBeCloseTo(from + across * 0.125 * 0.6, 6);
    expect(top?.[1]).toBeCloseTo(48 - 0.125 * 0.8, 6);
    expect(foot?.[0]).toBeCloseTo(36 - from - across * 0.125 * 0.6, 6);
    expect(foot?.[1]).toBeCloseTo(0.125 * 0.8, 6);
    for (const [x, , z] of solid.vertices) {
      expect(x).toBeGreaterThan(-1e-3);
      expect(x).toBeLessThan(inches(36) + 1e-3);
      expect(z).toBeGreaterThan(-1e-3);
      expect(z).toBeLessThan(inches(48) + 1e-3);
    }
  },
);
