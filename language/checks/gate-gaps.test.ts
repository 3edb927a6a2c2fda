import { expect, it } from 'vitest';
import { checked, fixed, screen } from './testing/checked.ts';

/** Least gaps by the habit of the trade: 1/4" beside the hinges, 1/2" beside the latch (common practice). */
function found(gaps: string, code: string) {
  const gate = `gate door in bank { opening 40" from 5'; hinges on left; ${gaps}; frame bar; flip upright; fit gaps 1/4" to 1" }\n`;
  return checked(`${screen(['118-1/2"', "16'"], ['2 bays', '3 bays'])}${gate}`, code);
}

it.each([
  ['hinge', '3/16"', '1/4"'],
  ['latch', '7/16"', '1/2"'],
])('tells of a %s gap of %s, and leaves %s instead', async (side, small, least) => {
  const code = `${side}-gap-small`;
  const told = await found(`${side} gap ${small}`, code);
  expect(told.findings.map(({ args }) => args)).toEqual([{ gate: 'door', gap: small, least }]);
  expect(told.messages[0]).toContain(small);
  expect((await fixed(told, told.findings[0]?.fixes?.[0])).findings.filter((f) => f.code === code)).toEqual(
    [],
  );
  expect((await found(`${side} gap ${least}`, code)).findings).toEqual([]);
});
