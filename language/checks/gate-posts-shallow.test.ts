import { expect, it } from 'vitest';
import { inches } from '../units/index.ts';
import { checked, fixed, screen } from './testing/checked.ts';

const found = (gate: string, run = 'embed 30"', job = '') =>
  checked(
    `${screen(
      ['  fill rows\n', `  fill rows\n  ${run}\n`],
      ['2 bays', "at most 5' clear"],
      ['to 1/16" }', `to 1/16"; ${job} }`],
    )}gate wicket in bank { opening 36" from 40"; hinges on left; frame bar${gate} }\n`,
    'gate-posts-shallow',
  );

it('tells posts of a gate less than four inches deeper, where a depth is stated', async () => {
  expect((await found('', '')).findings).toEqual([]);
  expect((await found('; embed 34"')).findings).toEqual([]);
  const same = await found('');
  expect(same.findings.map(({ at, pieces }) => [at.path, pieces?.length])).toEqual([['Gate:wicket', 2]]);
  const shallow = await found('; embed 33"');
  expect(shallow.findings.map(({ at }) => at.path)).toEqual(['Gate:wicket/EmbedStatement.value']);
  expect((await found('; embed 34"', 'embed 30"', 'threshold gate-posts-shallow 6"')).findings).toHaveLength(
    1,
  );
});

it('sets the posts of the gate deeper, and no others', async () => {
  const same = await found('');
  const after = await fixed(same, same.findings[0]?.fixes?.[0]);
  expect(after.findings.filter(({ code }) => code === 'gate-posts-shallow')).toEqual([]);
  const feet = after.open
    .run()
    .pieces.filter(({ role }) => role === 'post')
    .map(({ gate, solid }) => [gate ?? '', Math.min(...solid.vertices.map(([, , z]) => z))]);
  for (const [gate, foot] of feet) expect(foot).toBe(gate === 'wicket' ? -inches(34) : -inches(30));
  expect(feet.some(([gate]) => gate === '')).toBe(true);
  expect(after.open.run().embed.value).toBe(inches(30));
});
