import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  baysOf,
  findOverlaps,
  findUnsupported,
  layOutRun,
  type Piece,
  type RunLayout,
} from '../../language/layout/index.ts';
import type { FlatStock, JointRule, RunSpec } from '../../language/model/index.ts';
import { feet, inches, type Ticks } from '../../language/units/index.ts';
import { board, patternOf, postOf, runOf, sourced } from '../specs/index.ts';

const RULES: readonly (JointRule | undefined)[] = [
  undefined,
  { kind: 'staggered' },
  { kind: 'in-line' },
  { kind: 'every', posts: 1 },
  { kind: 'every', posts: 2 },
];

const sold = (stock: FlatStock, lengths: readonly Ticks[]): FlatStock => ({
  ...stock,
  lengths: lengths.map((one) => sourced(one)),
});

/** Runs with slats on faces, some with a gate, some on ground that falls, some measured. */
const runs: fc.Arbitrary<RunSpec> = fc
  .record({
    bays: fc.integer({ min: 1, max: 9 }),
    clear: fc.integer({ min: 30, max: 90 }),
    lengths: fc.subarray([8, 10, 12, 16], { minLength: 1 }),
    rule: fc.constantFrom(...RULES),
    gap: fc.constantFrom(0, 1 / 8, 1 / 2),
    face: fc.constantFrom('front', 'back', 'both', 'alternate'),
    falls: fc.boolean(),
    steps: fc.boolean(),
    gate: fc.boolean(),
  })
  .map((drawn): RunSpec => {
    const plank = sold(board('plank', inches(5.5), inches(1)), drawn.lengths.map(feet));
    const along = drawn.bays * (drawn.clear + 3.5) + 3.5;
    const gated = drawn.gate && drawn.bays > 2;
    const kind = drawn.face === 'front' || drawn.face === 'back' ? 'face' : drawn.face;
    const spec = runOf({
      length: inches(along),
      post: postOf('post', inches(3.5), inches(3.5)),
      spacing: { kind: 'bays', count: drawn.bays },
      height: inches(44),
      bottom: inches(2),
      mounting: kind === 'face' ? { kind, face: drawn.face as 'front' | 'back' } : { kind },
      pattern: patternOf('even', [plank], { gap: inches(1 / 2) }),
      remedies: [{ kind: 'gaps', low: inches(1 / 4), high: inches(1) }],
      endGap: inches(1 / 8),
      gates: gated
        ? [
            {
              name: 'wicket',
              opening: inches(40),
              station: inches(Math.floor(along / 2)),
              post: postOf('post', inches(3.5), inches(3.5)),
              frame: board('bar', inches(3.5), inches(1.5)),
              brace: null,
              pattern: patternOf('even', [plank], { gap: inches(1 / 2) }),
            },
          ]
        : [],
    });
    return {
      ...spec,
      slatJoints: { gap: sourced(inches(drawn.gap)), ...(drawn.rule ? { rule: sourced(drawn.rule) } : {}) },
      ...(drawn.falls
        ? {
            levels: [
              { station: 0, level: 0, origin: spec.origin },
              { station: spec.length.value, level: -inches(30), origin: spec.origin },
            ],
            slope: sourced(drawn.steps ? ('in-steps' as const) : ('level-top' as const)),
          }
        : {}),
    };
  });

it('holds every end of a slat on a post, sells no board longer than there is, and covers the run', () => {
  let jointed = 0;
  let sound = 0;
  fc.assert(
    fc.property(runs, (spec) => {
      const run = layOutRun(spec);
      if (!run.sound) return;
      sound++;
      expect(findOverlaps(run)).toEqual([]);
      expect(findUnsupported(run)).toEqual([]);
      const slats = run.pieces.filter(({ role, gate }) => role === 'slat' && gate === undefined);
      expect(new Set(run.pieces.map(({ key }) => key)).size).toBe(run.pieces.length);
      expect(new Set(run.pieces.map(({ label }) => label)).size).toBe(run.pieces.length);
      for (const slat of slats) {
        endsOnPosts(run, slat);
        jointed += baysOf(slat).length > 1 ? 1 : 0;
        const longest = Math.max(
          ...spec.infill.pattern.repeat.flatMap(({ value }) => value.lengths.map((one) => one.value)),
        );
        if (baysOf(slat).length > 1 && spec.slatJoints?.rule?.value.kind !== 'every')
          expect(slat.cut.longPoint + inches(1 / 4)).toBeLessThanOrEqual(longest);
      }
      coversEveryBay(run, slats);
    }),
    { numRuns: 150, seed: 11 },
  );
  expect(sound).toBeGreaterThan(100);
  expect(jointed).toBeGreaterThan(500);
});

/** Each end has at least the trade's 3/4" of its post under it. */
function endsOnPosts({ posts }: RunLayout, { solid, supports }: Piece): void {
  const along = solid.vertices.map(([x]) => x);
  for (const end of [Math.min(...along), Math.max(...along)]) {
    const post = posts.find(({ from, to }) => end >= from && end <= to);
    expect(post).toBeDefined();
    expect(supports).toContain(post?.key);
    if (post) expect(Math.max(end - post.from, post.to - end)).toBeGreaterThanOrEqual(inches(3 / 4));
  }
}

/** Of every line in every bay, one slat goes from post to post. */
function coversEveryBay(run: RunLayout, slats: readonly Piece[]): void {
  for (const bay of run.bays) {
    if (bay.gate !== undefined) continue;
    const courses = run.courses.get(bay.number) ?? [];
    expect(courses.length).toBeGreaterThan(0);
    for (const { number } of courses) {
      const over = slats.filter(({ course, side, solid }) => {
        const along = solid.vertices.map(([x]) => x);
        return (
          course === number &&
          side !== (run.spec.infill.mounting.value.kind === 'face' ? undefined : 'back') &&
          Math.min(...along) <= bay.from &&
          Math.max(...along) >= bay.to
        );
      });
      expect(over).toHaveLength(1);
    }
  }
}

it('staggers joints where neighboring courses leave a choice', () => {
  const plank = sold(board('plank', inches(5.5), inches(1)), [feet(12)]);
  const spec = runOf({
    length: inches(4 * 70 + 3.5),
    post: postOf('post', inches(3.5), inches(3.5)),
    spacing: { kind: 'bays', count: 4 },
    height: inches(44),
    bottom: inches(2),
    mounting: { kind: 'face', face: 'front' },
    pattern: patternOf('even', [plank], { gap: inches(1 / 2) }),
    remedies: [{ kind: 'gaps', low: inches(1 / 4), high: inches(1) }],
    endGap: inches(1 / 8),
  });
  const starts = (rule?: JointRule) => {
    const run = layOutRun({ ...spec, ...(rule ? { slatJoints: { rule: sourced(rule) } } : {}) });
    return [1, 2, 3].map((course) =>
      run.pieces.filter((piece) => piece.course === course).map(({ bay }) => bay),
    );
  };
  // Two bays of 70" come out of a board of 12', three do not.
  expect(starts()).toEqual([
    [1, 3],
    [1, 3],
    [1, 3],
  ]);
  expect(starts({ kind: 'staggered' })).toEqual([
    [1, 3],
    [1, 2, 4],
    [1, 3],
  ]);
  expect(starts({ kind: 'every', posts: 1 })).toEqual([
    [1, 2, 3, 4],
    [1, 2, 3, 4],
    [1, 2, 3, 4],
  ]);
});

it('moves joints with posts that were measured', () => {
  const plank = sold(board('plank', inches(5.5), inches(1)), [feet(12)]);
  const spec = runOf({
    length: inches(4 * 70 + 3.5),
    post: postOf('post', inches(3.5), inches(3.5)),
    spacing: { kind: 'bays', count: 4 },
    height: inches(44),
    bottom: inches(2),
    mounting: { kind: 'face', face: 'front' },
    pattern: patternOf('even', [plank], { gap: inches(1 / 2) }),
    remedies: [{ kind: 'gaps', low: inches(1 / 4), high: inches(1) }],
    endGap: inches(1 / 8),
  });
  const origin = spec.origin;
  const built = layOutRun({
    ...spec,
    measured: { origin, bays: [{ number: 1, middle: inches(67), origin }], posts: [], cuts: [] },
  });
  const [first] = built.pieces.filter(({ role }) => role === 'slat');
  // The first two bays are 67" and 66-1/2" clear: 3.5 + 67 + 3.5 + 66.5 + 1.75 less half a gap of 1/8", down to 1/16".
  expect(first?.cut.longPoint).toBe(inches(142 + 3 / 16));
});
