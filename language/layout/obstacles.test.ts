import { expect, it } from 'vitest';
import { jobOf, postsOnly, sourced } from '../../tests/specs/index.ts';
import { checkRun } from '../checks/index.ts';
import type { NoHole, PostSpacing, RunSpec } from '../model/index.ts';
import { feet, inches, parseLength, type Ticks } from '../units/index.ts';
import { clearChoices, hits } from './obstacles.ts';
import { layOutRun } from './run.ts';

const noHole = (from: number, to: number, reason?: string): NoHole => ({
  from: inches(from),
  to: inches(to),
  ...(reason === undefined ? {} : { reason }),
  origin: sourced(0, 'run bank/no-hole').origin,
});

const atMost = (limit: number): PostSpacing => ({ kind: 'at-most', limit: inches(limit), measured: 'clear' });

function laid(spec: RunSpec) {
  const run = layOutRun(spec);
  return {
    run,
    clears: run.bays.map(({ clear }) => clear / inches(1)),
    codes: run.problems.map(({ code }) => code),
  };
}

// By hand: 240 in less 5 posts of 3-1/2 is 222-1/2, 4 bays of 55-5/8 (a common worked division); the middle post is
// at 3-1/2 + 2 x 55-5/8 + 3-1/2 = 118-1/4 to 121-3/4. Five bays: (240 - 21) / 5 = 43.8, posts at 47.3, 94.6, 141.9,
// 189.2, none within 116 to 124.
it('takes more equal bays when a post of the ordinary division is on a pipe', () => {
  const spec = {
    ...postsOnly(inches(240), { spacing: atMost(66) }),
    noHoles: [noHole(116, 124, 'water pipe')],
  };
  const { run, clears } = laid(spec);
  expect(run.postMoves[0]?.post).toBe(inches(118.25));
  expect(clears).toHaveLength(5);
  for (const clear of clears) expect(Math.abs(clear - 43.8)).toBeLessThanOrEqual(1 / 16);
});

// By hand, the other choices at 4 bays: one wide bay over 116 to 124, next to the middle. Two bays e before it end at
// 3-1/2 + 2e + 2 x 3-1/2 <= 116, so e <= 52-3/4; the wide one is 222-1/2 - 3 x 52-3/4 = 64-1/4, within 66.
it('works out the wide middle and the mirrored pair', () => {
  const spec = {
    ...postsOnly(inches(240), { spacing: { kind: 'bays', count: 4 } }),
    noHoles: [noHole(116, 124)],
  };
  const { run, clears } = laid(spec);
  expect(run.postMoves[0]?.chosen.kind).not.toBe('equal');
  expect(clears).toHaveLength(4);
  const choices = [run.postMoves[0]?.chosen, ...(run.postMoves[0]?.others ?? []).map(({ choice }) => choice)];
  const wide = choices.find((choice) => choice?.kind === 'wide' && choice.clears.length === 4);
  expect(wide?.clears.map((clear) => clear / inches(1)).sort()).toEqual([52.75, 52.75, 52.75, 64.25]);
  // A pair that meets at a post with the obstacle in its first: posts after two bays a and after the pair's first b end
  // before 116 or begin after 124; whichever is built, all but the pair are alike and so are the two.
  const pair = choices.find((choice) => choice?.kind === 'pair' && choice.clears.length === 4);
  const [b1, b2] = (pair?.unlike ?? []).map((i) => pair?.clears[i] ?? 0);
  expect(Math.abs((b1 ?? 0) - (b2 ?? 9e9))).toBeLessThanOrEqual(inches(1 / 16));
});

it('says that a stated post stands there, and builds it', () => {
  const stations: PostSpacing = { kind: 'stations', stations: [sourced(inches(60))] };
  const spec = { ...postsOnly(inches(120), { spacing: stations }), noHoles: [noHole(62, 64)] };
  const { run, codes } = laid(spec);
  expect(codes).toEqual(['post-in-obstacle']);
  expect(run.problems[0]?.args.why).toBe('stated');
  expect(run.posts).toHaveLength(3);
});

it('counts the width of the post, and what only touches it as clear', () => {
  expect(hits(inches(60), inches(3.5), noHole(63.5, 70))).toBe(false);
  expect(hits(inches(60), inches(3.5), noHole(63.4375, 70))).toBe(true);
  expect(hits(inches(60), inches(3.5), noHole(50, 60))).toBe(false);
});

it('builds each choice that is offered as an edit', () => {
  const spec = { ...postsOnly(feet(24), { spacing: atMost(78) }), noHoles: [noHole(138, 150)] };
  const { run } = laid(spec);
  const [move] = run.postMoves;
  const findings = checkRun(run, jobOf([spec]));
  expect(findings.filter(({ code }) => code === 'post-moved-for-obstacle')[0]?.fixes?.length).toBe(
    move?.others.length,
  );
  expect(move?.others.length).toBeGreaterThan(1);
  for (const { choice, changes } of move?.others ?? []) {
    const text = changes[0]?.text ?? '';
    const count = /^(\d+) bays$/.exec(text)?.[1];
    const spacing: PostSpacing = count
      ? { kind: 'bays', count: Number(count) }
      : {
          kind: 'stations',
          stations: text
            .slice(3)
            .split(', ')
            .map((one) => sourced(ticksOf(one))),
        };
    const again = layOutRun({ ...spec, spacing: sourced(spacing) });
    expect(again.posts.slice(1, -1).map(({ from }) => from)).toEqual(choice.posts);
    expect(again.problems).toEqual([]);
  }
});

function ticksOf(text: string): Ticks {
  const length = parseLength(text);
  if (!length.ok) throw new Error(text);
  return length.ticks;
}

/** Every way to put clear widths of whole units next to one another. */
function* divisions(total: number, bays: number, limit: number): Generator<number[]> {
  if (bays === 1) {
    if (total > 0 && total <= limit) yield [total];
    return;
  }
  for (let first = 1; first <= Math.min(limit, total - bays + 1); first++) {
    for (const rest of divisions(total - first, bays - 1, limit)) yield [first, ...rest];
  }
}

// Checked against trying every division: units of 1, posts 1 wide.
it('finds the best wide middle and mirrored pair there are', () => {
  let compared = 0;
  for (const length of [17, 23, 30]) {
    for (const limit of [7, 9, 12]) {
      for (const from of [5, 8, 11, 14]) {
        for (const wide of [1, 2, 4]) {
          const stretch = [noHoleOf(from, from + wide)];
          const equally = (bays: number) => {
            const total = length - (bays - 1);
            if (total < bays) return undefined;
            return Array.from({ length: bays - 1 }, (_, i) => Math.round((total * (i + 1)) / bays) + i);
          };
          const bays = Math.max(2, Math.ceil((length + 1) / (limit + 1)));
          const found = clearChoices({
            room: [0, length],
            along: 1,
            step: 1,
            most: () => limit,
            bays,
            counted: false,
            noHoles: stretch,
            equally,
          });
          for (const count of [bays, bays + 1]) {
            for (const kind of ['wide', 'pair'] as const) {
              const expected = bestOf(kind, length, count, limit, stretch);
              const own = found.filter((one) => one.kind === kind && one.clears.length === count);
              const like = found.filter(
                (one) => one.clears.length === count && expected !== undefined && one.widest <= expected,
              );
              compared++;
              // What is found already as another kind is not named twice.
              if (expected === undefined) expect(own).toEqual([]);
              else
                expect(like.length, `${kind} ${length} ${limit} ${from} ${wide} ${count}`).toBeGreaterThan(0);
            }
          }
          for (const { posts } of found)
            for (const post of posts) expect(stretch.some((one) => hits(post, 1, one))).toBe(false);
        }
      }
    }
  }
  expect(compared).toBe(3 * 3 * 4 * 3 * 4);
});

const noHoleOf = (from: number, to: number): NoHole => ({ from, to, origin: sourced(0).origin });

function bestOf(
  kind: 'wide' | 'pair',
  length: number,
  bays: number,
  limit: number,
  noHoles: readonly NoHole[],
): number | undefined {
  let best: number | undefined;
  for (const clears of divisions(length - (bays - 1), bays, limit)) {
    const posts = clears
      .slice(0, -1)
      .map((_, i) => clears.slice(0, i + 1).reduce((sum, one) => sum + one, i));
    if (posts.some((post) => noHoles.some((one) => hits(post, 1, one)))) continue;
    if (!isKind(kind, clears, posts, length, noHoles[0] as NoHole)) continue;
    const widest = Math.max(...clears);
    if (best === undefined || widest < best) best = widest;
  }
  return best;
}

function isKind(
  kind: 'wide' | 'pair',
  clears: number[],
  posts: number[],
  length: number,
  noHole: NoHole,
): boolean {
  const { from } = noHole;
  const to = Math.min(length, noHole.to);
  const begins = (bay: number) => (bay === 0 ? 0 : (posts[bay - 1] ?? 0) + 1);
  const ends = (bay: number) => begins(bay) + (clears[bay] ?? 0);
  const alike = (bays: number[]) => new Set(bays).size <= 1;
  if (kind === 'wide') {
    return clears.some(
      (clear, i) =>
        begins(i) <= from &&
        to <= ends(i) &&
        alike(clears.filter((_, j) => j !== i)) &&
        clears.every((one, j) => j === i || one < clear),
    );
  }
  if (clears.length < 3) return false;
  return clears.some((one, i) =>
    [1, 2].some((apart) => {
      const other = clears[i + apart];
      if (other === undefined || other < one || other - one > 1) return false;
      const rest = clears.filter((_, j) => j !== i && j !== i + apart);
      if (!alike(rest) || rest[0] === one) return false;
      return apart === 1
        ? begins(i) <= from && to <= ends(i + 1)
        : begins(i + 1) - 1 <= from && to <= ends(i + 1) + 1;
    }),
  );
}
