import fc from 'fast-check';
import { expect, it } from 'vitest';
import { arbitraryRunSpec, bicycleCourt, postOf, postsOnly, sourced } from '../../tests/specs/index.ts';
import type { PostSpacing, RunSpec } from '../model/index.ts';
import { feet, inches, METRIC, mm, type Ticks } from '../units/index.ts';
import { type PlacedPosts, placePosts } from './posts.ts';

function placed(spec: RunSpec): PlacedPosts {
  const result = placePosts(spec);
  if (!('posts' in result)) throw new Error(JSON.stringify(result));
  return result;
}

function codes(spec: RunSpec): string[] {
  const result = placePosts(spec);
  return 'posts' in result ? [] : result.map(({ code }) => code);
}

const marks = (spec: RunSpec) => placed(spec).posts.map(({ mark }) => [mark.from, mark.to]);
const clears = (spec: RunSpec) => placed(spec).bays.map(({ bay }) => bay.clear);

// 240 in out to out less 5 posts of 3-1/2 leaves 222-1/2 for 4 bays: 55-5/8 each. Three bays would be 75-1/3 or so.
it('divides 240 in into 4 bays of 55-5/8 where 66 clear is the most', () => {
  const spec = postsOnly(inches(240), { spacing: { kind: 'at-most', limit: inches(66), measured: 'clear' } });
  expect(placed(spec).posts).toHaveLength(5);
  expect(clears(spec)).toEqual(Array(4).fill(inches(55.625)));
});

// By hand: centers (4200 - 90) / 3 = 1370 apart, the first at 45; clear 1370 - 90 = 1280.
it('divides 4200 mm into three bays of 1280', () => {
  const spec = postsOnly(mm(4200), {
    measure: METRIC,
    post: postOf('d', mm(90), mm(90)),
    spacing: { kind: 'bays', count: 3 },
  });
  expect(marks(spec).map(([from, to]) => ((from ?? 0) + (to ?? 0)) / 2)).toEqual(
    [45, 1415, 2785, 4155].map(mm),
  );
  expect(clears(spec)).toEqual([1280, 1280, 1280].map(mm));
});

// By hand: 90 + 1220 + 140 + 1000 + 140 + 1220 + 90 = 3900.
it('stands gate posts outside the opening', () => {
  const spec = gated({ station: mm(1450), opening: mm(1000), along: mm(140) });
  expect(marks(spec)).toEqual(
    [
      [0, 90],
      [1310, 1450],
      [2450, 2590],
      [3810, 3900],
    ].map((pair) => pair.map(mm)),
  );
  expect(clears(spec)).toEqual([1220, 1000, 1220].map(mm));
  expect(placed(spec).bays.map(({ gate }) => gate?.name)).toEqual([undefined, 'cycles', undefined]);
});

it('takes a gate post at an end of the run for the end post', () => {
  const spec = gated({ station: mm(140), opening: mm(1000), along: mm(140) });
  expect(marks(spec).slice(0, 2)).toEqual([
    [0, mm(140)],
    [mm(1140), mm(1280)],
  ]);
});

it('marks posts on the tape from station 0, so that no error piles up', () => {
  // 100 ft in 7 bays: (1200 - 8 x 3.5) / 7 = 167.43 in, on no sixteenth.
  const spec = postsOnly(feet(100), { spacing: { kind: 'bays', count: 7 } });
  const step = spec.measure.step;
  const pitch = (inches(1200) - inches(3.5)) / 7;
  for (const [index, [from]] of marks(spec).entries()) {
    expect((from ?? 0) % step).toBe(0);
    expect(Math.abs((from ?? 0) - index * pitch)).toBeLessThanOrEqual(step / 2);
  }
});

it('keeps posts at stated stations and ends without their being listed', () => {
  const stations = [inches(40), inches(81)].map((station) => sourced(station));
  const spec = postsOnly(inches(120), { spacing: { kind: 'stations', stations } });
  expect(marks(spec).map(([from]) => from)).toEqual([0, 40, 81, 116.5].map(inches));
});

it('counts posts and bays as they are said: posts with those of gates, bays without them', () => {
  for (const spacing of [
    { kind: 'bays', count: 5 },
    { kind: 'posts', count: 7 },
  ] as const) {
    const spec = bicycleCourt({ spacing });
    expect(placed(spec).posts).toHaveLength(7);
    expect(placed(spec).bays.filter(({ gate }) => !gate)).toHaveLength(5);
  }
});

it('sums posts and bays to the run to the tick', () => {
  fc.assert(
    fc.property(arbitraryRunSpec, (spec) => {
      const result = placePosts(spec);
      if (!('posts' in result)) return;
      const posts = result.posts.map(({ mark }) => mark.to - mark.from);
      const all = [...posts, ...result.bays.map(({ bay }) => bay.clear)];
      expect(all.reduce((sum, part) => sum + part, 0)).toBe(spec.length.value);
      expect(Math.min(...all)).toBeGreaterThan(0);
      expect(result.posts.map(({ mark }) => mark.number)).toEqual(result.posts.map((_, index) => index + 1));
    }),
    { numRuns: 500 },
  );
});

it('takes the fewest equal bays that keep the limit, clear or on center', () => {
  const size = fc.integer({ min: inches(20), max: inches(400) });
  const limits = fc.integer({ min: inches(5), max: inches(120) });
  const ways = fc.constantFrom('clear' as const, 'on-center' as const);
  fc.assert(
    fc.property(size, limits, ways, (length, limit, measured) => {
      const along = inches(3.5);
      const spec = postsOnly(length, {
        measure: { unit: 'mm', step: 1 },
        spacing: { kind: 'at-most', limit, measured },
      });
      // By trying: one more bay until none is over the limit.
      let bays = 1;
      const each = () => (length - (bays + 1) * along) / bays + (measured === 'clear' ? 0 : along);
      while (each() > limit) bays++;
      expect(placed(spec).bays).toHaveLength(bays);
    }),
  );
});

it('spreads bays over stretches so that no other way has a narrower widest bay', () => {
  const along = inches(3.5);
  fc.assert(
    fc.property(fc.integer({ min: 2, max: 9 }), fc.integer({ min: 60, max: 200 }), (count, station) => {
      const spec = bicycleCourt({ spacing: { kind: 'bays', count } });
      const gate = spec.gates[0];
      if (!gate) throw new Error('the court has a gate');
      const moved = { ...spec, gates: [{ ...gate, station: sourced(inches(station)) }] };
      const side = gate.post.value.along.value + along;
      const rooms = [inches(station) - side, spec.length.value - inches(station) - gate.opening.value - side];
      const clear = (bays: number, room = 0) => (room - (bays - 1) * along) / bays;
      const widest = (left: number) => Math.max(clear(left, rooms[0]), clear(count - left, rooms[1]));
      const best = Math.min(...Array.from({ length: count - 1 }, (_, at) => widest(at + 1)));
      const built = placed(moved).bays.flatMap((bay) => (bay.gate ? [] : [bay.bay.clear]));
      expect(Math.abs(Math.max(...built) - best)).toBeLessThanOrEqual(spec.measure.step);
    }),
  );
});

const stations = (...at: number[]): PostSpacing => ({
  kind: 'stations',
  stations: at.map((station) => sourced(inches(station))),
});

it.each<[string, RunSpec]>([
  ['posts-overlap', postsOnly(inches(120), { spacing: stations(40, 42) })],
  ['posts-overlap', postsOnly(inches(6))],
  ['stations-order', postsOnly(inches(120), { spacing: stations(80, 40) })],
  ['station-outside', postsOnly(inches(120), { spacing: stations(118) })],
  ['no-room', postsOnly(inches(20), { spacing: { kind: 'bays', count: 6 } })],
  ['spacing-too-small', onCenter(inches(3))],
  ['no-room', postsOnly(inches(120), { spacing: { kind: 'at-most', limit: 1, measured: 'clear' } })],
  ['too-few-posts', postsOnly(inches(120), { spacing: { kind: 'posts', count: 1 } })],
  ['too-few-bays', bicycleCourt({ spacing: { kind: 'bays', count: 1 } })],
  ['too-many-posts', postsOnly(feet(9999), { spacing: { kind: 'bays', count: 3000 } })],
  ['gate-outside', gated({ station: mm(100), opening: mm(1000), along: mm(140) })],
  ['gate-outside', gated({ station: mm(2900), opening: mm(1000), along: mm(140) })],
  ['gate-too-wide', gated({ station: mm(140), opening: mm(3800), along: mm(140) })],
  ['posts-overlap', gated({ station: mm(200), opening: mm(1000), along: mm(140) })],
])('tells %s', (code, spec) => {
  expect(codes(spec)).toContain(code);
});

it('tells of posts in an opening and of gates in one another', () => {
  const spec = bicycleCourt();
  const gate = spec.gates[0];
  if (!gate) throw new Error('the court has a gate');
  expect(codes({ ...spec, spacing: sourced(stations(130)) })).toEqual(['post-in-opening']);
  const other = { ...gate, name: 'other', station: sourced(inches(130)) };
  expect(codes({ ...spec, gates: [gate, other] })).toEqual(['gates-overlap']);
});

it('lets two gates share the post between them', () => {
  const spec = bicycleCourt();
  const gate = spec.gates[0];
  if (!gate) throw new Error('the court has a gate');
  const next = gate.station.value + gate.opening.value + gate.post.value.along.value;
  const other = { ...gate, name: 'other', station: sourced(next) };
  const { bays } = placed({ ...spec, gates: [gate, other] });
  expect(bays.filter((bay) => bay.gate).map(({ bay }) => bay.clear)).toEqual([inches(42), inches(42)]);
  const both = bays.findIndex((bay) => bay.gate);
  expect(bays[both]?.right).toBe(bays[both + 1]?.left);
});

function onCenter(limit: Ticks): RunSpec {
  return postsOnly(inches(120), { spacing: { kind: 'at-most', limit, measured: 'on-center' } });
}

function gated({ station, opening, along }: { station: Ticks; opening: Ticks; along: Ticks }): RunSpec {
  const spec = bicycleCourt({ measure: METRIC, length: mm(3900), post: postOf('g', mm(90), mm(90)) });
  return {
    ...spec,
    spacing: sourced<PostSpacing>({ kind: 'at-most', limit: mm(1300), measured: 'clear' }),
    gates: spec.gates.map((gate) => ({
      ...gate,
      station: sourced(station),
      opening: sourced(opening),
      post: sourced(postOf('gate', along, mm(90))),
    })),
  };
}
