import { expect, it } from 'vitest';
import { describeChoice } from './index.ts';
import { checked, fixed, screen } from './testing/checked.ts';

const found = (text: string) => checked(text, 'pattern-open');
/** One inch more than twelve slats and eleven gaps take. */
const OPEN = screen(['height 50"', 'height 51"']);

it('tells what is left over, after how many slats, and how many ways out there are', async () => {
  const { findings, messages, open } = await found(OPEN);
  const choices = open.run().fits[0]?.choices ?? [];
  expect(choices.length).toBeGreaterThan(2);
  expect(findings.map(({ args, at }) => ({ ...args, path: at.path }))).toEqual([
    {
      pattern: 'rows',
      gate: '',
      leftover: '1"',
      space: '48-1/2"',
      count: 12,
      ways: expect.stringMatching(new RegExp(`^Best: .*; ${choices.length - 1} more as quick fixes\\.$`)),
      path: 'Run:bank/FillStatement',
    },
  ]);
  expect(messages[0]).toContain('1" of 48-1/2" is left over after 12 slats');
});

it('offers every way out as a fix with its numbers, after which the pattern closes as promised', async () => {
  const before = await found(OPEN);
  const { job } = before.open;
  const choices = before.open.run().fits[0]?.choices ?? [];
  const fixes = before.findings[0]?.fixes ?? [];
  expect(fixes).toHaveLength(choices.length);
  expect(fixes.map(({ preferred }) => preferred)).toEqual(fixes.map((_, at) => at === 0));
  for (const [at, fix] of fixes.entries()) {
    const promised = choices[at];
    if (!promised) throw new Error('a fix without its choice');
    expect(fix.title.toLowerCase()).toBe(describeChoice(promised, job.measure.value).toLowerCase());
    const after = await fixed(before, fix);
    expect(
      after.findings.map(({ code }) => code),
      fix.title,
    ).not.toContain('pattern-open');
    const { chosen } = after.open.run().fits[0] ?? {};
    expect([chosen?.count, chosen?.gap, chosen?.width], fix.title).toEqual([
      promised.count,
      promised.gap,
      promised.width,
    ]);
  }
});

it('closes only where nothing at all is left', async () => {
  expect((await found(screen())).findings).toEqual([]);
  expect((await found(screen(['height 50"', 'height 50-1/64"']))).findings).toHaveLength(1);
});

it('says so when there is no way out', async () => {
  // Three inches hold no slat of 3-1/2".
  const { findings } = await found(screen(['height 50"', 'height 4"'], ['bottom 2-1/2"', 'bottom 3-1/2"']));
  for (const { args, fixes } of findings)
    expect(String(args.ways).startsWith('No remedy closes it')).toBe(fixes?.length === 0);
  expect(findings).toHaveLength(1);
});
