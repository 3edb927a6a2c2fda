import { expect, it } from 'vitest';
import { checked, screen } from './testing/checked.ts';

const found = (station: string) => checked(screen(['2 bays', `at ${station}`]), 'bays-unequal');

it('names the narrowest and the widest bay', async () => {
  // Bays from 3-1/2 to 50 and from 53-1/2 to 115.
  const { findings, messages } = await found('50"');
  expect(findings.map(({ args }) => args)).toEqual([
    { narrow: 1, wide: 2, least: '46-1/2"', most: '61-1/2"' },
  ]);
  expect(findings[0]?.at.path).toBe('Run:bank/PostsStatement.spacing');
  expect(messages[0]).toContain('bay 1 is 46-1/2" clear, bay 2 is 61-1/2"');
});

it('takes a quarter of an inch for equal, and no more', async () => {
  // Equal bays begin at 57-1/2; moving the post by d makes them differ by 2 d.
  expect((await found('57-1/2"')).findings).toEqual([]);
  expect((await found('57-3/8"')).findings).toEqual([]);
  expect((await found('57-5/16"')).findings).toHaveLength(1);
});
