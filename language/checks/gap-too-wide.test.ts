import { expect, it } from 'vitest';
import { checked, screen } from './testing/checked.ts';

const found = (text: string) => checked(text, 'gap-too-wide');
const demand = (gap: string) => ['1/16" }', `1/16"; gap at most ${gap} }`] as const;

it('tells the gap, the limit, and the angle whose tangent is gap over thickness', async () => {
  const { findings, messages } = await found(screen(demand('1/4"')));
  // Geometry: atan(1/2 over 3/4) is 33.69 degrees.
  expect(findings.map(({ args }) => args)).toEqual([{ gap: '1/2"', limit: '1/4"', angle: '33.7°' }]);
  expect(findings[0]?.args.angle).toBe(`${((Math.atan(0.5 / 0.75) * 180) / Math.PI).toFixed(1)}°`);
  expect(messages[0]).toContain('The widest gap is 1/2"; this job allows 1/4".');
  expect(messages[0]).toContain('from 33.7° off square');
});

it('stands at the fill, and points to the limit and to the gap', async () => {
  const { findings } = await found(screen(demand('1/4"')));
  expect(findings[0]?.at.path).toBe('Run:bank/FillStatement');
  expect(findings[0]?.related?.map(({ at, note }) => [at.path, note])).toEqual([
    ['Job/GapLimit.limit', 'the limit stands here'],
    ['Pattern:rows/PatternGap.value', 'the gap is stated here'],
  ]);
});

it('lets a gap be as wide as the limit, and no wider', async () => {
  expect((await found(screen(demand('1/2"')))).findings).toEqual([]);
  expect((await found(screen(demand('31/64"')))).findings).toHaveLength(1);
  expect((await found(screen())).findings).toEqual([]);
});

it('goes by the gaps as built, not as stated', async () => {
  // Six courses fewer than the pattern wants: (47-1/2 - 11 * 3-1/2) / 10 is 0.9.
  const text = screen(demand('3/4"'), [
    'gap 1/2"; end anywhere',
    'gap 7/8"; end anywhere; fit gaps 3/4" to 1"',
  ]);
  const { findings } = await found(text);
  expect(findings.map(({ args }) => args.gap)).toEqual(['7/8"']);
});

it('tells of the bays once and of each gate once', async () => {
  const gate =
    'gate door in bank { opening 40" from 5\'; hinges on left; frame bar; brace none; flip upright; fit gaps 1/4" to 1" }\n';
  const { findings } = await found(
    `${screen(demand('1/8"'), ['118-1/2"', "16'"], ['2 bays', '3 bays'])}${gate}`,
  );
  expect(findings.map(({ at }) => at.path)).toHaveLength(2);
});
