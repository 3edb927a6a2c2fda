import { expect, it } from 'vitest';
import { checked, screen } from './testing/checked.ts';

const found = (text: string) => checked(text, 'too-open');
const demand = (share: string) => ['1/16" }', `1/16"; see-through at most ${share} % }`] as const;
/** With half a gap at each edge every slat has its whole gap: 12 times 4" are 48". */
const HALVES = [
  ['gap 1/2"; end', 'gap 1/2"; edge gap half; end'],
  ['bottom 2-1/2"', 'bottom 2"'],
] as const;

it('tells the open share straight on and the angle at which it closes', async () => {
  // Geometry: 1/2 of 4 is 12.5 %; atan(1/2 over 3/4) is 33.7 degrees.
  const { findings, messages } = await found(screen(demand('10'), ...HALVES));
  expect(findings.map(({ args }) => args)).toEqual([{ open: 12.5, limit: 10, angle: '33.7°' }]);
  expect(messages[0]).toContain('12.5 % of it is open straight on; this job allows 10 %');
  expect(findings[0]?.at.path).toBe('Run:bank/FillStatement');
  expect(findings[0]?.related?.map(({ at }) => at.path)).toEqual(['Job/SeeThroughLimit']);
});

it('lets as much be open as the limit says, and no more', async () => {
  expect((await found(screen(demand('12.5'), ...HALVES))).findings).toEqual([]);
  expect((await found(screen(demand('12.4'), ...HALVES))).findings).toHaveLength(1);
  expect((await found(screen(...HALVES))).findings).toEqual([]);
});

it('counts gaps between slats only, where there is none at the edges', async () => {
  // Eleven gaps of 1/2" in 47-1/2" are 11.58 %.
  expect((await found(screen(demand('11.6')))).findings).toEqual([]);
  expect((await found(screen(demand('11.5')))).findings[0]?.args.open).toBe(11.6);
});
