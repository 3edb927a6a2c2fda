import { expect, it } from 'vitest';
import type { JointRule } from '../model/index.ts';
import { between, divideCourse } from './divide-course.ts';

/** Every way to divide a stretch, found by trying all sets of joints. */
function everyWay(places: number): readonly (readonly number[])[] {
  const ways = 2 ** (places - 2);
  return Array.from({ length: ways }, (_, way) =>
    Array.from({ length: places - 2 }, (_unused, index) => index + 1).filter(
      (at) => Math.floor(way / 2 ** (at - 1)) % 2 === 1,
    ),
  );
}

/** The least of each count that any way within the lengths comes to, the first of the two outweighing the other. */
function leastOf(
  bays: readonly number[],
  longest: number,
  kind: JointRule['kind'],
  above: ReadonlySet<number>,
): readonly [boards: number, under: number] {
  const places = bays.length + 1;
  const length = (from: number, to: number) => bays.slice(from, to).reduce((sum, bay) => sum + bay, 0);
  const counts = everyWay(places)
    .filter((way) => {
      const ends = [0, ...way, bays.length];
      return ends.slice(1).every((to, i) => to === (ends[i] ?? 0) + 1 || length(ends[i] ?? 0, to) <= longest);
    })
    .map((way): readonly [number, number] => [way.length + 1, way.filter((at) => above.has(at)).length]);
  const [first, then] = kind === 'staggered' ? [1, 0] : [0, 1];
  counts.sort((a, b) => (a[first] ?? 0) - (b[first] ?? 0) || (a[then] ?? 0) - (b[then] ?? 0));
  return counts[0] ?? [0, 0];
}

it('finds as few boards, and as few joints under others, as trying every way does', () => {
  let seed = 7;
  const random = (most: number) => {
    seed = (seed * 48_271) % 2_147_483_647;
    return seed % most;
  };
  for (let trial = 0; trial < 300; trial++) {
    const bays = Array.from({ length: 2 + random(7) }, () => 30 + random(60));
    const longest = 60 + random(160);
    const above = new Set(bays.map((_, at) => at).filter((at) => at > 0 && random(3) === 0));
    const length = (from: number, to: number) => bays.slice(from, to).reduce((sum, bay) => sum + bay, 0);
    for (const kind of ['longest', 'staggered'] as const) {
      const joints = divideCourse({ places: bays.length + 1, length, longest }, kind, above);
      const counted = [joints.length + 1, joints.filter((at) => above.has(at)).length];
      expect(counted, JSON.stringify({ bays, longest, kind, above: [...above] })).toEqual(
        leastOf(bays, longest, kind, above),
      );
    }
  }
});

it('lays bays of six feet from twelve-foot boards as carpenters do', () => {
  const length = (from: number, to: number) => 72 * (to - from);
  const divide = (kind: JointRule['kind'], above: readonly number[], bays = 4) =>
    divideCourse({ places: bays + 1, length, longest: 144 }, kind, new Set(above));
  // Four bays come out of two boards one way only; staggered, every other course begins with a short one.
  expect(divide('longest', [2])).toEqual([2]);
  expect(divide('staggered', [2])).toEqual([1, 3]);
  // Of three bays the long board may lie at either end.
  expect(divide('longest', [], 3)).toEqual([2]);
  expect(divide('longest', [2], 3)).toEqual([1]);
});

it('leaves a bay whole that no board is long enough for, and joints at every place where no length is known', () => {
  const length = (from: number, to: number) => 100 * (to - from);
  expect(divideCourse({ places: 4, length, longest: 90 }, 'longest', new Set())).toEqual([1, 2]);
  expect(divideCourse({ places: 4, length }, 'longest', new Set())).toEqual([1, 2]);
});

it('counts places from the first', () => {
  expect(between(5, 2)).toEqual([2, 4]);
  expect(between(4, 2)).toEqual([2]);
  expect(between(1, 3)).toEqual([]);
});
