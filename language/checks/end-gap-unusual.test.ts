import { expect, it } from 'vitest';
import { checked, fixed, screen } from './testing/checked.ts';

const found = (gap: string, job = '') =>
  checked(
    screen(['  fill rows\n', `  fill rows\n  end gap ${gap}\n`], ['to 1/16" }', `to 1/16"; ${job} }`]),
    'end-gap-unusual',
  );

it('tells no gap at all and one over a quarter, and nothing between', async () => {
  expect((await found('1/16"')).findings).toEqual([]);
  expect((await found('1/4"')).findings).toEqual([]);
  const none = await found('0"');
  expect(none.findings.map(({ at, args }) => [at.path, args.none])).toEqual([['Run:bank/EndGap.value', 1]]);
  const wide = await found('5/16"');
  expect(wide.messages[0]).toContain('5/16" at each end; over 1/4" is seen');
  expect((await fixed(wide, wide.findings[0]?.fixes?.[0])).findings).toEqual([]);
  expect((await found('5/16"', 'threshold end-gap-unusual 3/8"')).findings).toEqual([]);
});

it('knows that slats in channels have three eighths', async () => {
  const inChannels = (gap: string) =>
    checked(
      screen(
        ['run bank', 'channel deep { width 1-1/4"; thickness 1-3/8"; wall 1/8"; lengths 8\' }\nrun bank'],
        ['slats on front face; joints at every post', `slats in channels deep; end gap ${gap}`],
      ),
      'end-gap-unusual',
    );
  expect((await inChannels('3/8"')).findings).toEqual([]);
  const wide = await inChannels('7/16"');
  expect(wide.messages[0]).toContain('7/16" at each end; over 3/8" leaves less of them held');
  expect(wide.findings[0]?.fixes?.map(({ title }) => title)).toEqual(['Leave 3/8" at each end']);
});
