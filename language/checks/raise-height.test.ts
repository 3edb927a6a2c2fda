import { expect, it } from 'vitest';
import { checked, fixed, screen } from './testing/checked.ts';

/** The sound screen made lower, under rules. */
const low = (job: string, run: string, height = '32-1/2"') =>
  screen(
    ['job "Sound" { measure', `job "Sound" { ${job}; measure`],
    ['height 50"; bottom 2-1/2"', `height ${height}; bottom 2-1/2"; ${run}`],
  );
const guard = (height?: string, more = '') => low(`rules us-model-codes${more}`, "drop 4' behind", height);

it('raises a guard by what it lacks (hand)', async () => {
  // IRC 2021 R312.1.2: 36 in above the floor, which here is the ground: 36" is written in place of 32-1/2".
  const before = await checked(guard(), 'guard-low');
  const [fix, ...rest] = before.findings[0]?.fixes ?? [];
  expect(rest).toEqual([]);
  expect(fix).toMatchObject({ title: 'Raise the height to 36"' });
  const after = await fixed(before, fix);
  expect(after.findings.map(({ code }) => code)).not.toContain('guard-low');
  expect(after.open.document.textDocument.getText()).toContain('height 36"; bottom 2-1/2"; drop');
});

it("raises a pool's barrier, up to a mark of the tape", async () => {
  // ISPSC 2021 305.2.1: 48 in above the ground away from the pool.
  const before = await checked(low('rules us-pool', 'pool behind', '42-1/3"'), 'pool-low');
  const [fix] = before.findings[0]?.fixes ?? [];
  const after = await fixed(before, fix);
  expect(after.findings.map(({ code }) => code)).not.toContain('pool-low');
  expect(after.open.run().spec.height.value.high).toBeGreaterThanOrEqual(48 * 203_200);
  expect(after.open.run().spec.height.value.high).toBeLessThan((48 + 1 / 16) * 203_200);
});

it.each([
  ['a band of heights', guard('30" to 32-1/2"')],
  ['what would pass the limit of the job', guard('32-1/2"', '; limit height 34"')],
])('offers nothing for %s', async (_what, text) => {
  const { findings } = await checked(text, 'guard-low');
  expect(findings).toHaveLength(1);
  expect(findings[0]?.fixes).toEqual([]);
});

it('measures a guard that steps down from the ground beside each bay (hand)', async () => {
  // Pitches of 4": the second bay steps down 8" with ground that falls 9" under its post and is level past it.
  const steps = (height: string) =>
    checked(
      guard(height, '').replace(
        "drop 4' behind",
        `drop 4' behind; ground at 0' up 0", at 56" up 0", at 58" down 9", at 118-1/2" down 9"; slope in steps`,
      ),
    );
  const enough = await steps('40-1/2"');
  expect(enough.findings.map(({ code }) => code)).not.toContain('guard-low');
  const told = (await steps('32-1/2"')).findings.filter(({ code }) => code === 'guard-low');
  expect(told.map(({ args }) => [args.bay, args.height])).toEqual([[1, '32-1/2"']]);
});

it('offers nothing where the height is that of another run', async () => {
  const other = 'run other { all else as bank }';
  const { findings } = await checked(`${guard()}${other}\n`, 'guard-low');
  const own = findings.map(({ args, fixes = [] }) => [args.run, fixes.length]);
  expect(own).toContainEqual(['bank', 1]);
  expect(own).toContainEqual(['other', 0]);
});
