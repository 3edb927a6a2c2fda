import { expect, it } from 'vitest';
import { checked, screen } from './testing/checked.ts';

const found = (job: string) => checked(screen(['to 1/16" }', `to 1/16"; ${job} }`]), 'ordered-early');

it('tells an order before the last who agreed, and one nobody agreed to', async () => {
  expect((await found('agreed "2026-04-20" by "client"')).findings).toEqual([]);
  expect((await found('ordered "2026-05-01"; agreed "2026-05-01" by "client"')).findings).toEqual([]);
  const early = await found(
    'agreed "2026-05-09" by "client"; ordered "2026-05-01"; agreed "2026-05-12"; agreed "2026-04-01" by "neighbor"',
  );
  expect(early.findings.map(({ at, args }) => [at.path, args.agreed])).toEqual([
    ['Job/OrderedStatement', '2026-05-12'],
  ]);
  expect((await found('ordered "2026-05-01"')).messages[0]).toContain("nobody's agreement is stated");
});

it('takes no day that the calendar does not have', async () => {
  const { open } = await checked(screen(['to 1/16" }', 'to 1/16"; ordered "2026-02-30" }']));
  expect(open.job.problems.map(({ code, args }) => [code, args.word])).toEqual([
    ['unknown-word', '2026-02-30'],
  ]);
  expect(open.job.paperwork.ordered).toBeUndefined();
});
