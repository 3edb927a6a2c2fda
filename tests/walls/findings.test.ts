import { expect, it } from 'vitest';
import { checked, fixed } from '../../language/checks/testing/checked.ts';
import { placeFindings } from '../../server/work/place-findings.ts';
import { openJob } from '../jobs/index.ts';
import { clapped } from './index.ts';

const WALL = /^(wall|filler)-/;

async function told(text: string) {
  const found = await checked(text);
  return { ...found, wall: found.findings.filter(({ code }) => WALL.test(code)) };
}

// Each by hand, in inches; slats from 2-1/2 to 50 up, and what is on the tape in marks of 1/16.
it.each([
  // Open gaps: 1 to 3 is usual.
  ['begins at wall', [], []],
  ['begins at wall, 1" off', [], []],
  ['begins at wall, 15/16" off', ['wall-gap-small'], ['begins at wall, 1" off']],
  ['ends at wall, 3" off', [], []],
  ['ends at wall, 3-1/4" off', ['wall-gap-large'], ['ends at wall, 3" off']],
  // Leaning 1 in 50 up: the gap is 1/2 at the top, and 1-1/2 off it is 1.
  [
    `begins at wall, leans toward 1" in 50"`,
    ['wall-gap-small'],
    [`begins at wall, 2" off, leans toward 1" in 50"`],
  ],
  // From 5-1/2 at 2-1/2 up... it strays by 4: no place of the post keeps it between 1 and 3.
  [`begins at wall, 5" off, at 0" toward 0", at 50" toward 4"`, ['wall-gap-large'], []],
  // 1-1/2 toward at the top: 1/2 into a post 1 off; with the post 2-1/2 off the gap there is 1.
  [
    `begins at wall, 1" off, leans toward 1-1/2" in 50"`,
    ['wall-in-post'],
    [`begins at wall, 2-1/2" off, leans toward 1-1/2" in 50"`],
  ],
  // With a filler that is at least 1/2 where it is narrowest: 2 off.
  [
    `begins at wall, 1" off, leans toward 1-1/2" in 50"; scribed filler slat`,
    ['wall-in-post'],
    [`begins at wall, 2" off, leans toward 1-1/2" in 50"; scribed filler slat`],
  ],
  // 1/4 at the top where 3/4 is asked for.
  [
    `ends at wall, 1-1/4" off, leans toward 1" in 50"; scribed filler slat, at least 3/4"`,
    ['filler-narrow'],
    [`ends at wall, 1-3/4" off, leans toward 1" in 50"; scribed filler slat, at least 3/4"`],
  ],
  // 4 at the top, of a board of 3-1/2.
  [
    `ends at wall, 3" off, leans away 1" in 50"; scribed filler slat`,
    ['filler-wide'],
    [`ends at wall, 2-1/2" off, leans away 1" in 50"; scribed filler slat`],
  ],
  // It strays by 4 over all of it, and the board is 3-1/2: no place of the post does.
  [`ends at wall, 3" off, at 0" toward 2-1/2", at 50" away 1-1/2"; scribed filler slat`, ['filler-wide'], []],
  [`ends at wall, 2" off, at 0" toward 0", at 40" toward 1/4"`, ['wall-unmeasured'], []],
  [`ends at wall, 2" off, at 3" toward 0"`, ['wall-unmeasured'], []],
  [`ends at wall, 2" off, at 2" toward 0", at 50" toward 1/4"`, [], []],
] as const)('of `%s` tells %j', async (walls, codes, [mended]) => {
  const text = clapped(walls);
  const found = await told(text);
  expect(found.wall.map(({ code }) => code)).toEqual(codes);
  const fixes = found.wall.flatMap((finding) => finding.fixes ?? []);
  expect(fixes.length).toBe(mended ? 1 : 0);
  if (!mended) return;
  const after = await fixed(found, fixes[0]);
  expect(after.open.document.textDocument.getText()).toBe(clapped(mended));
  expect(after.findings.filter(({ code }) => WALL.test(code))).toEqual([]);
});

it('holds what is on the end post against the wall too', async () => {
  const cap = 'cap lid { flat; thickness 1"; overhang 1-1/4" }\n';
  const found = await told(cap + clapped('begins at wall, 1" off\n  caps lid'));
  // The cap reaches 1-1/4 past the post: 1/4 into the wall.
  expect(found.wall.map(({ args }) => [args.piece, args.depth, args.off])).toEqual([
    ['P1-CAP', '1/4"', '1-1/4"'],
  ]);
});

it('takes limits that the job sets', async () => {
  const job = (walls: string, limit: string) =>
    clapped(walls, ['measure inches to 1/16"', `measure inches to 1/16"; threshold ${limit}`]);
  expect((await told(job('begins at wall, 7/8" off', 'wall-gap-small 3/4"'))).wall).toEqual([]);
  expect((await told(job('begins at wall, 2-1/2" off', 'wall-gap-large 2"'))).wall).toHaveLength(1);
});

it.each([
  [`begins at wall`, `length 118-1/2" between walls`, 'one-wall'],
  [`begins at wall, 60" off; ends at wall, 60" off`, `length 118-1/2" between walls`, 'no-room'],
  [`scribed filler slat`, `length 118-1/2"`, 'no-wall'],
  [`begins at wall, at 1' toward 1/4", at 12" away 1/4"`, `length 118-1/2"`, 'same-height'],
])('says what of `%s` with `%s` does not go together', async (walls, length, reason) => {
  const { job } = await openJob(clapped(walls, ['length 118-1/2"', length]));
  expect(job.problems.map(({ code, args }) => [code, args.reason])).toEqual([['wall-unclear', reason]]);
});

it('puts no filler in the middle of split posts', async () => {
  const text = clapped('begins at wall, 1" off; scribed filler slat', [
    'slats on front face; joints at every post',
    'slats through split posts',
  ]);
  const open = await openJob(text);
  const { document, services, layout, job } = open;
  expect(job.problems.map(({ args }) => args.reason)).toEqual(['split-posts']);
  const placed = placeFindings(services, document, open).filter(({ code }) => code === 'wall-unclear');
  expect(placed.map(({ range }) => document.textDocument.getText(range))).toEqual(['scribed filler slat']);
  expect(layout.runs.map(({ walls }) => walls.length)).toEqual([1]);
  expect(layout.runs.flatMap(({ pieces }) => pieces).filter(({ role }) => role === 'filler')).toEqual([]);
});

it('knows no wall where two runs meet', async () => {
  const more =
    'run next { after bank; length 60"; posts stake, 1 bays; height 50"; bottom 2-1/2"; slats on front face; fill rows; begins at wall }\n';
  const { job, findings, layout } = await openJob(`${clapped('ends at wall')}${more}`);
  expect(job.problems.map(({ args }) => args.reason).sort()).toEqual(['comes-after', 'followed']);
  expect(layout.runs.map(({ walls }) => walls)).toEqual([[], []]);
  expect(findings.filter(({ code }) => code === 'wall-unclear')).toHaveLength(2);
});

it('holds an open gap against the ball of a guard and of a pool', async () => {
  const guard = clapped('drop 4\' behind; begins at wall, 5" off', [
    'measure inches to 1/16"',
    'measure inches to 1/16"; rules us-model-codes, us-pool',
  ]);
  const of = async (text: string, code: string) => (await checked(text, code)).messages;
  expect((await of(guard, 'guard-opening'))[0]).toContain('the gap at the wall of bank, 5" wide');
  const filled = guard.replace('5" off', '3" off; scribed filler slat');
  expect(await of(filled, 'guard-opening')).toEqual([]);
  const pool = guard.replace("drop 4' behind", 'pool behind');
  expect((await of(pool, 'pool-opening'))[0]).toContain('an opening of 5" at the wall beside bank');
});

it('is placed at the statements that say it', async () => {
  const open = await openJob(clapped('begins at wall, 1/2" off'));
  const [finding] = placeFindings(open.services, open.document, open).filter(({ code }) => WALL.test(code));
  expect(open.document.textDocument.getText(finding?.range)).toBe('begins at wall, 1/2" off');
});
