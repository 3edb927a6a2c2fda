import { expect, it } from 'vitest';
import { inches } from '../units/index.ts';
import { checked, fixed, SOUND, screen } from './testing/checked.ts';

const FITTED = screen(['  fill rows\n', '  fill rows\n  fit gaps 3/8" to 3/4"\n']);
const found = (measured: string, base = FITTED) => checked(`${base}${measured}\n`, 'as-built-differs');

// Twelve slats of 3-1/2 and eleven gaps of 1/2 from 2-1/2 to 50: narrower by 1/16, gaps are 12/11 of a sixteenth wider.
it('tells what narrow boards do to the gaps, in numbers, where they were measured', async () => {
  const { findings, messages } = await found('measured board slat { width 3-7/16" }');
  expect(findings.map(({ at }) => at.path)).toEqual(['MeasuredBoard:slat']);
  // By hand, to the next 64th: 0.5682 is 36/64.
  expect(messages[0]).toBe(
    'bank comes out otherwise than planned: gaps 9/16" (planned 1/2"), 12 slats as planned. ' +
      'That is hardly seen, as up to 1/8" a gap is. ' +
      'Best: move the ends: bottom 3-1/4", height 50", 12 slats (gaps as planned, an end up to 3/4" off; hardly seen); 1 more as a quick fix.',
  );
});

it('is silent up to a thirty-second a gap, or what the job says, and where nothing was measured', async () => {
  expect((await found('')).findings).toEqual([]);
  // By hand: 12 times 1/64 over 11 gaps is 0.017.
  expect((await found('measured board slat { width 3-31/64" }')).findings).toEqual([]);
  const limit = (size: string) =>
    found(
      'measured board slat { width 3-7/16" }',
      FITTED.replace('to 1/16" }', `to 1/16"; threshold as-built-differs ${size} }`),
    );
  expect((await limit('1/16"')).findings).toHaveLength(1);
  expect((await limit('5/64"')).findings).toEqual([]);
});

it('says when it no longer closes, with fixes that close it', async () => {
  const open = await found('measured board slat { width 3-7/16" }', SOUND);
  expect(open.messages[0]).toContain('It does not close as it was asked for.');
  const fixes = open.findings[0]?.fixes ?? [];
  expect(fixes[0]?.preferred).toBe(true);
  expect(fixes[0]?.changes).toEqual([
    { uri: open.open.job.uri, path: '', place: 'append', text: 'measured bank {\n  bottom 3-1/4"\n}' },
  ]);
  const after = await fixed(open, fixes[0]);
  // The ends are moved: the bottom 3/4 higher, and all gaps as planned; the plan is what it was.
  expect(after.open.run().fits[0]?.chosen).toMatchObject({ gap: inches(0.5), bottom: inches(3.25) });
  expect(after.open.run().planned?.fits[0]?.chosen).toMatchObject({ gap: inches(0.5), bottom: inches(2.5) });
  const again = after.messages.filter((message) => message.includes('otherwise'));
  expect(again[0]).toContain(
    'gaps 1/2" as planned, 12 slats as planned, ends up to 3/4" off. That is hardly seen',
  );
});

it('writes into the block of what was measured where there is one', async () => {
  const measured = 'measured board slat { width 3-7/16" }\nmeasured bank { bay 1 clear 54" }';
  const open = await found(measured, SOUND);
  const spread = open.findings[0]?.fixes?.find(({ title }) => title.startsWith('Spread'));
  expect(spread?.changes).toMatchObject([{ path: 'Measured:bank', place: 'append' }]);
  const after = await fixed(open, spread);
  expect(after.open.run().fits[0]?.chosen).toMatchObject({ kind: 'gaps', count: 12 });
  // A second choice replaces the first.
  const next = after.findings.find(({ code }) => code === 'as-built-differs')?.fixes ?? [];
  expect(next.flatMap(({ changes }) => changes.map(({ path }) => path))).toContain('Measured:bank/Fit');
});

it('tells a measured height at its statement', async () => {
  const { findings, messages } = await found('measured bank { height 49" }');
  expect(findings.map(({ at }) => at.path)).toEqual(['Measured:bank/MeasuredHeight']);
  // By hand: 46-1/2 less 42 is 4-1/2 over 11 gaps, 0.409 or 26/64.
  expect(messages[0]).toContain('gaps 13/32" (planned 1/2")');
});

it('says what of it is seen: gaps, from bay to bay, or an edge', async () => {
  const upright = screen([
    '  fill rows\n',
    `  fill rows\n  flip upright; rails bar\n  fit gaps 1/4" to 3/4"\n`,
  ]);
  // By hand, over 13 gaps: 3/4 more and 3/4 less are 0.058 each, under an eighth, and 0.115 from bay to bay.
  const apart = await found('measured bank { bay 1 clear 53-1/4"; bay 2 clear 54-3/4" }', upright);
  expect(apart.messages[0]).toContain('That is seen, as over 1/16" from bay to bay is.');
  // By hand: 12 times 3/16 over 11 gaps is 0.2, over an eighth.
  const wide = await found('measured board slat { width 3-5/16" }');
  expect(wide.messages[0]).toContain('That is seen, as over 1/8" a gap is.');
  // What rounds to nothing is as planned.
  expect(wide.findings[0]?.fixes?.map(({ title }) => title).join()).not.toContain('gaps 0"');
});
