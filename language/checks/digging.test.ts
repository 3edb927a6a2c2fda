import { expect, it } from 'vitest';
import { workingDaysBetween } from './digging.ts';
import { checkLayout, messageOf } from './registry.ts';
import { checked, screen } from './testing/checked.ts';

type Change = readonly [string, string];

/** The sound screen, 50" high, in a job that states more. */
const ruled = (sets: string, run: string, ...changes: Change[]) =>
  screen(['to 1/16" }', `to 1/16"; ${sets} }`], ['run bank {', `run bank {\n  ${run}`], ...changes);

it('counts full working days (calendar of May 2026: the 1st is a Friday)', async () => {
  const day = (text: string) => Date.parse(`${text}T00:00:00Z`) / 86_400_000;
  // Between Friday the 1st and Wednesday the 6th lie Monday and Tuesday.
  expect(workingDaysBetween(day('2026-05-01'), day('2026-05-06'))).toBe(2);
  expect(workingDaysBetween(day('2026-05-01'), day('2026-05-04'))).toBe(0);
  expect(workingDaysBetween(day('2026-05-04'), day('2026-05-08'))).toBe(3);
  const ticket = (dates: string) => checked(ruled(`ticket "A", ${dates}`, ''));
  expect((await ticket('called "2026-05-01", digging "2026-05-06", until "2026-05-06"')).findings).toEqual(
    [],
  );
  expect((await ticket('called "2026-05-01", digging "2026-05-05"')).messages.join()).toContain(
    'there is 1 full working day',
  );
  expect(
    (await ticket('called "2026-02-30", digging "2026-05-06"')).findings.map(({ code }) => code),
  ).toEqual(['unknown-word']);
});

it('asks for a ticket only where posts are dug and rules for notice are named', async () => {
  expect((await checked(ruled('rules us-digging', ''))).findings.map(({ code }) => code)).toEqual([
    'no-ticket',
  ]);
  const stated = 'rules us-digging; ticket "A", called "2026-05-01", digging "2026-05-06"';
  expect((await checked(ruled(stated, ''))).findings).toEqual([]);
});

it('digs by hand within 24" of a line, from the edge of the hole', async () => {
  // The middle post, 57-1/2" to 61", stands in a hole of 12": 53-1/4" to 65-1/4".
  const found = async (line: string) =>
    (await checked(ruled('', `hole 12" diameter; utility from ${line} for "gas"`), 'near-utility')).findings;
  expect((await found('89" to 89-1/8"')).map(({ args }) => [args.posts, args.off])).toEqual([
    ['posts 2, 3', '21-5/8"'],
  ]);
  expect(await found('29" to 29-1/8"')).toHaveLength(1);
  expect(await found('28-3/4" to 29-1/4"')).toEqual([expect.objectContaining({ pieces: ['bank/p1'] })]);
});

it('looks across a corner of roads by geometry', async () => {
  const triangle = "sight triangle at 0', 0', legs 25' bearing 90° and 25' bearing 0°";
  const told = async (place: string, changes: Change[] = []) => {
    const { open } = await checked(ruled(`rules us-corner; ${triangle}`, place, ...changes));
    return checkLayout(open.layout, open.job).filter(({ code }) => code === 'in-sight-triangle');
  };
  // Going east at 16' north the screen meets the long side, x + y = 25', at 9'; from 10' east it is past it.
  expect(await told("placed at 3', 16'")).toHaveLength(1);
  expect(await told("placed at 10', 16'")).toEqual([]);
  // Low enough: posts and slats up to 30".
  const low: Change[] = [
    ['height 50"', 'height 30"'],
    ['slats on', 'tops 0"; slats on'],
  ];
  expect(await told("placed at 3', 3'", low)).toEqual([]);
  const [unplaced] = await told('');
  expect(unplaced && messageOf(unplaced)).toContain('has no place on the plan');
});
