import fc from 'fast-check';
import { expect, it } from 'vitest';
import { openJob } from '../../tests/jobs/index.ts';
import { inches } from '../units/index.ts';
import { type Recut, recutOf } from './recut.ts';

// Bays of 58" clear: 3 times 58 and four posts of 3-1/2 are 188. Slats between posts are 1/4 shorter.
async function recut(measured: string): Promise<Recut | undefined> {
  const { layout } = await openJob(`job { measure inches to 1/16" }
board slat { width 5-1/2"; thickness 3/4" }
post stake { along 3-1/2"; through 3-1/2" }
cleat nib { width 3/4"; thickness 3/4" }
pattern rows { repeat slat; gap 1/2"; end anywhere }
run bank { length 188"; posts stake, 3 bays; height 26"; bottom 2-1/2"; slats between posts; fill rows; end gap 1/8" }
measured bank { ${measured} }
`);
  const [run] = layout.runs;
  return run && recutOf(run);
}

// 23-1/2 of infill take four slats of 5-1/2 and three gaps of 1/2.
it('sends slats cut too short to a narrower bay, and says what is to cut', async () => {
  const found = await recut(
    'bay 1 clear 58-1/2"; bay 2 clear 58"; bay 3 clear 57-1/2"; cut bay 1; cut bay 3',
  );
  // Cut to 57-3/4: too short for bay 1 at 58-1/4, right for bay 2, 1/2 too long for bay 3 at 57-1/4.
  const to = found?.reused.map(({ piece, place, trim }) => [
    piece.key.slice(0, 7),
    place.key.slice(0, 7),
    trim,
  ]);
  expect(to?.toSorted()).toEqual([
    ...Array(4).fill(['bank/b1', 'bank/b2', 0]),
    ...Array(4).fill(['bank/b3', 'bank/b3', inches(0.5)]),
  ]);
  expect(found?.toCut.map(({ key, length }) => [key.slice(0, 7), length])).toEqual(
    Array(4).fill(['bank/b1', inches(58.25)]),
  );
  expect(found?.leftOver).toEqual([]);
});

it('takes the length that is stated, and counts a slat once', async () => {
  const found = await recut('cut bay 2 courses 1 to 2 at 57-3/4"; cut bay 2 courses 2 to 3 at 30"');
  expect(found?.reused).toHaveLength(2);
  expect(found?.leftOver.map(({ key, length }) => [key, length])).toEqual([['bank/b2/c03', inches(30)]]);
  expect(found?.toCut).toHaveLength(10);
});

it('has nothing to say where nothing is cut', async () => {
  expect(await recut('bay 1 clear 58-1/2"')).toBeUndefined();
});

it('loses no slat and fills no place twice', async () => {
  const clear = fc.integer({ min: 1420, max: 1530 }).map((mm) => `${mm} mm`);
  const cuts = fc.array(fc.tuple(fc.integer({ min: 1, max: 3 }), fc.integer({ min: 1, max: 4 }), clear));
  await fc.assert(
    fc.asyncProperty(clear, clear, clear, cuts, async (one, two, three, some) => {
      const bays = [one, two, three].map((text, index) => `bay ${index + 1} clear ${text}`);
      const cut = some.map(([bay, course, at]) => `cut bay ${bay} course ${course} at ${at}`);
      const found = await recut([...bays, ...cut].join('; '));
      const kinds = new Set(some.map(([bay, course]) => `${bay} ${course}`));
      if (kinds.size === 0) return found === undefined;
      const pieces = [...(found?.reused ?? []).map(({ piece }) => piece), ...(found?.leftOver ?? [])];
      const places = [...(found?.reused ?? []).map(({ place }) => place), ...(found?.toCut ?? [])];
      expect(new Set(pieces.map(({ key }) => key)).size).toBe(kinds.size);
      expect(pieces).toHaveLength(kinds.size);
      expect(new Set(places.map(({ key }) => key)).size).toBe(12);
      expect(places).toHaveLength(12);
      return (found?.reused ?? []).every(({ trim }) => trim >= 0);
    }),
    { numRuns: 25 },
  );
});
